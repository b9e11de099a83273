import { requirePositive } from "../quantity/require.ts";
import { percentToMgPerMl } from "./percent-to-mg-per-ml.ts";

export interface VolumeByWeight {
  readonly weightKg: number;
  readonly limitMgPerKg: number;
  readonly percent: number;
}

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
  return (weightKg * limitMgPerKg) / percentToMgPerMl({ percent });
};
