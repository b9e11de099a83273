import { compareOnGrid, sumOnGrid } from "../quantity/grid.ts";
import { DEGREES_PER_RADIAN } from "../quantity/tolerance.ts";
import { requireLengths } from "./require-lengths.ts";

export interface ZoneTriangle {
  readonly nearEdgeMm: number;
  readonly farEdgeMm: number;
  readonly widthMm: number;
}

const requireTriangle = ({ nearEdgeMm, farEdgeMm, widthMm }: ZoneTriangle): void => {
  const difference = Math.abs(sumOnGrid(nearEdgeMm, -farEdgeMm));
  const sum = sumOnGrid(nearEdgeMm, farEdgeMm);
  if (compareOnGrid(widthMm, difference) >= 0 && compareOnGrid(widthMm, sum) <= 0) return;
  throw new RangeError(
    `widthMm must be at least the difference of nearEdgeMm and farEdgeMm (${difference}) and at most their sum (${sum}), got ${widthMm}`,
  );
};

/**
 * Angle at the portal between the two ends of a zone: the room for turning the needle. By the law of cosines,
 * written with half angles, tan²(A/2) = (w² − (a − b)²) ÷ ((a + b)² − w²), which keeps its digits for narrow zones
 * where the arc cosine loses them.
 *
 * @param nearEdgeMm - Portal to the nearer end of the zone, in mm; greater than 0, at most 10⁹. The two edges may
 * be exchanged.
 * @param farEdgeMm - Portal to the other end, in mm; greater than 0, at most 10⁹.
 * @param widthMm - Width of the zone between its ends, in mm; at least the difference and at most the sum of the two.
 * @returns Angle in degrees, 0 to 180; 0 where the ends lie one behind the other.
 * @throws {RangeError} If a length is outside its range, or the three lengths close no triangle.
 * @example zoneAngleDeg({ nearEdgeMm: 30, farEdgeMm: 40, widthMm: 50 }) // => 90
 */
export const zoneAngleDeg = ({ nearEdgeMm, farEdgeMm, widthMm }: ZoneTriangle): number => {
  requireLengths({ nearEdgeMm, farEdgeMm, widthMm });
  requireTriangle({ nearEdgeMm, farEdgeMm, widthMm });
  const difference = Math.abs(nearEdgeMm - farEdgeMm);
  const sum = nearEdgeMm + farEdgeMm;
  if (compareOnGrid(widthMm, difference) === 0) return 0;
  if (compareOnGrid(widthMm, sum) === 0) return 180;
  const opening = (widthMm - difference) * (widthMm + difference);
  const closing = (sum - widthMm) * (sum + widthMm);
  return 2 * Math.atan2(Math.sqrt(opening), Math.sqrt(closing)) * DEGREES_PER_RADIAN;
};
