import { loadFamily } from "../bank/load.ts";
import { drawItem } from "../engine/question/draw.ts";
import { type Explanation, explainItem } from "../engine/question/explain.ts";
import { gradeItem } from "../engine/question/grade.ts";
import type { Item } from "../engine/question/item.ts";
import type { Verdict } from "../engine/question/verdict.ts";
import type { RecordEvent } from "../engine/record/event.ts";

export interface VivaQuestion {
  readonly event: RecordEvent;
  readonly item: Item;
  readonly verdict: Verdict;
  readonly explanation: Explanation;
}

/** True where the question stands as it stood: the same version and the same numbers. */
const isSame = (item: Item, event: RecordEvent): boolean => String(item.version) === event.version && item.givens.every(({ key, text }) => event.givens[key] === text);

const questionOf = async (event: RecordEvent): Promise<VivaQuestion | null> => {
  try {
    const family = await loadFamily(event.family);
    const item = drawItem(family, { seed: event.seed });
    if (!isSame(item, event)) return null;
    const verdict = gradeItem(family, item, event.response);
    return { event, item, verdict, explanation: explainItem(family, item, { response: event.response, verdict }) };
  } catch {
    return null;
  }
};

/** The questions behind answers of a record, drawn and graded again; those that this edition draws otherwise are left out. */
export const vivaQuestions = async (events: readonly RecordEvent[]): Promise<readonly VivaQuestion[]> => (await Promise.all(events.map(questionOf))).filter((one) => one !== null);
