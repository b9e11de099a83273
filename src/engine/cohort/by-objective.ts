import { type Interval, wilson } from "../evidence/wilson.ts";
import { LEAST_PERSONS } from "./figure.ts";
import { firstAnswers, groupedBy, isRight, isUnsafe, type OwnMark } from "./first-marks.ts";
import type { Paper } from "./paper.ts";
import { type SlipCount, slipCounts } from "./slip-counts.ts";

/** How a cohort stands on one objective, by learners and not by answers: answers of one person are not independent. */
export interface ObjectiveFigures {
  readonly objective: string;
  readonly module: string;
  /** Learners who answered a question of it. */
  readonly learners: number;
  /** Of these, all of whose first answers were right. */
  readonly allRight: number;
  /** Of these, with an answer on the unsafe side. */
  readonly unsafe: number;
  readonly answers: number;
  readonly right: number;
  /** 95 % interval of the share of learners with all right; null under five persons. */
  readonly interval: Interval | null;
  readonly commonestSlip: SlipCount | null;
}

const figuresOf = (answers: readonly OwnMark[]): ObjectiveFigures => {
  const learners = [...groupedBy(answers, ({ learner }) => learner).values()];
  const allRight = learners.filter((own) => own.every(({ mark }) => isRight(mark))).length;
  return {
    objective: answers[0]?.mark.objective ?? "",
    module: answers[0]?.mark.module ?? "",
    learners: learners.length,
    allRight,
    unsafe: learners.filter((own) => own.some(({ mark }) => isUnsafe(mark))).length,
    answers: answers.length,
    right: answers.filter(({ mark }) => isRight(mark)).length,
    interval: learners.length < LEAST_PERSONS ? null : wilson({ events: allRight, total: learners.length }),
    commonestSlip: slipCounts(answers)[0] ?? null,
  };
};

/** Unsafe first; then where fewest had all right; then by name, so that the order is always the same. */
const inOrder = (one: ObjectiveFigures, other: ObjectiveFigures): number =>
  other.unsafe - one.unsafe || one.allRight * other.learners - other.allRight * one.learners || (one.objective < other.objective ? -1 : 1);

/** Every objective that was asked, by first answers of first attempts. */
export const byObjective = (papers: readonly Paper[]): readonly ObjectiveFigures[] =>
  [...groupedBy(firstAnswers(papers), ({ mark }) => mark.objective).values()].map(figuresOf).toSorted(inOrder);
