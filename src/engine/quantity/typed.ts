import { compare, type Decimal, decimal, toText, trimmed } from "./decimal.ts";
import { type GridSpan, gridText } from "./round.ts";
import { GRID_PLACES } from "./tolerance.ts";

/** A learner's value, ready to be compared: as typed, and in whole millionths where they hold it exactly. */
export interface Typed {
  readonly decimal: Decimal;
  readonly grid: number | null;
  /** Millionths by which it may be off, because it was converted from a unit in which it was rounded; 0 elsewhere. */
  readonly slackGrid: number;
}

const SCALES: readonly number[] = Array.from({ length: GRID_PLACES + 1 }, (_, places) => 10 ** (GRID_PLACES - places));

const gridOrNull = ({ units, places }: Decimal): number | null => {
  const scale = SCALES[places];
  if (scale === undefined) return null;
  const grid = Number(units) * scale;
  return Math.abs(grid) <= Number.MAX_SAFE_INTEGER ? grid : null;
};

export const typedValue = (value: Decimal, slackGrid = 0): Typed => ({ decimal: value, grid: gridOrNull(value), slackGrid });

/** Below 0, 0 or above 0 as the value is less than, equal to or greater than so many millionths; exact for any number of digits. */
export const compareTyped = (value: Typed, grid: number): number =>
  value.grid === null ? compare(value.decimal, decimal(gridText(grid, 0))) : value.grid - grid;

/** True where the value lies in the span, ends and what it may be off by included. */
export const isTypedIn = (value: Typed, { from, to }: GridSpan): boolean =>
  compareTyped(value, from - value.slackGrid) >= 0 && compareTyped(value, to + value.slackGrid) <= 0;

/** The value as plain decimal text without trailing zeros. */
export const typedText = ({ decimal: value, grid }: Typed): string => (grid === null ? toText(trimmed(value)) : gridText(grid, 0));

/** As a double, for formulas and pictures. */
export const typedNumber = (value: Typed): number => Number(typedText(value));
