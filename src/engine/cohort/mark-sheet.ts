import type { Item } from "../question/item.ts";
import type { Response } from "../question/response.ts";
import type { Verdict } from "../question/verdict.ts";
import type { HandedAnswer } from "../record/hand-in-form.ts";
import type { Sheet, SheetItem } from "../record/sheet-number.ts";
import type { Mark, Paper } from "./paper.ts";
import type { Taken } from "./returns.ts";

/** How questions are drawn and answers graded; the bank is not a room of the engine, so whoever calls brings it. */
export interface Marker {
  /** The question of a place, by the version that the list locks; null where this site does not have it. */
  readonly draw: (item: SheetItem) => Item | null;
  readonly grade: (item: Item, response: Response) => Verdict;
  /** By the newest version of the family, on the same displayed givens; null where the item is of that version. */
  readonly gradeNewest: (item: Item, response: Response) => Verdict | null;
}

/** A verdict that came out otherwise than somebody said. */
export interface Difference {
  readonly slot: number;
  readonly family: string;
  readonly from: string;
  readonly to: string;
}

export interface MarkedSheet {
  readonly paper: Paper;
  /** The same sheet by the newest versions of its families; null where no mark changes. */
  readonly corrected: Paper | null;
  /** Marks that the learner's page gave otherwise. */
  readonly claimedOtherwise: readonly Difference[];
  /** Marks that a correction changes. */
  readonly changedByCorrection: readonly Difference[];
  /** Places that cannot be marked here: the question is missing, or was drawn from another local list. */
  readonly unmarked: readonly number[];
}

interface Marked {
  readonly mark: Mark;
  readonly newest: Mark;
  readonly claimed: string;
}

const markOf = (item: Item, slot: number, verdict: Verdict): Mark => ({
  slot,
  family: item.family,
  version: item.version,
  module: item.module,
  objective: item.objectives[0] ?? "",
  seed: item.seed,
  verdict: verdict.verdict,
  score: verdict.score,
  slip: verdict.slip ?? null,
  unsafe: verdict.verdict === "unsafe-side",
  try: 1,
});

const markedAt = (sheet: Sheet, answer: HandedAnswer, { draw, grade, gradeNewest }: Marker): Marked | null => {
  const asked = sheet.items[answer.slot];
  const item = asked === undefined ? null : draw(asked);
  if (item === null || (item.local ?? null) !== answer.local) return null;
  const { slot, response } = answer;
  const verdict = grade(item, response);
  return { mark: markOf(item, slot, verdict), newest: markOf(item, slot, gradeNewest(item, response) ?? verdict), claimed: answer.verdict };
};

const differs = (one: Mark, other: Mark): boolean => one.verdict !== other.verdict || one.slip !== other.slip;

/** Marks one sheet again from what was answered; what the hand-in says of itself is compared and never counted. */
export const markSheet = ({ sheet: { attempt, answers }, from: { handIn } }: Taken, sheet: Sheet, marker: Marker): MarkedSheet => {
  const read = answers.toSorted((one, other) => one.slot - other.slot).map((answer) => ({ slot: answer.slot, marked: markedAt(sheet, answer, marker) }));
  const marked = read.flatMap(({ marked: one }) => (one === null ? [] : [one]));
  const paperOf = (marks: readonly Mark[]): Paper => ({ learner: handIn.learner, place: handIn.place, list: handIn.list, attempt, handedInAt: handIn.at, marks });
  const changed = marked.filter(({ mark, newest }) => differs(mark, newest));
  return {
    paper: paperOf(marked.map(({ mark }) => mark)),
    corrected: changed.length === 0 ? null : paperOf(marked.map(({ newest }) => newest)),
    claimedOtherwise: marked.filter(({ mark, claimed }) => mark.verdict !== claimed).map(({ mark, claimed }) => ({ slot: mark.slot, family: mark.family, from: claimed, to: mark.verdict })),
    changedByCorrection: changed.map(({ mark, newest }) => ({ slot: mark.slot, family: mark.family, from: mark.verdict, to: newest.verdict })),
    unmarked: read.filter(({ marked: one }) => one === null).map(({ slot }) => slot),
  };
};
