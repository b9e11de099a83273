import { requireCount, requireNotNegative, requireNumber, requirePositive } from "../quantity/require.ts";

export interface SlicesSeen {
  readonly slices: number;
  readonly thicknessMm: number;
  readonly gapMm: number;
}

export interface SliceLength {
  /** The length is more than this. */
  readonly moreThanMm: number;
  /** The length is less than this. */
  readonly lessThanMm: number;
}

/**
 * Bounds of a length that is seen on a number of neighbouring slices: it reaches through all slices and gaps between the outer
 * two, and not as far as the next ones. The outer two may be only touched, hence (k − 2) t + (k − 1) g and k t + (k + 1) g.
 *
 * @param slices - Neighbouring slices on which it is seen; whole number, at least 1.
 * @param thicknessMm - Thickness of a slice, in mm; greater than 0.
 * @param gapMm - Gap between two slices, in mm; 0 included.
 * @returns Bounds in mm, both excluded; the lower one is 0 for a single slice.
 * @throws {RangeError} If a value is outside its range.
 * @example sliceLength({ slices: 4, thicknessMm: 4, gapMm: 0.5 }) // => { moreThanMm: 9.5, lessThanMm: 18.5 }
 */
export const sliceLength = ({ slices, thicknessMm, gapMm }: SlicesSeen): SliceLength => {
  requireCount({ slices });
  requireNumber("slices", slices, { least: 1, leastIncluded: true });
  requirePositive({ thicknessMm });
  requireNotNegative({ gapMm });
  return {
    moreThanMm: Math.max(0, (slices - 2) * thicknessMm + (slices - 1) * gapMm),
    lessThanMm: slices * thicknessMm + (slices + 1) * gapMm,
  };
};
