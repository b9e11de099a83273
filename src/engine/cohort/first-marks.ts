import type { Mark, Paper } from "./paper.ts";

const isEarlier = (one: Paper, other: Paper): boolean =>
  one.attempt === other.attempt ? one.handedInAt < other.handedInAt : one.attempt < other.attempt;

/** The first attempt of each learner at each list: what comes later was learned from it and says something else. */
export const firstPapers = (papers: readonly Paper[]): readonly Paper[] => {
  const first = new Map<string, Paper>();
  for (const paper of papers) {
    const key = JSON.stringify([paper.list, paper.learner]);
    const before = first.get(key);
    if (before === undefined || isEarlier(paper, before)) first.set(key, paper);
  }
  return [...first.values()];
};

/** The first try at each question of a paper, in the order of its slots; what could not be read is no answer. */
export const firstMarks = ({ marks }: Paper): readonly Mark[] => {
  const first = new Map<number, Mark>();
  for (const mark of marks) {
    const before = first.get(mark.slot);
    if (before === undefined || mark.try < before.try) first.set(mark.slot, mark);
  }
  return [...first.values()].filter(({ verdict }) => verdict !== "not-recognised").toSorted((one, other) => one.slot - other.slot);
};

/** True where a mark counts as right: whole, and not only on the way to it. */
export const isRight = ({ verdict }: Mark): boolean => verdict === "right";

export const isUnsafe = ({ verdict }: Mark): boolean => verdict === "unsafe-side";

/** An answer with the learner who gave it. */
export interface OwnMark {
  readonly learner: string;
  readonly mark: Mark;
}

/** Every first answer of every first attempt. */
export const firstAnswers = (papers: readonly Paper[]): readonly OwnMark[] =>
  firstPapers(papers).flatMap((paper) => firstMarks(paper).map((mark) => ({ learner: paper.learner, mark })));

/** Values in groups by a key, in the order in which the keys are first met. */
export const groupedBy = <T>(values: readonly T[], keyOf: (value: T) => string): ReadonlyMap<string, readonly T[]> => {
  const groups = new Map<string, T[]>();
  for (const value of values) {
    const key = keyOf(value);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [value]);
    else group.push(value);
  }
  return groups;
};
