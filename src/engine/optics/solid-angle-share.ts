import { requireNumber } from "../quantity/require.ts";
import { RADIANS_PER_DEGREE } from "../quantity/tolerance.ts";

export interface Cone {
  readonly coneDeg: number;
}

/** Full angle of a cone opened until it holds every direction. */
const WHOLE_SPHERE_DEG = 360;

/**
 * Share of all directions that a cone holds. A cap's area is in step with its height (Archimedes, On the Sphere and
 * Cylinder, book 1), so the share is (1 − cos(cone ÷ 2)) ÷ 2, written here as sin²(cone ÷ 4), which keeps its digits in
 * narrow cones. What one turn of an angled scope shows is the share of its swept cone less that of its blind one.
 *
 * @param coneDeg - Full angle of the cone, in degrees; 0 to 360 (every direction), both included.
 * @returns Share from 0 to 1.
 * @throws {RangeError} If the angle is outside its range.
 * @example solidAngleShare({ coneDeg: 120 }) // => 0.25
 */
export const solidAngleShare = ({ coneDeg }: Cone): number => {
  requireNumber("coneDeg", coneDeg, { least: 0, leastIncluded: true, greatest: WHOLE_SPHERE_DEG, greatestIncluded: true });
  return Math.sin((coneDeg / 4) * RADIANS_PER_DEGREE) ** 2;
};
