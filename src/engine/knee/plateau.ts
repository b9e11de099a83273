import { type Arc, arcAngleDeg, arcPoints } from "../geometry/arc.ts";
import { circleCrossings } from "../geometry/circle.ts";
import { unitTo } from "../geometry/unit.ts";
import { fromTo, lengthOf, type Point } from "../geometry/vec2.ts";
import { RADIANS_PER_DEGREE } from "../quantity/tolerance.ts";
import type { Meniscus } from "./meniscus.ts";

const STEPS = 48;

/** Angle at which the straight line that touches both lobes in front leaves the lateral one, counted as its rim counts. */
const frontTouchDeg = (lateral: Arc, medial: Arc): number => {
  const along = unitTo(medial.centre, lateral.centre);
  const lean = Math.asin((lateral.radiusMm - medial.radiusMm) / lengthOf(fromTo(medial.centre, lateral.centre)));
  return Math.atan2(along.yMm, along.xMm) / RADIANS_PER_DEGREE + 90 - lean / RADIANS_PER_DEGREE;
};

/** The tibial plateau as two round lobes, each an arc of its outline. */
export interface Plateau {
  readonly lateral: Arc;
  readonly medial: Arc;
}

/**
 * The tibial plateau of a right knee: two round lobes around the menisci, joined in front by the line that touches both,
 * and behind by the notch where they meet. The outline runs along the lateral lobe to the notch and back along the medial one.
 */
export const plateauOf = (lateral: Meniscus, medial: Meniscus, marginMm: number): Plateau => {
  const outer: Arc = { ...lateral.rim, radiusMm: lateral.rim.radiusMm + marginMm };
  const inner: Arc = { ...medial.rim, radiusMm: medial.rim.radiusMm + marginMm };
  const meeting = circleCrossings(inner, outer);
  if (meeting === null) throw new RangeError(`plateauMarginMm must let the two lobes meet, got ${marginMm}`);
  const notch = meeting[1];
  const touchDeg = frontTouchDeg(outer, inner);
  return {
    lateral: { ...outer, fromDeg: touchDeg, toDeg: arcAngleDeg(outer, notch) },
    medial: { ...inner, fromDeg: arcAngleDeg(inner, notch), toDeg: 180 - touchDeg },
  };
};

/** Points along the outline of a plateau, in order. */
export const plateauPoints = ({ lateral, medial }: Plateau): readonly Point[] => [...arcPoints(lateral, STEPS), ...arcPoints(medial, STEPS)];
