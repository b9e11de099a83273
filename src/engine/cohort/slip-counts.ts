import { groupedBy, isUnsafe, type OwnMark } from "./first-marks.ts";

/** How often one slip was made. */
export interface SlipCount {
  readonly family: string;
  readonly slip: string;
  /** Learners who made it at least once. */
  readonly learners: number;
  /** Learners who answered a question of the family. */
  readonly met: number;
  /** True where it took somebody to the unsafe side. */
  readonly unsafe: boolean;
}

const personsIn = (answers: readonly OwnMark[]): number => new Set(answers.map(({ learner }) => learner)).size;

const inOrder = (one: SlipCount, other: SlipCount): number =>
  Number(other.unsafe) - Number(one.unsafe) || other.learners - one.learners || (`${one.family} ${one.slip}` < `${other.family} ${other.slip}` ? -1 : 1);

/** Slips by how many made them, unsafe ones first; of the answers given. */
export const slipCounts = (answers: readonly OwnMark[]): readonly SlipCount[] => {
  const families = [...groupedBy(answers, ({ mark }) => mark.family)];
  const counts = families.flatMap(([family, own]) => {
    const slips = [...groupedBy(own.filter(({ mark }) => mark.slip !== null), ({ mark }) => mark.slip ?? "")];
    return slips.map(([slip, made]) => ({ family, slip, learners: personsIn(made), met: personsIn(own), unsafe: made.some(({ mark }) => isUnsafe(mark)) }));
  });
  return counts.toSorted(inOrder);
};
