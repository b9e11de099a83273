import { requireNotNegative, requireNumber, requirePositive } from "../quantity/require.ts";

export interface GrowthRule {
  readonly ageYears: number;
  readonly stopAgeYears: number;
  readonly mmPerYear: number;
  readonly slowYears: number;
  readonly slowShare: number;
}

/**
 * What a growth plate still adds in length by an arithmetic rule: a steady rate up to a stop age, slower by a stated share in the last
 * years where the rule says so (Menelaus 1966, Correction of leg length discrepancy by epiphysial arrest, J Bone Joint Surg Br
 * 48:336–9, for the steady form; from memory). Published rules differ in rate, in the stop age, and in whether the age is of the calendar
 * or of the bones, so all are given; the rule is named in the question.
 *
 * @param ageYears - Age by the clock that the rule uses, in years; 0 included.
 * @param stopAgeYears - Age at which the plate stops by the rule, in years; greater than 0.
 * @param mmPerYear - Rate of the plate by the rule, in mm a year; greater than 0.
 * @param slowYears - Last years before the stop in which it is slower, in years; 0 included, which is a steady rule.
 * @param slowShare - Share of the rate in those years; 0 to 1 (included).
 * @returns Length in mm; 0 from the stop age on.
 * @throws {RangeError} If a value is outside its range.
 * @example remainingGrowthMm({ ageYears: 12, stopAgeYears: 16, mmPerYear: 9, slowYears: 0, slowShare: 1 }) // => 36
 */
export const remainingGrowthMm = ({ ageYears, stopAgeYears, mmPerYear, slowYears, slowShare }: GrowthRule): number => {
  requireNotNegative({ ageYears, slowYears });
  requirePositive({ stopAgeYears, mmPerYear });
  requireNumber("slowShare", slowShare, { least: 0, leastIncluded: true, greatest: 1, greatestIncluded: true });
  const yearsLeft = Math.max(0, stopAgeYears - ageYears);
  const slow = Math.min(yearsLeft, slowYears);
  return mmPerYear * (yearsLeft - slow + slow * slowShare);
};
