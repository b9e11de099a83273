import { RADIANS_PER_DEGREE } from "../quantity/tolerance.ts";
import type { Circle } from "./circle.ts";
import { movedAlong, type Point } from "./vec2.ts";

/**
 * A part of a circle. Its angles are counted from the outward direction (towards +x where `outward` is 1, towards −x
 * where it is −1), positive towards +y, so that a mirrored arc keeps its angles.
 */
export interface Arc extends Circle {
  readonly outward: 1 | -1;
  readonly fromDeg: number;
  readonly toDeg: number;
}

/** The direction of length 1 at an angle of an arc. */
export const outwardAt = ({ outward }: Pick<Arc, "outward">, angleDeg: number): Point => ({
  xMm: outward * Math.cos(angleDeg * RADIANS_PER_DEGREE),
  yMm: Math.sin(angleDeg * RADIANS_PER_DEGREE),
});

/** The point of an arc's circle at an angle, also beyond the ends of the arc. */
export const arcPoint = (arc: Arc, angleDeg: number): Point => movedAlong(arc.centre, outwardAt(arc, angleDeg), arc.radiusMm);

/** The angle of a point as the arc counts it, greater than −180 and at most 180. */
export const arcAngleDeg = ({ centre, outward }: Arc, { xMm, yMm }: Point): number =>
  Math.atan2(yMm - centre.yMm, outward * (xMm - centre.xMm)) / RADIANS_PER_DEGREE;

/** Points along an arc from one end to the other, ends included, `steps` pieces. */
export const arcPoints = (arc: Arc, steps: number): readonly Point[] =>
  Array.from({ length: steps + 1 }, (_, step) => arcPoint(arc, arc.fromDeg + ((arc.toDeg - arc.fromDeg) * step) / steps));
