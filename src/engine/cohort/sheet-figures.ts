import { measurementError } from "../evidence/measurement-error.ts";
import { type Figure, given, givenOr, refused, type Refusal } from "./figure.ts";
import { type FixedForm, fixedForm } from "./fixed-form.ts";
import { refusalOf } from "./item-figures.ts";
import { kr20 } from "./kr20.ts";
import type { Paper } from "./paper.ts";
import { covariance, sum } from "./score-matrix.ts";

/** How a sheet behaved as a whole. */
export interface SheetFigures {
  /** Learners whose first attempt at the sheet is whole; 0 where there is no fixed sheet. */
  readonly learners: number;
  readonly items: number;
  readonly incomplete: number;
  readonly otherForm: number;
  readonly isDrawnForEach: boolean;
  /** KR-20, with variances divided by n. */
  readonly reliability: Figure;
  /** Standard deviation of the totals, divided by n as in the reliability. */
  readonly sdPoints: Figure;
  /** Standard error of one score. */
  readonly errorPoints: Figure;
}

const whole = (form: FixedForm | null) => ({
  learners: form?.learners.length ?? 0,
  items: form?.items.length ?? 0,
  incomplete: form?.incomplete ?? 0,
  otherForm: form?.otherForm ?? 0,
  isDrawnForEach: form?.isDrawnForEach ?? false,
});

const errorOf = (sdPoints: number, reliability: Figure): Figure => {
  if (reliability.value === null) return reliability;
  return reliability.value < 0 ? refused("reliability-below-0") : given(measurementError({ sdPoints, reliability: reliability.value }));
};

/** Reliability and error of the sheet that most learners answered whole, or why there is none. */
export const sheetFigures = (papers: readonly Paper[]): SheetFigures => {
  const form = fixedForm(papers);
  const refusal: Refusal | null = papers.length === 0 ? "nobody" : refusalOf(form);
  if (form === null || refusal !== null) {
    const none = refused(refusal ?? "no-fixed-form");
    return { ...whole(form), reliability: none, sdPoints: none, errorPoints: none };
  }
  const totals = form.rights.map(sum);
  const sdPoints = Math.sqrt(covariance(totals, totals));
  const reliability = givenOr(kr20(form.rights), form.items.length < 2 ? "one-item" : "totals-alike");
  return { ...whole(form), reliability, sdPoints: given(sdPoints), errorPoints: errorOf(sdPoints, reliability) };
};
