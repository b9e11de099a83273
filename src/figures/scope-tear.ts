import { arcPoint } from "../engine/geometry/arc.ts";
import { type Sighted, sightOf } from "../engine/knee/scope/in-view.ts";
import { tearAngleDeg } from "../engine/knee/scope/lesion.ts";
import type { ScopeModel } from "./scope-setting.ts";

const NEAR_EDGE = 0.7;
const TEAR_HEIGHT_MM = 1;

/** Where a tear lies in the picture: its gap near the free edge; null for one that has no one place. */
export const tearOf = (model: ScopeModel): Sighted | null => {
  const { setting, knee, scale } = model;
  const angleDeg = tearAngleDeg(setting);
  if (angleDeg === null) return null;
  const [outer, inner] = [arcPoint(knee[setting.of].rim, angleDeg), arcPoint(knee[setting.of].freeEdge, angleDeg)];
  const at = (from: number, to: number): number => (from + (to - from) * NEAR_EDGE) / scale;
  return sightOf(model, [at(outer.xMm, inner.xMm), at(outer.yMm, inner.yMm), TEAR_HEIGHT_MM]);
};
