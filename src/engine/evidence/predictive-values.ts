import { requireNumber } from "../quantity/require.ts";
import { requireSharesAboveZero } from "./share.ts";

export interface TestAndBaseRate {
  readonly sensitivity: number;
  readonly specificity: number;
  readonly baseRate: number;
}

export interface PredictiveValues {
  readonly ppv: number;
  readonly npv: number;
}

/**
 * What a positive and a negative test mean where the base rate is known (Bayes' rule).
 *
 * @param sensitivity - Share of those with the tear who test positive; greater than 0, at most 1 (included).
 * @param specificity - Share of those without it who test negative; greater than 0, at most 1 (included).
 * @param baseRate - Share who have the tear before the test; greater than 0, less than 1.
 * @returns Share with the tear among the positive, share without it among the negative, each 0 to 1.
 * @throws {RangeError} If a share is outside its range.
 * @example predictiveValues({ sensitivity: 0.9, specificity: 0.8, baseRate: 0.5 }) // => { ppv: 0.818, npv: 0.889 }
 */
export const predictiveValues = ({ sensitivity, specificity, baseRate }: TestAndBaseRate): PredictiveValues => {
  requireSharesAboveZero({ sensitivity, specificity });
  requireNumber("baseRate", baseRate, { least: 0, greatest: 1 });
  const truePositive = sensitivity * baseRate;
  const falsePositive = (1 - specificity) * (1 - baseRate);
  const trueNegative = specificity * (1 - baseRate);
  const falseNegative = (1 - sensitivity) * baseRate;
  return { ppv: truePositive / (truePositive + falsePositive), npv: trueNegative / (trueNegative + falseNegative) };
};
