import { compare, type Decimal, decimal, toText, trimmed } from "./decimal.ts";
import { toGrid } from "./grid.ts";
import { type GridSpan, gridText } from "./round.ts";
import { GRID_PLACES } from "./tolerance.ts";

/** A learner's value, ready to be compared: as typed, and in whole millionths where they hold it exactly. */
export interface Typed {
  /** The exact decimal; made only where somebody asks, since whole millionths mostly say enough. */
  readonly exact: () => Decimal;
  readonly grid: number | null;
}

const SCALES: readonly number[] = Array.from({ length: GRID_PLACES + 1 }, (_, places) => 10 ** (GRID_PLACES - places));

const gridOrNull = ({ units, places }: Decimal): number | null => {
  const scale = SCALES[places];
  if (scale === undefined) return null;
  const grid = Number(units) * scale;
  return Math.abs(grid) <= Number.MAX_SAFE_INTEGER ? grid : null;
};

export const typedValue = (value: Decimal): Typed => ({ exact: () => value, grid: gridOrNull(value) });

/** A value that was typed in plain digits, at most nine before the point and six behind it: its millionths are exact in a double. */
export const typedPlain = (text: string): Typed => ({ exact: () => decimal(text), grid: toGrid(Number(text)) });

/** True for nothing, however many zeros it was typed with. */
export const isNothing = ({ exact, grid }: Typed): boolean => (grid === null ? exact().units === 0n : grid === 0);

/** Below 0, 0 or above 0 as the value is less than, equal to or greater than so many millionths; exact for any number of digits. */
export const compareTyped = (value: Typed, grid: number): number =>
  value.grid === null ? compare(value.exact(), decimal(gridText(grid, 0))) : value.grid - grid;

/** True where the value lies in the span, ends included. */
export const isTypedIn = (value: Typed, { from, to }: GridSpan): boolean => compareTyped(value, from) >= 0 && compareTyped(value, to) <= 0;

/** The value as plain decimal text without trailing zeros. */
export const typedText = ({ exact, grid }: Typed): string => (grid === null ? toText(trimmed(exact())) : gridText(grid, 0));

/** As a double, for formulas and pictures. */
export const typedNumber = (value: Typed): number => Number(typedText(value));
