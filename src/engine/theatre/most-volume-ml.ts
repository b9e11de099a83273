import { requireNumber, requirePositive } from "../quantity/require.ts";

export interface VolumeByWeight {
  readonly weightKg: number;
  readonly limitMgPerKg: number;
  readonly percent: number;
}

/** One per cent is one gram in 100 mL, ten milligrams in each. */
const MG_PER_ML_IN_PERCENT = 10;

/**
 * Greatest volume of a solution that stays within a limit by weight. Arithmetic for practice with the limit that a
 * question prints; unrounded, a volume is rounded down.
 *
 * @param weightKg - Body weight, in kg; greater than 0.
 * @param limitMgPerKg - Limit of the stated sheet, in mg/kg; greater than 0.
 * @param percent - Strength as mass in volume, in per cent; greater than 0, at most 100 (included).
 * @returns Volume in mL.
 * @throws {RangeError} If a value is outside its range.
 * @example mostVolumeMl({ weightKg: 22, limitMgPerKg: 2, percent: 0.25 }) // => 17.6
 */
export const mostVolumeMl = ({ weightKg, limitMgPerKg, percent }: VolumeByWeight): number => {
  requirePositive({ weightKg, limitMgPerKg, percent });
  requireNumber("percent", percent, { greatest: 100, greatestIncluded: true });
  return (weightKg * limitMgPerKg) / (percent * MG_PER_ML_IN_PERCENT);
};
