import { DEGREES_PER_RADIAN } from "../../quantity/tolerance.ts";
import type { Camera } from "./camera.ts";
import type { Place } from "./field.ts";
import { dot3, length } from "./vec3.ts";

/** A place of the round picture: right and up, as shares of its radius; beyond 1 together it lies outside. */
export type Spot = readonly [number, number];

/**
 * Where a direction lies in the round picture of a camera: the way back from `rayAt`.
 *
 * @param camera - Directions of the camera.
 * @param fieldDeg - Full angle of the field, in degrees; greater than 0.
 * @param direction - Any direction but straight back; its length does not matter.
 */
export const spotOf = ({ right, up, ahead }: Camera, fieldDeg: number, direction: Place): Spot => {
  const [aside, above] = [dot3(direction, right), dot3(direction, up)];
  const across = Math.hypot(aside, above);
  if (across === 0) return [0, 0];
  const offDeg = Math.acos(Math.min(1, Math.max(-1, dot3(direction, ahead) / length(direction)))) * DEGREES_PER_RADIAN;
  const radius = offDeg / (fieldDeg / 2);
  return [(radius * aside) / across, (radius * above) / across];
};
