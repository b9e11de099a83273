import type { Arc } from "../geometry/arc.ts";
import type { Point } from "../geometry/vec2.ts";
import type { Knee } from "./knee.ts";
import type { Meniscus } from "./meniscus.ts";

/** A point on the other side of the midline. */
export const mirroredPoint = ({ xMm, yMm }: Point): Point => ({ xMm: -xMm, yMm });

const mirroredArc = (arc: Arc): Arc => ({ ...arc, centre: mirroredPoint(arc.centre), outward: arc.outward === 1 ? -1 : 1 });

const mirroredMeniscus = ({ rim, freeEdge }: Meniscus): Meniscus => ({ rim: mirroredArc(rim), freeEdge: mirroredArc(freeEdge) });

/**
 * The same knee of the other leg: every point goes to the other side of the midline, every length and angle stays.
 *
 * @param knee - A knee of either side.
 * @returns The knee of the other side.
 */
export const mirroredKnee = (knee: Knee): Knee => {
  const { tendon, portals, capsule, collaterals } = knee;
  return {
    side: knee.side === "right" ? "left" : "right",
    plateau: { lateral: mirroredArc(knee.plateau.lateral), medial: mirroredArc(knee.plateau.medial) },
    lateral: mirroredMeniscus(knee.lateral),
    medial: mirroredMeniscus(knee.medial),
    tendon: { ...tendon, centre: mirroredPoint(tendon.centre), lateralEdge: mirroredPoint(tendon.lateralEdge), medialEdge: mirroredPoint(tendon.medialEdge) },
    portals: { AL: mirroredPoint(portals.AL), AM: mirroredPoint(portals.AM) },
    structures: knee.structures.map((one) => ({ ...one, centre: mirroredPoint(one.centre) })),
    capsule: { lateral: mirroredArc(capsule.lateral), medial: mirroredArc(capsule.medial), beyondJunctionMm: capsule.beyondJunctionMm },
    collaterals: {
      lateral: { arc: mirroredArc(collaterals.lateral.arc), thicknessMm: collaterals.lateral.thicknessMm },
      medial: { arc: mirroredArc(collaterals.medial.arc), thicknessMm: collaterals.medial.thicknessMm },
    },
  };
};
