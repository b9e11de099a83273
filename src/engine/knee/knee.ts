import { type Arc, arcPoint, outwardAt } from "../geometry/arc.ts";
import { unitTo } from "../geometry/unit.ts";
import { movedAlong, type Point } from "../geometry/vec2.ts";
import { DEGREES_PER_RADIAN } from "../quantity/tolerance.ts";
import { type Meniscus, meniscusFrom } from "./meniscus.ts";
import { mirroredKnee } from "./mirrored.ts";
import { type Plateau, plateauOf } from "./plateau.ts";
import { requireSizes } from "./require-sizes.ts";
import type { BesideArtery, CollateralSizes, KneeSizes, Side } from "./sizes.ts";
import type { Structure } from "./structure.ts";

/**
 * The model knee in one axial plane, at the height of the menisci.
 *
 * Frame: the plane is seen from above with the front of the knee at the top. The origin is the middle of the tibial
 * plateau, halfway from side to side and from front to back. x counts towards the patient's right, y towards the front,
 * both in mm; the lateral side is +x in a right knee and −x in a left one. Structures are circles, and stand for upright
 * cylinders, so distances in the plane are distances in space for a needle that stays in it. Bearings from a portal are 0
 * straight back and positive to the lateral side; rim angles are 0 outward and positive forwards. Both are the same for
 * the two sides, and so is every distance: a left knee is the mirror image of a right one.
 */
export interface Knee {
  readonly side: Side;
  readonly plateau: Plateau;
  readonly lateral: Meniscus;
  readonly medial: Meniscus;
  readonly tendon: { readonly centre: Point; readonly lateralEdge: Point; readonly medialEdge: Point; readonly thicknessMm: number };
  readonly portals: Readonly<Record<PortalId, Point>>;
  readonly structures: readonly Structure[];
  /** Outer wall of the capsule behind both menisci: at one distance beyond the junction all round. */
  readonly capsule: { readonly lateral: Arc; readonly medial: Arc; readonly beyondJunctionMm: number };
  readonly collaterals: Readonly<Record<"lateral" | "medial", Band>>;
}

export type PortalId = "AL" | "AM";

/** A flat band along an arc, half of its thickness to either side. */
export interface Band {
  readonly arc: Arc;
  readonly thicknessMm: number;
}

const widened = (arc: Arc, byMm: number): Arc => ({ ...arc, radiusMm: arc.radiusMm + byMm });

const bandOn = (rim: Arc, { rimDeg, beyondRimMm, halfLengthMm, thicknessMm }: CollateralSizes): Band => {
  const arc = widened(rim, beyondRimMm);
  const halfDeg = (halfLengthMm / arc.radiusMm) * DEGREES_PER_RADIAN;
  return { arc: { ...arc, fromDeg: rimDeg + halfDeg, toDeg: rimDeg - halfDeg }, thicknessMm };
};

const beside = (artery: Point, { lateralMm, backMm, radiusMm }: BesideArtery): Omit<Structure, "id"> => ({
  centre: { xMm: artery.xMm + lateralMm, yMm: artery.yMm - backMm },
  radiusMm,
});

const structuresOf = (sizes: KneeSizes, rim: Arc, anterolateral: Point): readonly Structure[] => {
  const { popliteus, bundle, peroneal } = sizes;
  const aim = arcPoint(rim, bundle.aimDeg);
  const artery = movedAlong(aim, unitTo(anterolateral, aim), bundle.gapMm + bundle.arteryRadiusMm);
  const tendon = movedAlong(arcPoint(rim, popliteus.rimDeg), outwardAt(rim, popliteus.rimDeg), popliteus.beyondRimMm);
  const nerve: Point = { xMm: tendon.xMm + peroneal.lateralOfTendonMm, yMm: tendon.yMm - peroneal.behindTendonMm };
  return [
    { id: "artery", centre: artery, radiusMm: bundle.arteryRadiusMm },
    { id: "vein", ...beside(artery, bundle.vein) },
    { id: "tibial-nerve", ...beside(artery, bundle.tibialNerve) },
    { id: "peroneal-nerve", centre: nerve, radiusMm: peroneal.radiusMm },
    { id: "popliteus", centre: tendon, radiusMm: popliteus.radiusMm },
  ];
};

const rightKnee = (sizes: KneeSizes): Knee => {
  const { patellarTendon, portalBesideTendonMm, capsuleMm } = sizes;
  const lateral = meniscusFrom(sizes.lateral, 1);
  const medial = meniscusFrom(sizes.medial, -1);
  const at = (lateralMm: number): Point => ({ xMm: patellarTendon.centreLateralMm + lateralMm, yMm: patellarTendon.centreFrontMm });
  const half = patellarTendon.widthMm / 2;
  const portals = { AL: at(half + portalBesideTendonMm), AM: at(-half - portalBesideTendonMm) };
  return {
    side: "right",
    plateau: plateauOf(lateral, medial, sizes.plateauMarginMm),
    lateral,
    medial,
    tendon: { centre: at(0), lateralEdge: at(half), medialEdge: at(-half), thicknessMm: patellarTendon.thicknessMm },
    portals,
    structures: structuresOf(sizes, lateral.rim, portals.AL),
    capsule: { lateral: widened(lateral.rim, capsuleMm), medial: widened(medial.rim, capsuleMm), beyondJunctionMm: capsuleMm },
    collaterals: { lateral: bandOn(lateral.rim, sizes.lateralCollateral), medial: bandOn(medial.rim, sizes.medialCollateral) },
  };
};

/**
 * The model knee of these sizes.
 *
 * @param sizes - All sizes, in mm and degrees, each inside the range that its type states.
 * @returns Its outlines, portals and structures in the frame above.
 * @throws {RangeError} If a size is not finite or outside its range.
 */
export const kneeFrom = (sizes: KneeSizes): Knee => {
  requireSizes(sizes);
  const right = rightKnee(sizes);
  return sizes.side === "right" ? right : mirroredKnee(right);
};

/** A structure of a knee by its name. */
export const structureOf = (knee: Knee, id: Structure["id"]): Structure => {
  const structure = knee.structures.find((one) => one.id === id);
  if (structure === undefined) throw new RangeError(`id must be a structure of the knee, got ${id}`);
  return structure;
};
