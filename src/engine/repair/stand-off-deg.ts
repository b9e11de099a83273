import { compareOnGrid, sumOnGrid } from "../quantity/grid.ts";
import { DEGREES_PER_RADIAN } from "../quantity/tolerance.ts";
import { requireLengths, requireLengthsOrZero } from "./require-lengths.ts";

export interface StandOff {
  readonly rangeMm: number;
  readonly radiusMm: number;
  readonly marginMm: number;
}

/**
 * How far a line from the portal must turn away from the centre of a round structure to pass it at the margin:
 * the angle of the tangent to the widened circle, asin((radius + margin) ÷ range).
 *
 * @param rangeMm - Portal to the centre of the structure, in mm; greater than radius + margin, at most 10⁹.
 * @param radiusMm - Radius of the structure, in mm; greater than 0.
 * @param marginMm - To keep beyond its edge, in mm; 0 included.
 * @returns Angle in degrees, greater than 0 and less than 90.
 * @throws {RangeError} If a length is outside its range, or the portal lies on or inside the widened circle:
 * from there no line keeps the margin.
 * @example standOffDeg({ rangeMm: 50, radiusMm: 20, marginMm: 5 }) // => 30
 */
export const standOffDeg = ({ rangeMm, radiusMm, marginMm }: StandOff): number => {
  requireLengths({ rangeMm, radiusMm });
  requireLengthsOrZero({ marginMm });
  const widened = sumOnGrid(radiusMm, marginMm);
  if (compareOnGrid(rangeMm, widened) <= 0) {
    throw new RangeError(`rangeMm must be greater than radiusMm + marginMm (${widened}), got ${rangeMm}`);
  }
  return Math.asin((radiusMm + marginMm) / rangeMm) * DEGREES_PER_RADIAN;
};
