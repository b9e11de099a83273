import { requirePositive } from "../quantity/require.ts";
import { requireShares } from "./share.ts";

export interface SpreadAndReliability {
  readonly sdPoints: number;
  readonly reliability: number;
}

/**
 * Standard error of measurement of a score, spread × √(1 − reliability) (Weir 2005, Quantifying test-retest reliability, J Strength
 * Cond Res 19:231–40, 10.1519/15184.1).
 *
 * @param sdPoints - Standard deviation between persons, in points; greater than 0.
 * @param reliability - Reliability or intraclass correlation, a share from 0 to 1 (included).
 * @returns Standard error in points, 0 or more.
 * @throws {RangeError} If a value is outside its range.
 * @example measurementError({ sdPoints: 10, reliability: 0.8 }) // => 4.47
 */
export const measurementError = ({ sdPoints, reliability }: SpreadAndReliability): number => {
  requirePositive({ sdPoints });
  requireShares({ reliability });
  return sdPoints * Math.sqrt(1 - reliability);
};
