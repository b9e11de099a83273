import { fromTo, type Point } from "../geometry/vec2.ts";
import { RADIANS_PER_DEGREE } from "../quantity/tolerance.ts";
import type { Side } from "./sizes.ts";

/** +1 where lateral is the side of +x (right knee), −1 where it is the other. */
export const lateralSign = (side: Side): 1 | -1 => (side === "right" ? 1 : -1);

/** Bearing from one point to another in degrees: 0 straight back, positive to the lateral side, the same for both sides. */
export const bearingDeg = (side: Side, from: Point, to: Point): number => {
  const { xMm, yMm } = fromTo(from, to);
  return Math.atan2(lateralSign(side) * xMm, -yMm) / RADIANS_PER_DEGREE;
};

/** The direction of length 1 at a bearing. */
export const directionAt = (side: Side, angleDeg: number): Point => ({
  xMm: lateralSign(side) * Math.sin(angleDeg * RADIANS_PER_DEGREE),
  yMm: -Math.cos(angleDeg * RADIANS_PER_DEGREE),
});

