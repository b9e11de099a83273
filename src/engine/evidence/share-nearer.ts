import { requirePositive } from "../quantity/require.ts";
import { normalShare } from "./normal-share.ts";

export interface NormalDistance {
  readonly distanceMm: number;
  readonly meanMm: number;
  readonly sdMm: number;
}

/**
 * Share of a normal population whose structure lies nearer than a distance. A share of a model, not of harm: a
 * published mean and spread come from one small study and its one way of measuring.
 *
 * @param distanceMm - The distance asked about, in mm; greater than 0.
 * @param meanMm - Mean of the population, in mm; greater than 0.
 * @param sdMm - Standard deviation of the population, in mm; greater than 0.
 * @returns Share from 0 to 1; a half at the mean.
 * @throws {RangeError} If a value is not finite or not greater than 0.
 * @example shareNearer({ distanceMm: 4, meanMm: 5.2, sdMm: 1.6 }) // => 0.2266
 */
export const shareNearer = ({ distanceMm, meanMm, sdMm }: NormalDistance): number => {
  requirePositive({ distanceMm, meanMm, sdMm });
  return normalShare((distanceMm - meanMm) / sdMm);
};
