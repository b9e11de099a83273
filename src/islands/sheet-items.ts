import { loadFamily } from "../bank/load.ts";
import { drawItem } from "../engine/question/draw.ts";
import { answerOf, explainItem } from "../engine/question/explain.ts";
import { gradeItem } from "../engine/question/grade.ts";
import type { Item } from "../engine/question/item.ts";
import type { RecordEvent } from "../engine/record/event.ts";
import type { Sheet, SheetItem } from "../engine/record/sheet-number.ts";
import { type Graded, gradeHere } from "./grading.ts";

/** The questions of a sheet, drawn in their order; null where this edition no longer has one of them at its version. */
export const drawSheet = async (sheet: Sheet): Promise<readonly Item[] | null> => {
  const drawn = await Promise.all(sheet.items.map(async ({ family: id, version, seed }: SheetItem) => {
    const family = await loadFamily(id);
    return family.version === version ? drawItem(family, { seed }) : null;
  }));
  const known = drawn.filter((item) => item !== null);
  return known.length === drawn.length ? known : null;
};

/** The first answers that a record holds to the questions of a sheet, graded again from what was typed. */
export const gradedBefore = async (items: readonly Item[], events: readonly RecordEvent[]): Promise<ReadonlyMap<string, Graded>> => {
  const found = items.flatMap((item) => {
    const event = events.find((one) => one.kind === "answered" && one.seed === item.seed && one.family === item.family);
    return event === undefined ? [] : [{ item, response: event.response }];
  });
  const graded = await Promise.all(found.map(async ({ item, response }) => [item.seed, await gradeHere(item, response)] as const));
  return new Map(graded);
};

export interface Worked {
  readonly item: Item;
  readonly working: readonly string[];
}

/** A worked example of the same family as a question, with other numbers. */
export const workedBeside = async (item: Item): Promise<Worked> => {
  const family = await loadFamily(item.family);
  const other = drawItem(family, { seed: item.seed === "1" ? "2" : "1" });
  const response = answerOf(family, other);
  return { item: other, working: explainItem(family, other, { response, verdict: gradeItem(family, other, response) }).working };
};
