import { requireNumber, requirePositive } from "../quantity/require.ts";

/** One per cent is one gram in 100 mL, ten milligrams in each. */
const MG_PER_ML_IN_PERCENT = 10;

/**
 * Strength of a solution in milligrams per millilitre from its percentage by mass in volume.
 *
 * @param percent - Strength as mass in volume, in per cent; greater than 0, at most 100 (included).
 * @returns Strength in mg/mL.
 * @throws {RangeError} If the percentage is outside its range.
 * @example percentToMgPerMl({ percent: 0.25 }) // => 2.5
 */
export const percentToMgPerMl = ({ percent }: { readonly percent: number }): number => {
  requirePositive({ percent });
  requireNumber("percent", percent, { greatest: 100, greatestIncluded: true });
  return percent * MG_PER_ML_IN_PERCENT;
};
