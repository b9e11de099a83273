import { requireNotNegative, requireNumber, requirePositive } from "../quantity/require.ts";

export interface AngledView {
  readonly viewDeg: number;
  readonly fieldDeg: number;
}

/** Full angles of the cone that one turn of the scope shows and of the cone that stays unseen straight ahead. */
export interface SweptCone {
  readonly totalDeg: number;
  readonly blindDeg: number;
}

/**
 * What one full turn of a scope about its own shaft shows, its tip standing still: a cone of 2 (view + field ÷ 2), and in
 * front of it, where the view is tilted by more than half the field, a cone of 2 (view − field ÷ 2) that stays unseen.
 *
 * @param viewDeg - Tilt of the view from the shaft, in degrees; 0 (a straight-ahead scope) included.
 * @param fieldDeg - Full angle of the field, in degrees; greater than 0, at most 180 (included).
 * @returns Full angles in degrees; the blind one is 0 where nothing straight ahead is missed.
 * @throws {RangeError} If a value is outside its range, or view + field ÷ 2 goes beyond straight backwards (180).
 * @example sweptConeDeg({ viewDeg: 70, fieldDeg: 90 }) // => { totalDeg: 230, blindDeg: 50 }
 */
export const sweptConeDeg = ({ viewDeg, fieldDeg }: AngledView): SweptCone => {
  requireNotNegative({ viewDeg });
  requirePositive({ fieldDeg });
  requireNumber("fieldDeg", fieldDeg, { greatest: 180, greatestIncluded: true });
  requireNumber("viewDeg", viewDeg, { greatest: 180 - fieldDeg / 2, greatestIncluded: true });
  return { totalDeg: 2 * viewDeg + fieldDeg, blindDeg: Math.max(0, 2 * viewDeg - fieldDeg) };
};
