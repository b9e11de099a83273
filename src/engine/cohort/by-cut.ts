import { type CutBand, type CutScore, cutBand, cutScoreOf, type JudgedItem, placeByCut } from "./cut-score.ts";
import type { FixedForm } from "./fixed-form.ts";

/** Where a learner stands by the cut, and which of what must be right was not. */
export interface LearnerByCut {
  readonly learner: string;
  readonly points: number;
  readonly place: ReturnType<typeof placeByCut>;
  /** Families that must be right and were not; they are no part of the points. */
  readonly missed: readonly string[];
}

export interface Standard {
  readonly cut: CutScore;
  readonly band: CutBand | null;
  readonly learners: readonly LearnerByCut[];
}

/** Places of the form that count towards the cut: all but those of families that must be right. */
export const ordinaryFamilies = ({ items }: FixedForm, must: readonly string[]): readonly string[] =>
  items.map(({ family }) => family).filter((family) => !must.includes(family));

const standing = (form: FixedForm, { row, must, band }: { readonly row: number; readonly must: readonly string[]; readonly band: CutBand }): LearnerByCut => {
  const rights = form.items.map(({ family }, item) => ({ family, right: form.rights[row]?.[item] === 1 }));
  const points = rights.filter(({ family, right }) => right && !must.includes(family)).length;
  const missed = [...new Set(rights.filter(({ family, right }) => !right && must.includes(family)).map(({ family }) => family))];
  return { learner: form.learners[row] ?? "", points, place: placeByCut(points, band), missed };
};

/** The judges' standard on a sheet, and every learner's place by it, in the order of their codes. */
export const standardOf = (form: FixedForm, judged: readonly JudgedItem[], must: readonly string[]): Standard => {
  const cut = cutScoreOf(judged, ordinaryFamilies(form, must));
  const band = cut.cutPoints.value === null ? null : cutBand(cut.cutPoints.value, cut.items);
  if (band === null) return { cut, band, learners: [] };
  const learners = form.learners.map((_, row) => standing(form, { row, must, band }));
  return { cut, band, learners: learners.toSorted((one, other) => (one.learner < other.learner ? -1 : 1)) };
};
