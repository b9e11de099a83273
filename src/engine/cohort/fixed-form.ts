import { firstMarks, firstPapers, groupedBy, isRight } from "./first-marks.ts";
import type { Mark, Paper } from "./paper.ts";
import type { ScoreMatrix } from "./score-matrix.ts";

/** One place of a sheet that everybody got: the family, whatever numbers were drawn for each learner. */
export interface FormItem {
  readonly slot: number;
  readonly family: string;
  readonly version: number;
  readonly objective: string;
}

export interface FixedForm {
  readonly items: readonly FormItem[];
  /** Learners in the order of the rows. */
  readonly learners: readonly string[];
  /** 1 for right, 0 for all else; rows are learners, columns items. */
  readonly rights: ScoreMatrix;
  /** First answers, rows as in `rights`. */
  readonly marks: readonly (readonly Mark[])[];
  /** First attempts that lack an answer to an item of the form. */
  readonly incomplete: number;
  /** First attempts at other items, or at another version of one. */
  readonly otherForm: number;
  /** True where learners had different numbers in the same question. */
  readonly isDrawnForEach: boolean;
}

interface Answered {
  readonly paper: Paper;
  readonly marks: readonly Mark[];
  readonly parts: readonly string[];
}

const answered = (paper: Paper): Answered => {
  const marks = firstMarks(paper);
  return { paper, marks, parts: [paper.list, ...marks.map(({ slot, family, version }) => `${slot} ${family} ${version}`)] };
};

const keyOf = ({ parts }: Answered): string => JSON.stringify(parts);

/** The form that most learners answered; of two that are equally frequent, the one with more items. */
const commonest = (all: readonly Answered[]): readonly Answered[] =>
  [...groupedBy(all, keyOf).values()].toSorted((one, other) => other.length - one.length || (other[0]?.parts.length ?? 0) - (one[0]?.parts.length ?? 0))[0] ?? [];

const itemOf = ({ slot, family, version, objective }: Mark): FormItem => ({ slot, family, version, objective });

/**
 * The sheet that most learners answered whole at their first attempt. Figures of items compare answers to the same items,
 * so papers with gaps or with other items are counted and set aside; null where the others are as many as the kept.
 */
export const fixedForm = (papers: readonly Paper[]): FixedForm | null => {
  const all = firstPapers(papers).map(answered);
  const kept = commonest(all);
  const form = new Set(kept[0]?.parts ?? []);
  if (form.size < 2) return null;
  const isPartOfForm = ({ parts }: Answered): boolean => parts.length < form.size && parts.every((part) => form.has(part));
  const incomplete = all.filter(isPartOfForm).length;
  const otherForm = all.length - kept.length - incomplete;
  if (otherForm >= kept.length) return null;
  const marks = kept.map((one) => one.marks);
  const [first = []] = marks;
  return {
    items: first.map(itemOf),
    learners: kept.map(({ paper }) => paper.learner),
    rights: marks.map((row) => row.map((mark) => (isRight(mark) ? 1 : 0))),
    marks,
    incomplete,
    otherForm,
    isDrawnForEach: marks.some((row) => row.some(({ seed }, index) => seed !== first[index]?.seed)),
  };
};
