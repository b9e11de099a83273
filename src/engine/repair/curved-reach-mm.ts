import { requirePositive } from "../quantity/require.ts";

/**
 * Where a curved needle ends after an arc of its own curve: how far forward, and how far to the side.
 *
 * @param curveRadiusMm - Radius of the curve, in mm; greater than 0.
 * @param arcMm - Length pushed out along the curve, in mm; greater than 0.
 * @returns `forwardMm` and `sideMm`, in mm, from the point where the curve begins.
 * @throws {RangeError} If a length is outside its range.
 * @example curvedReachMm({ curveRadiusMm: 100, arcMm: 20 }) // => { forwardMm: 19.867, sideMm: 1.993 }
 */
export const curvedReachMm = ({ curveRadiusMm, arcMm }: { readonly curveRadiusMm: number; readonly arcMm: number }): { readonly forwardMm: number; readonly sideMm: number } => {
  requirePositive({ curveRadiusMm, arcMm });
  const turnRad = arcMm / curveRadiusMm;
  return { forwardMm: curveRadiusMm * Math.sin(turnRad), sideMm: curveRadiusMm * (1 - Math.cos(turnRad)) };
};
