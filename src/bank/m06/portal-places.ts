import type { Draw } from "../../engine/question/family-head.ts";
import type { RegionSpec } from "../../engine/question/family.ts";
import { given } from "../m01/common.ts";

/** Places on the front of a bent knee: mm to the reader's right of the middle of the tibia, and mm above the joint line. */

export type PlaceId = "right" | "middle" | "low" | "high" | "swapped" | `other-${"right" | "middle" | "low" | "high" | "swapped"}`;

const RADIUS_MM = 2;
/** Two numbers nearer than this would cover each other in the picture. */
const APART_MM = 6;
/** The tendon stands a little to the lateral side of the middle. */
const TENDON_LATERAL_MM = 2;

type Place = readonly [xMm: number, yMm: number];

/** On which side of the page the lateral side lies for somebody who faces the knee: a right knee has it on the left. */
export const lateralPage = ({ about }: Pick<Draw, "about">): 1 | -1 => (about["side"] === "right" ? -1 : 1);
/** The side of the page on which the portal lies. */
const portalPage = (draw: Pick<Draw, "about">): number => lateralPage(draw) * (draw.about["portal"] === "anterolateral" ? 1 : -1);
/** Where the middle of the tendon stands on the page. */
export const tendonAtMm = (about: Draw["about"]): number => lateralPage({ about }) * TENDON_LATERAL_MM;

const sizes = ({ givens }: Pick<Draw, "givens">) => ({ edge: given(givens, "tendonMm") / 2, beside: given(givens, "besideMm"), above: given(givens, "aboveMm") });

/** Outwards from the middle of the tendon, and up. */
const OWN: Readonly<Record<"right" | "middle" | "low" | "high" | "swapped", (size: ReturnType<typeof sizes>) => Place>> = {
  right: ({ edge, beside, above }) => [edge + beside, above],
  middle: ({ beside, above }) => [beside, above],
  low: ({ edge, beside }) => [edge + beside, 0],
  high: ({ edge, beside, above }) => [edge + beside, 2 * above],
  swapped: ({ edge, beside, above }) => [edge + above, beside],
};
const NAMES = Object.keys(OWN) as readonly (keyof typeof OWN)[];

interface Placed {
  readonly id: PlaceId;
  readonly xMm: number;
  readonly yMm: number;
}

/** Places of a draw that stand clear of each other. */
const placedIn = (draw: Pick<Draw, "givens" | "about">): readonly Placed[] => {
  const kept: Placed[] = [];
  for (const name of NAMES) {
    const [asideMm, yMm] = OWN[name](sizes(draw));
    // Each place has its twin on the other side, so that no side is told by what stands there.
    const twins = ([[name, 1], [`other-${name}`, -1]] as const).map(([id, way]): Placed => ({ id, xMm: tendonAtMm(draw.about) + way * portalPage(draw) * asideMm, yMm }));
    if (twins.every((twin) => kept.every((one) => Math.hypot(one.xMm - twin.xMm, one.yMm - twin.yMm) >= APART_MM))) kept.push(...twins);
  }
  return kept;
};

/** The places with their numbers, which follow no order that could be learnt. */
const numberedIn = (draw: Pick<Draw, "givens" | "about">): readonly (Placed & { readonly number: number })[] => {
  const placed = placedIn(draw);
  const order = (draw.about["order"] ?? "").split(" ").map(Number).filter((index) => index < placed.length);
  return placed.map((place, index) => ({ ...place, number: order.indexOf(index) + 1 })).sort((one, other) => one.number - other.number);
};

/** As many places as a draw may have. */
export const PLACES_AT_MOST = 2 * NAMES.length;

/** The numbered places of a draw. */
export const regionsOf = (draw: Draw): readonly RegionSpec[] => numberedIn(draw).map(({ number, xMm, yMm }) => ({ id: String(number), xMm, yMm, radiusMm: RADIUS_MM }));

/** The number of a place; null where it would cover another one. */
export const numberOf = (draw: Pick<Draw, "givens" | "about">, place: PlaceId): string | null => {
  const found = numberedIn(draw).find(({ id }) => id === place);
  return found ? String(found.number) : null;
};
