import { type Arc, arcPoints } from "../geometry/arc.ts";
import type { Circle } from "../geometry/circle.ts";
import type { Point } from "../geometry/vec2.ts";
import type { MeniscusSizes } from "./sizes.ts";

/** A meniscus seen from above: a band between its rim (the meniscocapsular junction) and its free edge, both round. */
export interface Meniscus {
  readonly rim: Arc;
  readonly freeEdge: Arc;
}

/**
 * A meniscus from its sizes. The free edge is a circle pushed off the rim's centre, so that the width is the one asked for
 * in front, at the side and behind: square to the rim the width towards a direction d is R − r − e·d up to a small term in e².
 */
export const meniscusFrom = (sizes: MeniscusSizes, outward: 1 | -1): Meniscus => {
  const { rimRadiusMm, frontWidthMm, bodyWidthMm, backWidthMm } = sizes;
  const meanMm = (frontWidthMm + backWidthMm) / 2;
  const centre: Point = { xMm: outward * sizes.centreOutwardMm, yMm: sizes.centreFrontMm };
  const ends = { outward, fromDeg: sizes.frontEndDeg, toDeg: sizes.backEndDeg };
  const pushed: Point = {
    xMm: centre.xMm + outward * (meanMm - bodyWidthMm),
    yMm: centre.yMm + (backWidthMm - frontWidthMm) / 2,
  };
  return {
    rim: { ...ends, centre, radiusMm: rimRadiusMm },
    freeEdge: { ...ends, centre: pushed, radiusMm: rimRadiusMm - meanMm },
  };
};

/** Closed outline of a meniscus: along the rim and back along the free edge. */
export const meniscusOutline = ({ rim, freeEdge }: Meniscus, steps: number): readonly Point[] => [
  ...arcPoints(rim, steps),
  ...[...arcPoints(freeEdge, steps)].reverse(),
];

/** The hindmost point of the rim. */
export const hindmostPoint = ({ centre, radiusMm }: Circle): Point => ({ xMm: centre.xMm, yMm: centre.yMm - radiusMm });
