import { requireNumber, requirePositive } from "../quantity/require.ts";
import { RADIANS_PER_DEGREE } from "../quantity/tolerance.ts";

export interface WidthInField {
  readonly widthMm: number;
  readonly fieldDeg: number;
}

/**
 * How far a plane square to the view must lie for the picture to show a given width of it, width ÷ (2 tan(field ÷ 2)):
 * the way back from `fieldWidthMm`.
 *
 * @param widthMm - Diameter of the circle wanted in the picture, in mm; greater than 0.
 * @param fieldDeg - Full angle of the field in the medium in front of it, in degrees; greater than 0, less than 180.
 * @returns Distance in mm, from the point where the view opens (the entrance pupil).
 * @throws {RangeError} If a value is outside its range.
 * @example distanceForWidthMm({ widthMm: 20, fieldDeg: 90 }) // => 10
 */
export const distanceForWidthMm = ({ widthMm, fieldDeg }: WidthInField): number => {
  requirePositive({ widthMm, fieldDeg });
  requireNumber("fieldDeg", fieldDeg, { greatest: 180 });
  return widthMm / (2 * Math.tan((fieldDeg / 2) * RADIANS_PER_DEGREE));
};
