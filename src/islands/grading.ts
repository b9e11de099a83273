import { loadFamily } from "../bank/load.ts";
import { drawItem } from "../engine/question/draw.ts";
import { type Explanation, explainItem } from "../engine/question/explain.ts";
import { gradeItem } from "../engine/question/grade.ts";
import type { Item } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import type { Verdict } from "../engine/question/verdict.ts";

export interface Graded {
  readonly response: Response;
  readonly verdict: Verdict;
  readonly explanation: Explanation;
}

/** Fetches the family's own chunk and grades: nothing of it is loaded before somebody answers. */
export const gradeHere = async (item: Item, response: Response): Promise<Graded> => {
  const family = await loadFamily(item.family);
  const verdict = gradeItem(family, item, response);
  return { response, verdict, explanation: explainItem(family, item, { response, verdict }) };
};

/** Another question of the same family. */
export const drawHere = async (familyId: string, seed: string, language: string): Promise<Item> =>
  drawItem(await loadFamily(familyId), { seed, language });
