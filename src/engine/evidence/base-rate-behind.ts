import { requireNumber } from "../quantity/require.ts";
import { requireSharesAboveZero } from "./share.ts";

export interface PrintedAccuracy {
  readonly sensitivity: number;
  readonly specificity: number;
  readonly ppv: number;
}

/**
 * The base rate that a printed predictive value was worked out with: Bayes' rule solved for the base rate. Three of the
 * four numbers settle the fourth, up to the rounding of the print.
 *
 * @param sensitivity - Share of those with the tear who test positive; greater than 0, at most 1 (included).
 * @param specificity - Share of those without it who test negative; greater than 0, less than 1: without false
 * positives every base rate gives the same predictive value.
 * @param ppv - Printed share with the tear among the positive; greater than 0, at most 1 (included).
 * @returns Base rate as a share, greater than 0, at most 1.
 * @throws {RangeError} If a share is outside its range.
 * @example baseRateBehind({ sensitivity: 0.9, specificity: 0.8, ppv: 0.6 }) // => 0.25
 */
export const baseRateBehind = ({ sensitivity, specificity, ppv }: PrintedAccuracy): number => {
  requireSharesAboveZero({ sensitivity, ppv });
  requireNumber("specificity", specificity, { least: 0, greatest: 1 });
  const weighted = ppv * (1 - specificity);
  return weighted / (sensitivity * (1 - ppv) + weighted);
};
