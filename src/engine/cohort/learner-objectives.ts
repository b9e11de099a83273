import { firstAnswers, groupedBy, isRight, isUnsafe, type OwnMark } from "./first-marks.ts";
import type { Paper } from "./paper.ts";

/** What one learner's first answers on one objective came to. */
export interface ObjectiveCell {
  readonly objective: string;
  readonly state: "unsafe" | "off" | "right";
  readonly right: number;
  readonly answers: number;
}

/** One learner's row: cells of the objectives that were asked; an objective without a cell was not. */
export interface LearnerRow {
  readonly learner: string;
  readonly cells: readonly ObjectiveCell[];
  readonly unsafe: number;
  readonly off: number;
}

const stateOf = (answers: readonly OwnMark[], right: number): ObjectiveCell["state"] => {
  if (answers.some(({ mark }) => isUnsafe(mark))) return "unsafe";
  return right === answers.length ? "right" : "off";
};

const cellOf = (objective: string, answers: readonly OwnMark[]): ObjectiveCell => {
  const right = answers.filter(({ mark }) => isRight(mark)).length;
  return { objective, state: stateOf(answers, right), right, answers: answers.length };
};

const rowOf = (learner: string, answers: readonly OwnMark[]): LearnerRow => {
  const cells = [...groupedBy(answers, ({ mark }) => mark.objective)].map(([objective, own]) => cellOf(objective, own));
  const count = (state: ObjectiveCell["state"]): number => cells.filter((cell) => cell.state === state).length;
  return { learner, cells, unsafe: count("unsafe"), off: count("off") };
};

/** Learners whose answers need a talk come first; among equals the order is that of their codes, so that nobody is ranked. */
const inOrder = (one: LearnerRow, other: LearnerRow): number =>
  Number(other.unsafe > 0) - Number(one.unsafe > 0) || (one.learner < other.learner ? -1 : 1);

/** Learners by objectives. */
export const learnerObjectives = (papers: readonly Paper[]): readonly LearnerRow[] =>
  [...groupedBy(firstAnswers(papers), ({ learner }) => learner)].map(([learner, answers]) => rowOf(learner, answers)).toSorted(inOrder);
