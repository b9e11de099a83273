import { arcAngleDeg } from "../geometry/arc.ts";
import { crossings } from "../geometry/circle.ts";
import { movedAlong } from "../geometry/vec2.ts";
import { directionAt } from "./bearing.ts";
import type { Knee, PortalId } from "./knee.ts";
import { type Needle, needleAt } from "./needle.ts";

/** A needle as a hand sets it: a bearing at the portal, where it enters, and how deep it goes. */
export interface AimedNeedle {
  readonly knee: Knee;
  readonly portal: PortalId;
  readonly bearingDeg: number;
  readonly entryToJunctionMm: number;
  readonly depthMm: number;
  readonly needleRadiusMm: number;
}

/** Rim angle at which a line under a bearing leaves the lateral meniscus; `null` where it misses the meniscus. */
export const rimAngleAt = ({ knee, portal, bearingDeg }: Pick<AimedNeedle, "knee" | "portal" | "bearingDeg">): number | null => {
  const start = knee.portals[portal];
  const direction = directionAt(knee.side, bearingDeg);
  const { rim } = knee.lateral;
  const [, reachMm] = crossings(start, direction, rim) ?? [0, -1];
  if (reachMm <= 0) return null;
  const angle = arcAngleDeg(rim, movedAlong(start, direction, reachMm));
  return angle <= rim.fromDeg && angle >= rim.toDeg ? angle : null;
};

/** The needle under a bearing, or `null` where that line misses the lateral meniscus. */
export const needleUnder = (aimed: AimedNeedle): Needle | null => {
  const targetDeg = rimAngleAt(aimed);
  if (targetDeg === null) return null;
  const { knee, portal, entryToJunctionMm, depthMm, needleRadiusMm } = aimed;
  return needleAt({ knee, portal, targetDeg, entryToJunctionMm, depthMm, needleRadiusMm });
};
