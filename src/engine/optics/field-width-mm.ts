import { requireNumber, requirePositive } from "../quantity/require.ts";
import { RADIANS_PER_DEGREE } from "../quantity/tolerance.ts";

export interface FieldAtDistance {
  readonly distanceMm: number;
  readonly fieldDeg: number;
}

/**
 * Width of the circle that the picture shows on a plane square to the view, 2 d tan(field ÷ 2).
 *
 * @param distanceMm - From the point where the view opens (the entrance pupil) to the plane, in mm; greater than 0.
 * @param fieldDeg - Full angle of the field in the medium in front of it, in degrees; greater than 0, less than 180.
 * @returns Diameter in mm.
 * @throws {RangeError} If a value is outside its range.
 * @example fieldWidthMm({ distanceMm: 10, fieldDeg: 90 }) // => 20
 */
export const fieldWidthMm = ({ distanceMm, fieldDeg }: FieldAtDistance): number => {
  requirePositive({ distanceMm, fieldDeg });
  requireNumber("fieldDeg", fieldDeg, { greatest: 180 });
  return 2 * distanceMm * Math.tan((fieldDeg / 2) * RADIANS_PER_DEGREE);
};
