import { requireCount, requireNumber } from "../quantity/require.ts";
import { fieldWidthMm } from "./field-width-mm.ts";

export interface SampledField {
  readonly distanceMm: number;
  readonly fieldDeg: number;
  readonly acrossPx: number;
}

export interface PixelSize {
  readonly pixelMm: number;
  /** Smallest detail that can show: one pixel for it and one beside it (sampling theorem, Shannon 1949, Proc IRE 37:10, 10.1109/JRPROC.1949.232969). */
  readonly detailMm: number;
}

/**
 * What one pixel covers on a plane square to the view, field width over the pixels across, and the smallest detail
 * that two pixels can show. The lens may do worse, and with barrel distortion the edge of the picture does.
 *
 * @param distanceMm - From the point where the view opens (the entrance pupil) to the plane, in mm; greater than 0.
 * @param fieldDeg - Full angle of the field in the medium in front of it, in degrees; greater than 0, less than 180.
 * @param acrossPx - Pixels across the picture's circle; a whole number, at least 1 (included).
 * @returns Millimetres of one pixel and of the two-pixel detail.
 * @throws {RangeError} If a value is outside its range, or the pixels are not a whole number.
 * @example pixelSizeMm({ distanceMm: 10, fieldDeg: 90, acrossPx: 400 }) // => { pixelMm: 0.05, detailMm: 0.1 }
 */
export const pixelSizeMm = ({ distanceMm, fieldDeg, acrossPx }: SampledField): PixelSize => {
  requireNumber("acrossPx", acrossPx, { least: 1, leastIncluded: true });
  requireCount({ acrossPx });
  const pixelMm = fieldWidthMm({ distanceMm, fieldDeg }) / acrossPx;
  return { pixelMm, detailMm: 2 * pixelMm };
};
