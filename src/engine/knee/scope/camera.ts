import { RADIANS_PER_DEGREE } from "../../quantity/tolerance.ts";
import type { Place } from "./field.ts";
import { along, cross, length, minus, scaled, unit } from "./vec3.ts";

/** What a scope is and how it is held. Clock angles are 0 up and positive clockwise in the picture. */
export interface Scope {
  /** Direction of view: tilt from the shaft, in degrees; 0 is straight ahead. */
  readonly viewDeg: number;
  /** Turn about the shaft: where the tilted view points, as a clock angle in degrees. */
  readonly turnDeg: number;
  /** Full angle of the field in the medium in front of the lens, in degrees. */
  readonly fieldDeg: number;
}

/** A scope in space: through a portal, its lens at the tip. */
export interface Held extends Scope {
  readonly portal: Place;
  readonly tip: Place;
}

/** Directions of length 1: of the shaft, and of the picture to its right, up, and ahead. */
export interface Camera {
  readonly tip: Place;
  readonly shaft: Place;
  readonly right: Place;
  readonly up: Place;
  readonly ahead: Place;
}

const UP: Place = [0, 0, 1];

const combined = (first: Place, second: Place, angleRad: number): Place => along(scaled(first, Math.cos(angleRad)), second, Math.sin(angleRad));

const viewFrom = (shaft: Place, { viewDeg, turnDeg }: Scope): Place => {
  const right = unit(cross(shaft, UP));
  const tilted = combined(cross(right, shaft), right, turnDeg * RADIANS_PER_DEGREE);
  return combined(shaft, tilted, viewDeg * RADIANS_PER_DEGREE);
};

/**
 * The camera of a scope that is held with its horizon level: the picture's up is the patient's up, whatever the turn.
 *
 * @param held - Portal and tip in mm, and the scope; tip and portal must differ, and not stand one above the other.
 */
export const cameraOf = (held: Held): Camera => {
  const shaft = unit(minus(held.tip, held.portal));
  const ahead = viewFrom(shaft, held);
  const right = unit(cross(ahead, UP));
  return { tip: held.tip, shaft, right, up: cross(right, ahead), ahead };
};

const STEPS = 24;

interface Aim {
  readonly portal: Place;
  readonly target: Place;
  readonly distanceMm: number;
}

/** The tip from which this scope, through this portal, has the target in the middle of its picture at this distance. */
export const tipFor = ({ portal, target, distanceMm }: Aim, scope: Scope): Place => {
  const nearMm = Math.min(distanceMm, length(minus(target, portal)) - 1);
  let tip = along(target, unit(minus(target, portal)), -nearMm);
  for (let step = 0; step < STEPS; step += 1) tip = along(target, viewFrom(unit(minus(tip, portal)), scope), -nearMm);
  return tip;
};

/** The direction into space of a place of the round picture: right and up, each −1 to 1, at most 1 together. Equal steps from the middle are equal angles. */
export const rayAt = ({ right, up, ahead }: Camera, fieldDeg: number, [u, v]: readonly [number, number]): Place => {
  const radius = Math.hypot(u, v);
  const angleRad = radius * (fieldDeg / 2) * RADIANS_PER_DEGREE;
  const aside = radius === 0 ? 0 : Math.sin(angleRad) / radius;
  return along(along(scaled(ahead, Math.cos(angleRad)), right, u * aside), up, v * aside);
};
