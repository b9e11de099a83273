import { requireFinite, requireNumber } from "../quantity/require.ts";

export interface RawScore {
  readonly rawPoints: number;
  readonly leastPoints: number;
  readonly greatestPoints: number;
}

/**
 * A raw sum of points on the scale from 0 to 100: 100 × (sum − least) ÷ (greatest − least), as scoring instructions of knee scores
 * print it. Dividing by the greatest alone is right only where the least sum is 0.
 *
 * @param rawPoints - Sum of the answers, in points; from the least to the greatest sum (included).
 * @param leastPoints - Least possible sum, in points; any sign.
 * @param greatestPoints - Greatest possible sum, in points; greater than the least.
 * @returns Score from 0 to 100.
 * @throws {RangeError} If a value is outside its range.
 * @example score0To100({ rawPoints: 60, leastPoints: 0, greatestPoints: 92 }) // => 65.2
 */
export const score0To100 = ({ rawPoints, leastPoints, greatestPoints }: RawScore): number => {
  requireFinite({ rawPoints, leastPoints, greatestPoints });
  requireNumber("greatestPoints", greatestPoints, { least: leastPoints });
  const both = { leastIncluded: true, greatestIncluded: true };
  requireNumber("rawPoints", rawPoints, { least: leastPoints, greatest: greatestPoints, ...both });
  return (100 * (rawPoints - leastPoints)) / (greatestPoints - leastPoints);
};
