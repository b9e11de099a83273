import { arcPoint } from "../../engine/geometry/arc.ts";
import type { Point } from "../../engine/geometry/vec2.ts";
import { type Knee, kneeFrom } from "../../engine/knee/knee.ts";
import type { Side } from "../../engine/knee/sizes.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { RegionSpec } from "../../engine/question/family.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { ADULT_CAPSULE_MM, type KneeBand, kneeSizes } from "../../facts/knee-model.ts";

/** Places of the axial plane that may be pointed at, by what lies there. */
export type PlaceId = "popliteus" | "bundle" | "peroneal" | "lateral-root" | "medial-root" | "medial-collateral" | "lateral-collateral" | "semimembranosus" | "between-medial";

const HALF_WIDTH_SHARE = 1;
const LEAST_RADIUS_MM = 3;

const knees = new Map<string, Knee>();

/** The model knee of a draw. */
export const markedKnee = ({ about }: Draw): Knee => {
  const name = `${about["band"]} ${about["side"]}`;
  const known = knees.get(name) ?? kneeFrom(kneeSizes({ band: (about["band"] ?? "8-10") as KneeBand, side: (about["side"] ?? "right") as Side, capsuleMm: ADULT_CAPSULE_MM / 2 }));
  knees.set(name, known);
  return known;
};

const structure = (knee: Knee, id: string): { readonly at: Point; readonly radiusMm: number } => {
  const found = knee.structures.find((one) => one.id === id);
  return { at: found?.centre ?? { xMm: 0, yMm: 0 }, radiusMm: found?.radiusMm ?? 0 };
};

/** Every place with its centre and its tolerance: half the width of what lies there, and at least a finger's worth. */
const PLACES: Readonly<Record<PlaceId, (knee: Knee) => { readonly at: Point; readonly radiusMm: number }>> = {
  popliteus: (knee) => structure(knee, "popliteus"),
  bundle: (knee) => structure(knee, "artery"),
  peroneal: (knee) => structure(knee, "peroneal-nerve"),
  "lateral-root": (knee) => ({ at: arcPoint(knee.lateral.freeEdge, knee.lateral.freeEdge.toDeg), radiusMm: 0 }),
  "medial-root": (knee) => ({ at: arcPoint(knee.medial.freeEdge, knee.medial.freeEdge.toDeg), radiusMm: 0 }),
  "medial-collateral": (knee) => ({ at: arcPoint(knee.collaterals.medial.arc, 5), radiusMm: 0 }),
  "lateral-collateral": (knee) => ({ at: arcPoint(knee.collaterals.lateral.arc, (knee.collaterals.lateral.arc.fromDeg + knee.collaterals.lateral.arc.toDeg) / 2), radiusMm: 0 }),
  semimembranosus: (knee) => ({ at: behind(knee, -62, 8), radiusMm: 0 }),
  "between-medial": (knee) => ({ at: behind(knee, -38, 6), radiusMm: 0 }),
};

const behind = (knee: Knee, rimDeg: number, beyondMm: number): Point => arcPoint({ ...knee.medial.rim, radiusMm: knee.medial.rim.radiusMm + beyondMm }, rimDeg);

/** Numbers of a draw for so many places; they follow no order that could be learnt. */
export const shuffledNumbers = (chance: Chance, places: readonly PlaceId[]): string => chance.shuffled(places.map((_, index) => index + 1)).join(" ");

/** Places in the order of their numbers, which the draw has shuffled, so that a number says nothing of what lies there. */
const numbered = (draw: Draw, places: readonly PlaceId[]): readonly (RegionSpec & { readonly place: PlaceId })[] => {
  const knee = markedKnee(draw);
  const numbers = (draw.about["numbers"] ?? "").split(" ");
  return places
    .map((place, index) => ({ place, id: numbers[index] ?? "", ...PLACES[place](knee) }))
    .map(({ place, id, at, radiusMm }) => ({ place, id, xMm: at.xMm, yMm: at.yMm, radiusMm: Math.max(LEAST_RADIUS_MM, HALF_WIDTH_SHARE * radiusMm) }))
    .sort((first, second) => Number(first.id) - Number(second.id));
};

/** The numbered regions of a draw. */
export const regionsOf = (draw: Draw, places: readonly PlaceId[]): readonly RegionSpec[] =>
  numbered(draw, places).map(({ id, xMm, yMm, radiusMm }) => ({ id, xMm, yMm, radiusMm }));

/** The number of a place in a draw. */
export const numberOf = (draw: Draw, places: readonly PlaceId[], place: PlaceId): string =>
  numbered(draw, places).find((one) => one.place === place)?.id ?? "";
