import { arcPoint } from "../geometry/arc.ts";
import { crossingsOrFoot } from "../geometry/circle.ts";
import { fromTo, lengthOf, type Point } from "../geometry/vec2.ts";
import { requireNotNegative } from "../quantity/require.ts";
import { RADIANS_PER_DEGREE } from "../quantity/tolerance.ts";
import { bearingDeg, directionAt } from "./bearing.ts";
import type { Knee, PortalId } from "./knee.ts";
import { isAtRisk, type StructureId } from "./structure.ts";

export interface AngleInterval {
  readonly fromDeg: number;
  readonly toDeg: number;
}

/** Angles at the portal that come too near to one structure. */
export interface BlockedAngles extends AngleInterval {
  readonly id: StructureId;
}

export interface AngleQuestion {
  readonly knee: Knee;
  readonly portal: PortalId;
  readonly marginMm: number;
  readonly needleRadiusMm: number;
  readonly beyondJunctionMm?: number;
}

export interface AnglesAtPortal {
  /** Bearings under which the portal sees the junction of the lateral meniscus from behind its back horn to its side. */
  readonly rim: AngleInterval;
  readonly blocked: readonly BlockedAngles[];
  readonly clear: readonly AngleInterval[];
}

const STEPS = 256;
const HALVINGS = 60;

const rimBearings = ({ side, lateral: { rim } }: Knee, portal: Point): AngleInterval => {
  const middle = bearingDeg(side, portal, rim.centre);
  const half = Math.asin(rim.radiusMm / lengthOf(fromTo(portal, rim.centre))) / RADIANS_PER_DEGREE;
  return { fromDeg: Math.max(middle - half, bearingDeg(side, portal, arcPoint(rim, rim.toDeg))), toDeg: middle + half };
};

/** Where a function that is at least 0 at one of two angles and below 0 at the other changes. */
const turnBetween = (atLeastZero: (angleDeg: number) => boolean, firstDeg: number, secondDeg: number): number => {
  const first = atLeastZero(firstDeg);
  let low = firstDeg;
  let high = secondDeg;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (atLeastZero(middle) === first) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** The parts of an interval in which a needle reaches the structure: its ends are found by halving between fixed steps. */
const reachedParts = ({ fromDeg, toDeg }: AngleInterval, reaches: (angleDeg: number) => boolean): readonly AngleInterval[] => {
  const parts: AngleInterval[] = [];
  const angle = (step: number): number => fromDeg + ((toDeg - fromDeg) * step) / STEPS;
  let start = reaches(fromDeg) ? fromDeg : null;
  for (let step = 1; step <= STEPS; step += 1) {
    const reached = reaches(angle(step));
    if (reached === (start !== null)) continue;
    const turn = turnBetween(reaches, angle(step - 1), angle(step));
    if (start !== null) parts.push({ fromDeg: start, toDeg: turn });
    start = start === null ? turn : null;
  }
  if (start !== null) parts.push({ fromDeg: start, toDeg });
  return parts;
};

const clipped = (one: AngleInterval, within: AngleInterval): AngleInterval => ({
  fromDeg: Math.max(one.fromDeg, within.fromDeg),
  toDeg: Math.min(one.toDeg, within.toDeg),
});

const isFilled = ({ fromDeg, toDeg }: AngleInterval): boolean => fromDeg < toDeg;

const blockedBy = (question: AngleQuestion, rim: AngleInterval): readonly BlockedAngles[] => {
  const { knee, marginMm, needleRadiusMm, beyondJunctionMm } = question;
  const portal = knee.portals[question.portal];
  return knee.structures.filter(isAtRisk).flatMap(({ id, centre, radiusMm }) => {
    const wide = { centre, radiusMm: radiusMm + marginMm + needleRadiusMm };
    const rangeMm = lengthOf(fromTo(portal, centre));
    if (rangeMm <= wide.radiusMm) return [{ id, ...rim }];
    const middle = bearingDeg(knee.side, portal, centre);
    const standOff = Math.asin(wide.radiusMm / rangeMm) / RADIANS_PER_DEGREE;
    const whole = clipped({ fromDeg: middle - standOff, toDeg: middle + standOff }, rim);
    if (!isFilled(whole)) return [];
    if (beyondJunctionMm === undefined) return [{ id, ...whole }];
    const reaches = (angleDeg: number): boolean => {
      const direction = directionAt(knee.side, angleDeg);
      const [nearMm] = crossingsOrFoot(portal, direction, wide);
      const [, junctionMm] = crossingsOrFoot(portal, direction, knee.lateral.rim);
      return junctionMm + beyondJunctionMm > nearMm;
    };
    return reachedParts(whole, reaches).filter(isFilled).map((part) => ({ id, ...part }));
  });
};

const without = (within: AngleInterval, blocked: readonly AngleInterval[]): readonly AngleInterval[] => {
  const clear: AngleInterval[] = [];
  let startDeg = within.fromDeg;
  for (const { fromDeg, toDeg } of [...blocked].sort((first, second) => first.fromDeg - second.fromDeg)) {
    if (fromDeg > startDeg) clear.push({ fromDeg: startDeg, toDeg: fromDeg });
    startDeg = Math.max(startDeg, toDeg);
  }
  if (startDeg < within.toDeg) clear.push({ fromDeg: startDeg, toDeg: within.toDeg });
  return clear;
};

/**
 * Angles at a portal under which a straight needle to the lateral meniscus keeps a margin to every vessel and nerve of this
 * model knee. A structure blocks the angle of its stand-off to either side of its bearing, asin((radius + needle radius +
 * margin) ÷ range); a needle that ends before the structure is not blocked by it.
 *
 * @param knee - The knee.
 * @param portal - "AL" or "AM".
 * @param marginMm - To keep, edge to edge, in mm; 0 included.
 * @param needleRadiusMm - Radius of the needle, in mm; 0 included.
 * @param beyondJunctionMm - Tip beyond the junction along the needle, in mm; 0 included. Left out, the line goes on without end.
 * @returns The angles that lead to the rim, what blocks which of them, and the clear intervals, in degrees: 0 straight
 * back, positive to the lateral side.
 * @throws {RangeError} If a length is outside its range.
 */
export const clearAngles = (question: AngleQuestion): AnglesAtPortal => {
  const { knee, marginMm, needleRadiusMm, beyondJunctionMm = 0 } = question;
  requireNotNegative({ marginMm, needleRadiusMm, beyondJunctionMm });
  const rim = rimBearings(knee, knee.portals[question.portal]);
  const blocked = blockedBy(question, rim);
  return { rim, blocked, clear: without(rim, blocked) };
};
