import { requireNumber, requirePositive } from "../quantity/require.ts";
import { DEGREES_PER_RADIAN, RADIANS_PER_DEGREE } from "../quantity/tolerance.ts";

export interface FieldInAir {
  readonly fieldInAirDeg: number;
  readonly refractiveIndex: number;
}

/**
 * The field that is left in a liquid behind a flat window square to the view, where the angle is quoted in air. The
 * ray is refracted at the window, so the sine of the half angle, not the angle, is divided by the index (Snell's law).
 *
 * @param fieldInAirDeg - Full angle in air, in degrees; greater than 0, at most 180 (included).
 * @param refractiveIndex - Index of the liquid against air; at least 1 (included).
 * @returns Full angle in the liquid, in degrees; the same angle at index 1.
 * @throws {RangeError} If a value is outside its range.
 * @example fieldInLiquidDeg({ fieldInAirDeg: 90, refractiveIndex: 1.335 }) // => 63.97
 */
export const fieldInLiquidDeg = ({ fieldInAirDeg, refractiveIndex }: FieldInAir): number => {
  requirePositive({ fieldInAirDeg });
  requireNumber("fieldInAirDeg", fieldInAirDeg, { greatest: 180, greatestIncluded: true });
  requireNumber("refractiveIndex", refractiveIndex, { least: 1, leastIncluded: true });
  const sine = Math.sin((fieldInAirDeg / 2) * RADIANS_PER_DEGREE) / refractiveIndex;
  return 2 * Math.asin(sine) * DEGREES_PER_RADIAN;
};
