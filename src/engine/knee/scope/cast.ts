import type { Place } from "./field.ts";
import type { Field } from "./field.ts";
import { along } from "./vec3.ts";

/** Where a ray ends: how far, where, and on which solid; −1 where it meets nothing. */
export interface Hit {
  readonly distanceMm: number;
  readonly place: Place;
  readonly id: number;
}

/** How a ray is walked; the shader walks in the same way. */
export const WALK = { startMm: 0.4, share: 0.92, nearMm: 0.01, nearPerMm: 0.0008, farMm: 110, steps: 90 } as const;

/** Walks a ray through the distances of a field until it meets a solid. */
export const cast = (field: Field, from: Place, direction: Place): Hit => {
  let distanceMm: number = WALK.startMm;
  let place = along(from, direction, distanceMm);
  let id = -1;
  for (let step = 0; step < WALK.steps; step += 1) {
    const near = field.nearest(place);
    id = near.id;
    if (near.distanceMm < WALK.nearMm + WALK.nearPerMm * distanceMm) return { distanceMm, place, id };
    distanceMm += near.distanceMm * WALK.share;
    if (distanceMm > WALK.farMm) return { distanceMm, place, id: -1 };
    place = along(from, direction, distanceMm);
  }
  return { distanceMm, place, id };
};
