import { compareOnGrid } from "../quantity/grid.ts";
import { requireNumber } from "../quantity/require.ts";
import { sweptConeDeg } from "./swept-cone-deg.ts";

export interface TargetAndView {
  readonly viewDeg: number;
  readonly fieldDeg: number;
  readonly targetDeg: number;
}

/** What it takes to see the target: nothing, a turn of the scope about its own shaft, or a tilt of the shaft. */
export type WayIntoView = "still" | "rotating" | "tilting";

/** A half turn: the farthest that a direction can lie from the shaft. */
const HALF_TURN_DEG = 180;

/**
 * The least that brings a target into view. All angles lie in the plane of the view's tilt: without moving, a target is
 * seen within half the field of the view; a full turn carries the view to every side of the shaft at the same tilt,
 * so then only the size of the target's angle counts. Compared in whole millionths of a degree; the edge is in view.
 *
 * @param viewDeg - Tilt of the view from the shaft, in degrees; 0 (a straight-ahead scope) included, at most
 * 180 − field ÷ 2 (included).
 * @param fieldDeg - Full angle of the field, in degrees; greater than 0, at most 180 (included).
 * @param targetDeg - Angle of the target from the shaft, in degrees, seen from the tip; positive on the side that the
 * view is tilted to, greater than −180, at most 180 (included).
 * @returns "still", "rotating" or "tilting"; never "rotating" for a straight-ahead scope.
 * @throws {RangeError} If a value is outside its range.
 * @example inView({ viewDeg: 30, fieldDeg: 90, targetDeg: -60 }) // => "rotating"
 */
export const inView = ({ viewDeg, fieldDeg, targetDeg }: TargetAndView): WayIntoView => {
  sweptConeDeg({ viewDeg, fieldDeg });
  requireNumber("targetDeg", targetDeg, { least: -HALF_TURN_DEG, greatest: HALF_TURN_DEG, greatestIncluded: true });
  const isWithin = (offDeg: number): boolean => compareOnGrid(Math.abs(offDeg), fieldDeg / 2) <= 0;
  if (isWithin(targetDeg - viewDeg)) return "still";
  return isWithin(Math.abs(targetDeg) - viewDeg) ? "rotating" : "tilting";
};
