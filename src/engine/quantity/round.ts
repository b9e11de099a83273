import { toGrid } from "./grid.ts";
import { placesOf } from "./places.ts";
import { GRID_PER_UNIT, GRID_PLACES } from "./tolerance.ts";

export type Rounding = "nearest" | "down" | "up";

/** Values that are taken as right: both ends included, as decimal text. */
export interface Span {
  readonly from: string;
  readonly to: string;
}

/** The largest value that is rounded, typed and compared. */
export const MOST_VALUE = 1_000_000_000;

/** Whole millionths of a value: within a thousand million of anything they are exact in a double, and much faster than big integers. */
export const gridOf = (value: number): number => {
  if (!(Math.abs(value) <= MOST_VALUE)) throw new RangeError(`value must be at most ${MOST_VALUE}, got ${value}`);
  return toGrid(value);
};

/** Millionths as plain decimal text with at least the places asked for. */
export const gridText = (units: number, places: number): string => {
  const size = Math.abs(units);
  let fraction = size % GRID_PER_UNIT;
  const whole = (size - fraction) / GRID_PER_UNIT;
  let kept = GRID_PLACES;
  while (kept > places && fraction % 10 === 0) {
    fraction /= 10;
    kept -= 1;
  }
  const text = kept === 0 ? String(whole) : `${whole}.${String(fraction).padStart(kept, "0")}`;
  return units < 0 ? `-${text}` : text;
};

/** Whole millionths rounded to whole steps. Halves go up, away from the lower neighbour. */
export const roundGrid = (units: number, step: number, rounding: Rounding): number => {
  const low = Math.floor(units / step) * step;
  if (low === units || rounding === "down") return low;
  if (rounding === "up") return low + step;
  return 2 * (units - low) < step ? low : low + step;
};

/** A value rounded as an ask wants it, in whole millionths: two values are typed alike where these are equal. */
export const askedGrid = (value: number, step: number, rounding: Rounding): number => roundGrid(gridOf(value), gridOf(step), rounding);

/** Text of a value as an ask wants it typed. */
export const asAsked = (value: number, step: number, rounding: Rounding): string => gridText(askedGrid(value, step, rounding), placesOf(step));

/** The ends of a span in whole millionths, both included. */
export interface GridSpan {
  readonly from: number;
  readonly to: number;
}

/**
 * The accepted span of an ask: to the nearest, half a step on both sides of the rounded answer;
 * down or up, everything between the exact answer and its rounded value and nothing beyond it.
 */
export const acceptedGrid = (value: number, step: number, rounding: Rounding): GridSpan => {
  const unit = gridOf(step);
  const exact = gridOf(value);
  const rounded = roundGrid(exact, unit, rounding);
  if (rounding === "nearest") return { from: rounded - unit / 2, to: rounded + unit / 2 };
  return rounding === "down" ? { from: rounded, to: exact } : { from: exact, to: rounded };
};

/** A span as decimal text, with the digits of the step; half a step needs one more. */
export const spanText = ({ from, to }: GridSpan, step: number, rounding: Rounding): Span => {
  const places = placesOf(step) + (rounding === "nearest" ? 1 : 0);
  return { from: gridText(from, places), to: gridText(to, places) };
};
