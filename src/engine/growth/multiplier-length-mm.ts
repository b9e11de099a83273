import { requireNumber, requirePositive } from "../quantity/require.ts";

export interface LengthAndMultiplier {
  readonly lengthMm: number;
  readonly multiplier: number;
}

export interface MatureLength {
  readonly maturityMm: number;
  /** What is still to come, length × (multiplier − 1). */
  readonly leftMm: number;
}

/**
 * Length at maturity by the multiplier of age and sex, length × multiplier (Paley and others 2000, Multiplier method for predicting
 * limb-length discrepancy, J Bone Joint Surg Am 82:1432–46; title and pages from memory). A difference between two limbs from birth grows by
 * the same factor. The multiplier comes from a table that the question prints.
 *
 * @param lengthMm - Length now, or difference of lengths now, in mm; greater than 0.
 * @param multiplier - Multiplier of the table, without unit; at least 1 (included).
 * @returns Length at maturity and what is still to come, in mm.
 * @throws {RangeError} If a value is outside its range.
 * @example multiplierLengthMm({ lengthMm: 500, multiplier: 1.31 }) // => { maturityMm: 655, leftMm: 155 }
 */
export const multiplierLengthMm = ({ lengthMm, multiplier }: LengthAndMultiplier): MatureLength => {
  requirePositive({ lengthMm });
  requireNumber("multiplier", multiplier, { least: 1, leastIncluded: true });
  return { maturityMm: lengthMm * multiplier, leftMm: lengthMm * (multiplier - 1) };
};
