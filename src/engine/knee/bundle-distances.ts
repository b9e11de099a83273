import { exitDistance } from "../geometry/circle.ts";
import { unitTo } from "../geometry/unit.ts";
import { fromTo, lengthOf } from "../geometry/vec2.ts";
import { type Knee, structureOf } from "./knee.ts";

export interface BundleDistances {
  readonly freeEdgeMm: number;
  readonly middleMm: number;
  readonly junctionMm: number;
}

/**
 * Distances to the bundle along the line from the anterolateral portal to it, as Schachne and others measured them (2019,
 * DOI 10.1177/2325967119855027). In the model the line is aimed at the centre of the artery, which stands foremost, and
 * ends at its near wall.
 *
 * @param knee - The knee.
 * @returns From the free edge, the middle and the junction of the lateral meniscus, in mm.
 */
export const bundleDistances = (knee: Knee): BundleDistances => {
  const portal = knee.portals.AL;
  const artery = structureOf(knee, "artery");
  const direction = unitTo(portal, artery.centre);
  const wallMm = lengthOf(fromTo(portal, artery.centre)) - artery.radiusMm;
  const junctionMm = wallMm - exitDistance(portal, direction, knee.lateral.rim);
  const freeEdgeMm = wallMm - exitDistance(portal, direction, knee.lateral.freeEdge);
  return { freeEdgeMm, middleMm: (freeEdgeMm + junctionMm) / 2, junctionMm };
};
