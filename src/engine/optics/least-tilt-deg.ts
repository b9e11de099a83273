import { requireNotNegative, requireNumber, requirePositive } from "../quantity/require.ts";

export interface TargetOffAxis {
  readonly targetDeg: number;
  readonly fieldDeg: number;
}

/**
 * Least tilt of a straight-ahead scope, about its tip, that brings a target to the edge of the field: target − field ÷ 2.
 * Turning such a scope about its own shaft shows the same cone again, so tilting is the only way.
 *
 * @param targetDeg - Angle of the target from the shaft, seen from the tip, in degrees; 0 (straight ahead) to 180, both
 * included.
 * @param fieldDeg - Full angle of the field, in degrees; greater than 0, at most 180 (included).
 * @returns Tilt in degrees; 0 where the target is in view already.
 * @throws {RangeError} If a value is outside its range.
 * @example leastTiltDeg({ targetDeg: 60, fieldDeg: 90 }) // => 15
 */
export const leastTiltDeg = ({ targetDeg, fieldDeg }: TargetOffAxis): number => {
  requireNotNegative({ targetDeg });
  requireNumber("targetDeg", targetDeg, { greatest: 180, greatestIncluded: true });
  requirePositive({ fieldDeg });
  requireNumber("fieldDeg", fieldDeg, { greatest: 180, greatestIncluded: true });
  return Math.max(0, targetDeg - fieldDeg / 2);
};
