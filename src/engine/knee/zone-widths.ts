import { exitDistance } from "../geometry/circle.ts";
import { unitTo } from "../geometry/unit.ts";
import { dot, fromTo, lengthOf, movedAlong, type Point } from "../geometry/vec2.ts";
import { requirePositive } from "../quantity/require.ts";
import { RADIANS_PER_DEGREE } from "../quantity/tolerance.ts";
import { bearingDeg, directionAt } from "./bearing.ts";
import { type Knee, structureOf } from "./knee.ts";
import { isBundle, type Structure } from "./structure.ts";

export interface ZoneWidths {
  /** Along the junction, in mm. */
  readonly junctionMm: number;
  /** Parallel to it, `separationMm` further forwards, in mm. */
  readonly frontMm: number;
  /** From the edge of the patellar tendon square to the line along the junction, in mm. */
  readonly apexDepthMm: number;
  /** Where the two lines cross the junction: at the bundle and at the popliteus tendon. */
  readonly atBundle: Point;
  readonly atTendon: Point;
}

/** Bearing of the line that touches a structure on its lateral (+1) or medial (−1) edge. */
export const edgeBearingDeg = ({ side }: Knee, from: Point, { structure, edge }: { structure: Structure; edge: 1 | -1 }): number => {
  const rangeMm = lengthOf(fromTo(from, structure.centre));
  if (rangeMm <= structure.radiusMm) throw new RangeError(`from must lie outside the structure ${structure.id}, got ${from.xMm}, ${from.yMm}`);
  return bearingDeg(side, from, structure.centre) + (edge * Math.asin(structure.radiusMm / rangeMm)) / RADIANS_PER_DEGREE;
};

/**
 * Width of the zone between bundle and popliteus tendon as Beck and others measured it (2019, Arthroscopy, "Defining a Safe
 * Zone for All-Inside Lateral Meniscal Repairs in Pediatric Patients"): from the lateral edge of the patellar tendon one line to the medial edge of the popliteus tendon
 * and one to the lateral edge of the bundle; the width is the straight piece between their crossings with the junction.
 *
 * @param knee - The knee.
 * @param separationMm - How far in front of the junction the second width is taken, in mm; greater than 0.
 * @returns Both widths and the depth of the apex, in mm, and the two crossings.
 * @throws {RangeError} If the separation is outside its range or reaches the apex.
 */
export const zoneWidths = (knee: Knee, separationMm: number): ZoneWidths => {
  requirePositive({ separationMm });
  const apex = knee.tendon.lateralEdge;
  const crossing = (angleDeg: number): Point => {
    const direction = directionAt(knee.side, angleDeg);
    return movedAlong(apex, direction, exitDistance(apex, direction, knee.lateral.rim));
  };
  const atTendon = crossing(edgeBearingDeg(knee, apex, { structure: structureOf(knee, "popliteus"), edge: -1 }));
  const atBundle = crossing(Math.max(...knee.structures.filter(isBundle).map((structure) => edgeBearingDeg(knee, apex, { structure, edge: 1 }))));
  const along = unitTo(atBundle, atTendon);
  const apexDepthMm = Math.abs(dot(fromTo(atBundle, apex), { xMm: -along.yMm, yMm: along.xMm }));
  if (separationMm >= apexDepthMm) throw new RangeError(`separationMm must be less than the depth of the apex (${apexDepthMm}), got ${separationMm}`);
  const junctionMm = lengthOf(fromTo(atBundle, atTendon));
  return { junctionMm, frontMm: (junctionMm * (apexDepthMm - separationMm)) / apexDepthMm, apexDepthMm, atBundle, atTendon };
};
