import type { Point } from "../../engine/geometry/vec2.ts";

/** The tear of a question about places for stitches, in whole millimetres. */
export interface SpreadCase {
  readonly tearMm: number;
  readonly endMarginMm: number;
  readonly greatestSpacingMm: number;
  readonly stitches: number;
  /** Places where the tissue does not hold a needle. */
  readonly softMm: readonly number[];
}

export type Broken = "one-place-twice" | "soft-place" | "margin-left-out" | "end-left-open" | "crowded-middle" | "crowded-ends";

/** Places stand this far apart along the tear. */
export const PLACE_STEP_MM = 2;
/** Radius of the tear in the drawing: of no one's size. */
const DRAWN_RADIUS_MM = 14;

/** Every place along the tear, from its end at the body. */
export const placesOn = ({ tearMm }: Pick<SpreadCase, "tearMm">): readonly number[] =>
  Array.from({ length: tearMm / PLACE_STEP_MM + 1 }, (_, at) => at * PLACE_STEP_MM);

/** A place of the posterior horn seen from above, front at the top; `toward` is 1 where the rim lies on the right of the page. */
export const placeOnRim = (alongMm: number, { tearMm, toward }: { readonly tearMm: number; readonly toward: 1 | -1 }): Point => {
  const angleRad = (tearMm / 2 - alongMm) / DRAWN_RADIUS_MM;
  return { xMm: toward * DRAWN_RADIUS_MM * Math.sin(angleRad), yMm: -DRAWN_RADIUS_MM * Math.cos(angleRad) };
};

export const gapsOf = (places: readonly number[]): readonly number[] => places.slice(1).map((place, at) => place - (places[at] ?? 0));

/** The first rule that stitches at these places break; null where they keep all of them. */
export const brokenBy = (places: readonly number[], plan: SpreadCase): Broken | null => {
  const sorted = [...places].sort((first, second) => first - second);
  const [first, last] = [sorted[0] ?? 0, sorted.at(-1) ?? 0];
  const [from, to] = [plan.endMarginMm, plan.tearMm - plan.endMarginMm];
  if (new Set(sorted).size < sorted.length) return "one-place-twice";
  if (sorted.some((place) => plan.softMm.includes(place))) return "soft-place";
  if (first < from || last > to) return "margin-left-out";
  if (first > from || last < to) return "end-left-open";
  const gaps = gapsOf(sorted);
  const widest = Math.max(...gaps);
  if (widest <= plan.greatestSpacingMm) return null;
  return gaps[0] === widest || gaps.at(-1) === widest ? "crowded-middle" : "crowded-ends";
};

/** All ways to choose so many of a list, in its order. */
const chosenFrom = (list: readonly number[], count: number): readonly (readonly number[])[] =>
  count === 0 ? [[]] : list.flatMap((one, at) => chosenFrom(list.slice(at + 1), count - 1).map((rest) => [one, ...rest]));

const unevenness = (places: readonly number[]): number => gapsOf(places).reduce((sum, gap) => sum + gap ** 2, 0);

/** Every set of places that keeps the rules, the most even one first. */
export const rightPlaces = (plan: SpreadCase): readonly (readonly number[])[] => {
  const [from, to] = [plan.endMarginMm, plan.tearMm - plan.endMarginMm];
  const inner = placesOn(plan).filter((place) => place > from && place < to);
  return chosenFrom(inner, plan.stitches - 2)
    .map((places) => [from, ...places, to])
    .filter((places) => brokenBy(places, plan) === null)
    .sort((first, second) => unevenness(first) - unevenness(second));
};
