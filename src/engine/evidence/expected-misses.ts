import { requireCount, requireNumber } from "../quantity/require.ts";
import { requireShares } from "./share.ts";

export interface ListOfTests {
  readonly patients: number;
  readonly baseRate: number;
  readonly sensitivity: number;
}

export interface ExpectedMisses {
  /** Mean number of tears missed. */
  readonly expected: number;
  /** Chance of missing at least one. */
  readonly anyShare: number;
}

/**
 * Tears that a test misses in a list of patients: how many on average, and how likely is at least one. A mean above a half
 * is not a chance, and a chance never passes 1.
 *
 * @param patients - Patients tested, independent of each other; whole number, at least 1.
 * @param baseRate - Share who have the tear; 0 to 1 (included).
 * @param sensitivity - Share of those with the tear who test positive; 0 to 1 (included).
 * @returns Mean number missed, patients × base rate × (1 − sensitivity), and the chance of at least one.
 * @throws {RangeError} If a value is outside its range.
 * @example expectedMisses({ patients: 40, baseRate: 0.25, sensitivity: 0.9 }) // => { expected: 1, anyShare: 0.637 }
 */
export const expectedMisses = ({ patients, baseRate, sensitivity }: ListOfTests): ExpectedMisses => {
  requireCount({ patients });
  requireNumber("patients", patients, { least: 1, leastIncluded: true });
  requireShares({ baseRate, sensitivity });
  const missedShare = baseRate * (1 - sensitivity);
  return { expected: patients * missedShare, anyShare: -Math.expm1(patients * Math.log1p(-missedShare)) };
};
