import { withUnit } from "../engine/quantity/format.ts";
import type { PortalId } from "../engine/knee/knee.ts";
import type { StructureId } from "../engine/knee/structure.ts";
import { cautionText } from "../facts/cautions.ts";
import type { AxialView } from "./axial-model.ts";
import { isClear } from "./axial-model.ts";

/** Words of the axial figure, by language. */
export const AXIAL_WORDS = {
  en: {
    structures: { artery: "popliteal artery", vein: "popliteal vein", "tibial-nerve": "tibial nerve", "peroneal-nerve": "common peroneal nerve", popliteus: "popliteus tendon" } satisfies Record<StructureId, string>,
    letters: { artery: "A", vein: "V", "tibial-nerve": "T", "peroneal-nerve": "P", popliteus: "po" } satisfies Record<StructureId, string>,
    portals: { AL: "anterolateral", AM: "anteromedial" } satisfies Record<PortalId, string>,
    front: "front of the knee",
    frontShort: "front",
    lateral: "lateral",
    medial: "medial",
    lateralMeniscus: "lateral meniscus",
    medialMeniscus: "medial meniscus",
    capsule: "capsule",
    seen: "seen from above",
    lettersKey: "A artery, V vein, T tibial nerve, P peroneal nerve, po popliteus",
    scale: "20 mm",
    clear: "clear",
  },
} as const;

const words = AXIAL_WORDS.en;

/** A length as the figure and its words print it. */
export const mm = (value: number): string => withUnit(value.toFixed(1), "mm");
/** An angle as the figure and its words print it. */
export const deg = (value: number): string => `${Math.round(value)}°`.replace("-", "−");

const SLIVER_DEG = 1;

/** Intervals in words; a sliver of less than a degree is no angle that a hand could hold. */
const intervals = (list: readonly { readonly fromDeg: number; readonly toDeg: number }[]): string =>
  list.filter(({ fromDeg, toDeg }) => toDeg - fromDeg >= SLIVER_DEG).map(({ fromDeg, toDeg }) => `${deg(fromDeg)} to ${deg(toDeg)}`).join(" and ");

/** The angles that keep the margin, in words. */
export const anglesInWords = ({ model, angles }: AxialView): string => {
  if (intervals(angles.clear) === "") return `At this depth no angle from the ${words.portals[model.portal]} portal to the lateral meniscus stays at least ${mm(model.marginMm)} clear in this model.`;
  return `Stays at least ${mm(model.marginMm)} clear in this model: ${intervals(angles.clear)}. Outside ${deg(angles.rim.fromDeg)} to ${deg(angles.rim.toDeg)} the line misses the lateral meniscus. 0° is straight back, plus turns to the lateral side.`;
};

const needleInWords = (view: AxialView): string => {
  const { model, needle } = view;
  if (needle === null) return `Under ${deg(model.bearingDeg)} from the ${words.portals[model.portal]} portal the line misses the lateral meniscus.`;
  const others = needle.structures.filter(({ id }) => id !== needle.nearest.id).toSorted((first, second) => first.clearanceMm - second.clearanceMm).map(({ id, clearanceMm }) => `${words.structures[id]} ${mm(clearanceMm)}`);
  const past = needle.overshootMm >= 0 ? `${mm(needle.overshootMm)} beyond the outer wall of the capsule as drawn` : `${mm(-needle.overshootMm)} before the outer wall of the capsule as drawn`;
  return `From the ${words.portals[model.portal]} portal under ${deg(model.bearingDeg)} the needle enters the lateral meniscus ${mm(model.entryToJunctionMm)} before its junction and goes ${mm(model.depthMm)} deep; its tip stands ${past}. Nearest is the ${words.structures[needle.nearest.id]}, ${mm(needle.nearest.clearanceMm)} edge to edge; then ${others.join(", ")}. ${isClear(view) ? "That keeps" : "That does not keep"} the margin of ${mm(model.marginMm)}.`;
};

/** The whole figure in words; it alone is enough to answer. */
export const axialInWords = (view: AxialView): string => {
  const { knee, ages, showsAngles } = view.model;
  const angles = showsAngles ? ` ${anglesInWords(view)}` : "";
  return `A ${knee.side} knee of the model, ${ages}, ${words.seen}, front at the top. ${needleInWords(view)}${angles} ${cautionText("C8")}`;
};
