import { loadFamily } from "../bank/load.ts";
import { drawItem } from "../engine/question/draw.ts";
import { type Explanation, explainItem } from "../engine/question/explain.ts";
import { gradeItem } from "../engine/question/grade.ts";
import type { SumItem } from "../engine/question/item.ts";
import type { SumResponse } from "../engine/question/response.ts";
import type { Verdict } from "../engine/question/verdict.ts";

export interface Graded {
  readonly response: SumResponse;
  readonly verdict: Verdict;
  readonly explanation: Explanation;
}

/** Fetches the family's own chunk and grades: nothing of it is loaded before somebody answers. */
export const gradeHere = async (item: SumItem, response: SumResponse): Promise<Graded> => {
  const family = await loadFamily(item.family);
  const verdict = gradeItem(family, item, response);
  return { response, verdict, explanation: explainItem(family, item, verdict) };
};

/** Another question of the same family. */
export const drawHere = async (familyId: string, seed: string, language: string): Promise<SumItem> =>
  drawItem(await loadFamily(familyId), { seed, language });
