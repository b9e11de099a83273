import { arcPoint } from "../geometry/arc.ts";
import { crossings, exitDistance } from "../geometry/circle.ts";
import { nearestOnSegment } from "../geometry/distance-to-segment.ts";
import { unitTo } from "../geometry/unit.ts";
import { fromTo, lengthOf, movedAlong, type Point } from "../geometry/vec2.ts";
import { requireNotNegative, requireNumber, requirePositive } from "../quantity/require.ts";
import { ROOT_TOLERANCE } from "../quantity/tolerance.ts";
import { bearingDeg } from "./bearing.ts";
import type { Knee, PortalId } from "./knee.ts";
import { isAtRisk, type Structure, type StructureId } from "./structure.ts";

export interface NeedleSetting {
  readonly knee: Knee;
  readonly portal: PortalId;
  readonly targetDeg: number;
  readonly entryToJunctionMm: number;
  readonly depthMm: number;
  readonly needleRadiusMm: number;
}

/** How a needle lies to one structure. */
export interface NeedleToStructure {
  readonly id: StructureId;
  /** Depth from the entry at which the needle, pushed on along its line, would first touch the edge; `null` where the line passes by. */
  readonly touchesAtMm: number | null;
  /** Edge to edge at the closest approach of the needle between entry and tip; 0 or negative where they touch. */
  readonly clearanceMm: number;
  /** Depth from the entry of that closest approach. */
  readonly closestAtMm: number;
}

export interface Needle {
  readonly bearingDeg: number;
  readonly entry: Point;
  readonly junction: Point;
  readonly tip: Point;
  /** From the free edge to the junction along the line, in mm; `null` where the line passes beside the free edge. */
  readonly pathWidthMm: number | null;
  readonly entryToCapsuleMm: number;
  /** Tip beyond the outer wall of the capsule, in mm; negative while it is still in front of it. */
  readonly overshootMm: number;
  readonly structures: readonly NeedleToStructure[];
  /** The vessel or nerve with the least clearance. */
  readonly nearest: NeedleToStructure;
}

interface Line {
  readonly start: Point;
  readonly direction: Point;
  readonly depthMm: number;
  readonly radiusMm: number;
}

const toStructure = ({ start, direction, depthMm, radiusMm }: Line, structure: Structure): NeedleToStructure => {
  const nearest = nearestOnSegment(start, movedAlong(start, direction, depthMm), structure.centre);
  const [near, far] = crossings(start, direction, { ...structure, radiusMm: structure.radiusMm + radiusMm }) ?? [0, -1];
  return {
    id: structure.id,
    touchesAtMm: far < 0 ? null : Math.max(0, near),
    clearanceMm: lengthOf(fromTo(nearest, structure.centre)) - structure.radiusMm - radiusMm,
    closestAtMm: lengthOf(fromTo(start, nearest)),
  };
};

const leastOf = (structures: readonly NeedleToStructure[], knee: Knee): NeedleToStructure => {
  const risky = new Set(knee.structures.filter(isAtRisk).map(({ id }) => id));
  return structures.filter(({ id }) => risky.has(id)).reduce((least, one) => (one.clearanceMm < least.clearanceMm ? one : least));
};

const pathWidthAlong = ({ lateral }: Knee, portal: Point, direction: Point): number | null => {
  const free = crossings(portal, direction, lateral.freeEdge);
  return free === null ? null : exitDistance(portal, direction, lateral.rim) - free[1];
};

const requireSetting = ({ knee, targetDeg, entryToJunctionMm, depthMm, needleRadiusMm }: NeedleSetting): void => {
  const { fromDeg, toDeg } = knee.lateral.rim;
  requireNumber("targetDeg", targetDeg, { least: toDeg, leastIncluded: true, greatest: fromDeg, greatestIncluded: true });
  requirePositive({ depthMm });
  requireNotNegative({ entryToJunctionMm, needleRadiusMm });
};

/**
 * A straight needle from a portal through the lateral meniscus to a point of its junction.
 *
 * @param knee - The knee.
 * @param portal - "AL" (anterolateral) or "AM" (anteromedial).
 * @param targetDeg - Rim angle of the lateral meniscus at which the needle leaves through the junction, in degrees; inside
 * the ends of the rim, and on the far side of the rim as seen from the portal.
 * @param entryToJunctionMm - From where the needle enters the meniscus to the junction, along the needle, in mm; 0 included.
 * @param depthMm - From the entry to the tip, in mm; greater than 0.
 * @param needleRadiusMm - Radius of the needle, in mm; 0 included.
 * @returns Where it enters, leaves and ends, how far to the capsule, and how it lies to every structure; lengths in mm.
 * @throws {RangeError} If a value is outside its range, or the target lies on the near side.
 */
export const needleAt = (setting: NeedleSetting): Needle => {
  requireSetting(setting);
  const { knee, entryToJunctionMm, depthMm, needleRadiusMm } = setting;
  const portal = knee.portals[setting.portal];
  const junction = arcPoint(knee.lateral.rim, setting.targetDeg);
  const direction = unitTo(portal, junction);
  const reachMm = lengthOf(fromTo(portal, junction));
  if (reachMm < exitDistance(portal, direction, knee.lateral.rim) - ROOT_TOLERANCE * reachMm) {
    throw new RangeError(`targetDeg must lie on the far side of the rim as seen from the portal, got ${setting.targetDeg}`);
  }
  requireNumber("entryToJunctionMm", entryToJunctionMm, { least: 0, leastIncluded: true, greatest: reachMm });
  const entry = movedAlong(junction, direction, -entryToJunctionMm);
  const entryToCapsuleMm = exitDistance(entry, direction, knee.capsule.lateral);
  const structures = knee.structures.map((one) => toStructure({ start: entry, direction, depthMm, radiusMm: needleRadiusMm }, one));
  return {
    bearingDeg: bearingDeg(knee.side, portal, junction),
    entry,
    junction,
    tip: movedAlong(entry, direction, depthMm),
    pathWidthMm: pathWidthAlong(knee, portal, direction),
    entryToCapsuleMm,
    overshootMm: depthMm - entryToCapsuleMm,
    structures,
    nearest: leastOf(structures, knee),
  };
};
