import { requireCount } from "../quantity/require.ts";
import { shareOf } from "./share.ts";

export interface FourCounts {
  readonly tp: number;
  readonly fp: number;
  readonly fn: number;
  readonly tn: number;
}

/** What a two-by-two table says; `null` where a denominator is 0. */
export interface TestAccuracy {
  readonly sensitivity: number | null;
  readonly specificity: number | null;
  readonly ppv: number | null;
  readonly npv: number | null;
  readonly lrPlus: number | null;
  readonly lrMinus: number | null;
}

/**
 * Sensitivity, specificity, predictive values and likelihood ratios of a test from its four counts.
 *
 * @param tp - Test positive, tear present; whole number, 0 included.
 * @param fp - Test positive, no tear; whole number, 0 included.
 * @param fn - Test negative, tear present; whole number, 0 included.
 * @param tn - Test negative, no tear; whole number, 0 included.
 * @returns Shares from 0 to 1 and ratios from 0 up, each `null` where its denominator is 0.
 * @throws {RangeError} If a count is negative or not whole.
 * @example twoByTwo({ tp: 8, fp: 2, fn: 0, tn: 16 }) // => { sensitivity: 1, specificity: 0.889, ppv: 0.8, npv: 1, lrPlus: 9, lrMinus: 0 }
 */
export const twoByTwo = ({ tp, fp, fn, tn }: FourCounts): TestAccuracy => {
  requireCount({ tp, fp, fn, tn });
  const present = tp + fn;
  const absent = fp + tn;
  return {
    sensitivity: shareOf(tp, present),
    specificity: shareOf(tn, absent),
    ppv: shareOf(tp, tp + fp),
    npv: shareOf(tn, tn + fn),
    lrPlus: shareOf(tp * absent, fp * present),
    lrMinus: shareOf(fn * absent, tn * present),
  };
};
