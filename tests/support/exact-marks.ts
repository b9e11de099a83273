import { compare, type Decimal, decimal, decimalOf, divide, multiply } from "../../src/engine/quantity/decimal.ts";
import { acceptedGrid, asAsked, type Rounding, type Span, spanText } from "../../src/engine/quantity/round.ts";
import { CONVERSION_PLACES, RECORD_PLACES } from "../../src/engine/quantity/tolerance.ts";
import { siblings, UNITS } from "../../src/engine/quantity/units.ts";
import type { AskSpec } from "../../src/engine/question/family-head.ts";
import type { VerdictCode } from "../../src/engine/question/verdict.ts";

/** Rounding and marking in exact decimals of any length, slowly: the second way of what the engine does in whole millionths. */

/** The sum, with the places of the longer of the two. */
export const add = (first: Decimal, second: Decimal): Decimal => {
  const places = Math.max(first.places, second.places);
  const scaled = (value: Decimal): bigint => value.units * 10n ** BigInt(places - value.places);
  return { units: scaled(first) + scaled(second), places };
};

export const subtract = (first: Decimal, second: Decimal): Decimal => add(first, { units: -second.units, places: second.places });

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

/** The accepted span of an ask as text. */
export const acceptedSpan = (value: number, step: number, rounding: Rounding): Span => spanText(acceptedGrid(value, step, rounding), step, rounding);

/** True where the value lies in the span, ends included. */
export const isInSpan = (value: Decimal, { from, to }: Span): boolean => compare(value, decimal(from)) >= 0 && compare(value, decimal(to)) <= 0;

const isZeroIn = (span: Span): boolean => isInSpan(decimal("0"), span);

const powersOf = ({ units, places }: Decimal): readonly Decimal[] =>
  [1, 2, 3].flatMap((power) => [{ units, places: places + power }, { units: units * 10n ** BigInt(power), places }]);

const inOtherUnits = (value: Decimal, { unit }: AskSpec): readonly Decimal[] =>
  siblings(unit).map((other) => divide(multiply(value, decimal(UNITS[other].size)), decimal(UNITS[unit].size), CONVERSION_PLACES));

const otherRoundings = (exact: number, { unit, roundTo: step }: AskSpec, isNothing: boolean): readonly Decimal[] => {
  const coarse = step < 1 && step * 10 > 1 ? 1 : step * 10;
  const steps = isNothing || (unit === "pieces" && step >= 1) ? [step] : [step, Number(coarse.toPrecision(1))];
  return steps.flatMap((one) => (["nearest", "down", "up"] as const).map((rounding) => roundTo(exactOf(exact), decimal(String(one)), rounding)));
};

const isUnsafe = (value: Decimal, { safeSide }: AskSpec, { from, to }: Span): boolean =>
  (safeSide === "down" && compare(value, decimal(to)) > 0) || (safeSide === "up" && compare(value, decimal(from)) < 0);

/** The verdict of one value, by the stated order. */
export const exactCode = (value: Decimal, ask: AskSpec, { exact, unsafe }: { readonly exact: number; readonly unsafe: boolean }): VerdictCode => {
  const span = acceptedSpan(exact, ask.roundTo, ask.rounding);
  if (isInSpan(value, span)) return "right";
  if (unsafe && isUnsafe(value, ask, span)) return "unsafe-side";
  const isNothing = value.units === 0n;
  const whole = asAsked(exact, ask.roundTo, ask.rounding);
  const ten: Span = ask.unit === "pieces" && ask.roundTo >= 1 ? { from: whole, to: whole } : span;
  const candidates = [...powersOf(value).map((one) => isInSpan(one, ten)), ...inOtherUnits(value, ask).map((one) => isInSpan(one, span))];
  if (!isNothing && !isZeroIn(span) && candidates.some(Boolean)) return "unit-or-power";
  return otherRoundings(exact, ask, isNothing).some((one) => compare(one, value) === 0) ? "rounding" : "safe-side";
};
