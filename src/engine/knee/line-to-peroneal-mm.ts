import { dot, fromTo } from "../geometry/vec2.ts";
import { directionAt } from "./bearing.ts";
import { type Knee, type PortalId, structureOf } from "./knee.ts";
import { edgeBearingDeg } from "./zone-widths.ts";

export interface AimedLine {
  readonly portal: PortalId;
  /** The edge of the popliteus tendon that the line touches. */
  readonly edge: "lateral" | "medial";
}

/**
 * From a line that is drawn on beyond its target to the edge of the common peroneal nerve, in mm; 0 or negative where it
 * touches. The line runs from a portal past one edge of the popliteus tendon, as Houston and others drew it
 * (2025, DOI 10.1177/23259671241304817).
 */
export const lineToPeronealMm = (knee: Knee, { portal, edge }: AimedLine): number => {
  const start = knee.portals[portal];
  const direction = directionAt(knee.side, edgeBearingDeg(knee, start, { structure: structureOf(knee, "popliteus"), edge: edge === "lateral" ? 1 : -1 }));
  const { centre, radiusMm } = structureOf(knee, "peroneal-nerve");
  return Math.abs(dot(fromTo(start, centre), { xMm: -direction.yMm, yMm: direction.xMm })) - radiusMm;
};
