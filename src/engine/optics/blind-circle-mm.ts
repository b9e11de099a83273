import { requireNumber, requirePositive } from "../quantity/require.ts";
import { fieldWidthMm } from "./field-width-mm.ts";
import { sweptConeDeg } from "./swept-cone-deg.ts";

export interface AngledViewAtDistance {
  readonly distanceMm: number;
  readonly viewDeg: number;
  readonly fieldDeg: number;
}

/** A blind cone that opens this far on each side would leave nothing of the plane. */
const RIGHT_ANGLE_DEG = 90;

/**
 * Width of the circle straight ahead that stays unseen through one full turn of an angled scope about its own shaft,
 * its tip standing still: 2 d tan(view − field ÷ 2), on a plane square to the shaft.
 *
 * @param distanceMm - From the point where the view opens (the entrance pupil) to the plane, in mm; greater than 0.
 * @param viewDeg - Tilt of the view from the shaft, in degrees; 0 (a straight-ahead scope) included, at most
 * 180 − field ÷ 2 (included) and less than 90 + field ÷ 2, where the whole plane would be unseen.
 * @param fieldDeg - Full angle of the field in the medium in front of it, in degrees; greater than 0, at most 180
 * (included).
 * @returns Diameter in mm; 0 where nothing straight ahead is missed.
 * @throws {RangeError} If a value is outside its range.
 * @example blindCircleMm({ distanceMm: 10, viewDeg: 70, fieldDeg: 90 }) // => 9.33
 */
export const blindCircleMm = ({ distanceMm, viewDeg, fieldDeg }: AngledViewAtDistance): number => {
  requirePositive({ distanceMm });
  const { blindDeg } = sweptConeDeg({ viewDeg, fieldDeg });
  requireNumber("viewDeg", viewDeg, { greatest: RIGHT_ANGLE_DEG + fieldDeg / 2 });
  return blindDeg === 0 ? 0 : fieldWidthMm({ distanceMm, fieldDeg: blindDeg });
};
