import { gapToCircle } from "../geometry/circle.ts";
import { type Knee, structureOf } from "./knee.ts";
import { hindmostPoint } from "./meniscus.ts";

export interface ShortestToArtery {
  readonly lateralMm: number;
  readonly medialMm: number;
}

/**
 * Shortest distance from the hindmost point of each meniscus to the near wall of the artery, in any direction, as Shea and
 * others measured it (2019, DOI 10.1177/2325967119842843).
 *
 * @param knee - The knee.
 * @returns For the lateral and the medial meniscus, in mm.
 */
export const shortestToArtery = (knee: Knee): ShortestToArtery => {
  const artery = structureOf(knee, "artery");
  return { lateralMm: gapToCircle(hindmostPoint(knee.lateral.rim), artery), medialMm: gapToCircle(hindmostPoint(knee.medial.rim), artery) };
};
