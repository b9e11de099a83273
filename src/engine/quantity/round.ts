import { compare, decimal, type Decimal, decimalOf, subtract, toText, add, multiply } from "./decimal.ts";
import { RECORD_PLACES } from "./tolerance.ts";

export type Rounding = "nearest" | "down" | "up";

/** Values that are taken as right: both ends included, as decimal text. */
export interface Span {
  readonly from: string;
  readonly to: string;
}

const HALF: Decimal = { units: 5n, places: 1 };

/** Exact value of a computed double: rounded to six decimals, so that 3.2000000000000002 is 3.2. */
export const exactOf = (value: number): Decimal => decimalOf(value, RECORD_PLACES);

const floorUnits = (value: Decimal, step: Decimal): bigint => {
  const places = Math.max(value.places, step.places);
  const scaled = value.units * 10n ** BigInt(places - value.places);
  const unit = step.units * 10n ** BigInt(places - step.places);
  const quotient = scaled / unit;
  return scaled % unit !== 0n && scaled < 0n ? quotient - 1n : quotient;
};

/** A decimal rounded to whole steps. Halves go up, away from the lower neighbour. */
export const roundTo = (value: Decimal, step: Decimal, rounding: Rounding): Decimal => {
  const low: Decimal = { units: floorUnits(value, step) * step.units, places: step.places };
  if (compare(low, value) === 0 || rounding === "down") return low;
  const high = add(low, step);
  if (rounding === "up") return high;
  return compare(subtract(value, low), multiply(step, HALF)) < 0 ? low : high;
};

/** Text of a value as an ask wants it typed. */
export const asAsked = (value: number, step: string, rounding: Rounding): string =>
  toText(roundTo(exactOf(value), decimal(step), rounding));

const trimTo = (value: Decimal, places: number): string => {
  let { units, places: now } = value;
  while (now > places && units % 10n === 0n) {
    units /= 10n;
    now -= 1;
  }
  return toText({ units, places: now });
};

/**
 * The accepted span of an ask: to the nearest, half a step on both sides of the rounded answer;
 * down or up, everything between the exact answer and its rounded value and nothing beyond it.
 */
export const acceptedSpan = (value: number, step: string, rounding: Rounding): Span => {
  const unit = decimal(step);
  const exact = exactOf(value);
  const rounded = roundTo(exact, unit, rounding);
  if (rounding === "nearest") {
    const half = multiply(unit, HALF);
    const places = half.places;
    return { from: trimTo(subtract(rounded, half), places), to: trimTo(add(rounded, half), places) };
  }
  const ends = rounding === "down" ? [rounded, exact] : [exact, rounded];
  return { from: trimTo(ends[0] as Decimal, unit.places), to: trimTo(ends[1] as Decimal, unit.places) };
};

/** True where the value lies in the span, ends included. */
export const isInSpan = (value: Decimal, { from, to }: Span): boolean =>
  compare(value, decimal(from)) >= 0 && compare(value, decimal(to)) <= 0;
