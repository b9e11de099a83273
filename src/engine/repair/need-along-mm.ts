import { requireNumber, requirePositive } from "../quantity/require.ts";

const RIGHT_ANGLE_DEG = 90;

/**
 * What a layer needs along a tilted needle: its thickness over the cosine of the tilt. Only a layer that lies flat
 * across the line grows so; the distance to a round vessel does not, and never may be divided by a cosine.
 *
 * @param needMm - Need along the perpendicular, in mm; greater than 0.
 * @param tiltDeg - Tilt of the needle from the perpendicular, in degrees; 0 included, below 90.
 * @returns Need along the needle, in mm.
 * @throws {RangeError} If a value is outside its range.
 * @example needAlongMm({ needMm: 6, tiltDeg: 60 }) // => 12
 */
export const needAlongMm = ({ needMm, tiltDeg }: { readonly needMm: number; readonly tiltDeg: number }): number => {
  requirePositive({ needMm });
  requireNumber("tiltDeg", tiltDeg, { least: 0, leastIncluded: true, greatest: RIGHT_ANGLE_DEG });
  return needMm / Math.cos((tiltDeg * Math.PI) / 180);
};
