import { requireNumber, requirePositive } from "../quantity/require.ts";
import { RADIANS_PER_DEGREE } from "../quantity/tolerance.ts";

export interface DrilledPlate {
  readonly drillMm: number;
  readonly angleDeg: number;
  readonly plateMm2: number;
}

export interface PlateLoss {
  /** Area of the hole in the plane of the plate. */
  readonly holeMm2: number;
  readonly share: number;
}

const RIGHT_ANGLE_DEG = 90;

/**
 * Area that a drill takes from a growth plate that it crosses: the round drill cuts a flat plate in an ellipse of area π d² ÷ (4 sin
 * angle), as its long axis is d ÷ sin angle. The plate is taken as flat and the hole as wholly inside it; a real plate is wavy.
 * At which share growth is disturbed differs between animals, and no limit for children was found.
 *
 * @param drillMm - Diameter of the drill, in mm; greater than 0.
 * @param angleDeg - Angle between drill and plate, in degrees; greater than 0, at most 90 (included).
 * @param plateMm2 - Area of the plate, in mm²; at least the hole.
 * @returns Area of the hole in mm², and its share of the plate, greater than 0, at most 1.
 * @throws {RangeError} If a value is outside its range.
 * @example physisShare({ drillMm: 8, angleDeg: 60, plateMm2: 2000 }) // => { holeMm2: 58, share: 0.029 }
 */
export const physisShare = ({ drillMm, angleDeg, plateMm2 }: DrilledPlate): PlateLoss => {
  requirePositive({ drillMm, plateMm2 });
  requireNumber("angleDeg", angleDeg, { least: 0, greatest: RIGHT_ANGLE_DEG, greatestIncluded: true });
  const holeMm2 = (Math.PI * drillMm ** 2) / (4 * Math.sin(angleDeg * RADIANS_PER_DEGREE));
  requireNumber("plateMm2", plateMm2, { least: holeMm2, leastIncluded: true });
  return { holeMm2, share: holeMm2 / plateMm2 };
};
