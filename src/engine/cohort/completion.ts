import { firstMarks, groupedBy, isUnsafe } from "./first-marks.ts";
import type { Paper } from "./paper.ts";

/** That somebody worked through a list: when, how often, and how much of it. */
export interface CompletionRow {
  readonly learner: string;
  readonly place: string | null;
  readonly list: string;
  readonly attempts: number;
  readonly firstAt: string;
  readonly lastAt: string;
  /** Questions answered in the last attempt. */
  readonly answered: number;
  /** Answers on the unsafe side in the last attempt: what is still to be talked about. */
  readonly unsafeInLast: number;
}

const inTime = (one: Paper, other: Paper): number => one.attempt - other.attempt || (one.handedInAt < other.handedInAt ? -1 : 1);

const rowOf = (papers: readonly Paper[]): readonly CompletionRow[] => {
  const sorted = papers.toSorted(inTime);
  const first = sorted[0];
  const last = sorted[sorted.length - 1];
  if (first === undefined || last === undefined) return [];
  const marks = firstMarks(last);
  const { learner, place, list, handedInAt } = last;
  return [{ learner, place, list, attempts: new Set(papers.map(({ attempt }) => attempt)).size, firstAt: first.handedInAt, lastAt: handedInAt, answered: marks.length, unsafeInLast: marks.filter(isUnsafe).length }];
};

/** One row for each learner and list, in the order of the codes. */
export const completionRows = (papers: readonly Paper[]): readonly CompletionRow[] =>
  [...groupedBy(papers, ({ list, learner }) => JSON.stringify([learner, list])).values()].flatMap(rowOf).toSorted((one, other) => (`${one.learner} ${one.list}` < `${other.learner} ${other.list}` ? -1 : 1));
