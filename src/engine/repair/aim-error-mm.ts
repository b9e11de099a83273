import { requireNumber, requirePositive } from "../quantity/require.ts";

const RIGHT_ANGLE_DEG = 90;

/**
 * How far a needle misses to the side when it is aimed a little wrong.
 *
 * @param pathMm - Length of the path, in mm; greater than 0.
 * @param errorDeg - Error of the aim, in degrees; 0 included, below 90.
 * @returns Miss to the side, in mm.
 * @throws {RangeError} If a value is outside its range.
 * @example aimErrorMm({ pathMm: 40, errorDeg: 45 }) // => 40
 */
export const aimErrorMm = ({ pathMm, errorDeg }: { readonly pathMm: number; readonly errorDeg: number }): number => {
  requirePositive({ pathMm });
  requireNumber("errorDeg", errorDeg, { least: 0, leastIncluded: true, greatest: RIGHT_ANGLE_DEG });
  return pathMm * Math.tan((errorDeg * Math.PI) / 180);
};
