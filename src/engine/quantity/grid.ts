import { GRID_PER_UNIT } from "./tolerance.ts";

/**
 * Whole-grid arithmetic. In doubles a window that just touches comes out empty now and then
 * (5.2 − 2.0 is 3.2 only up to the last bit), so sums, differences and comparisons of displayed
 * values are done in whole millionths of a unit.
 */
export const toGrid = (value: number): number => Math.round(value * GRID_PER_UNIT);

/** Back from whole millionths to the unit. */
export const fromGrid = (units: number): number => units / GRID_PER_UNIT;

/** Sum of displayed values, exact on the grid; a minus sign in front of a value subtracts it. */
export const sumOnGrid = (...values: readonly number[]): number =>
  fromGrid(values.reduce((total, value) => total + toGrid(value), 0));

/** Below 0, 0 or above 0 as the first value is less than, equal to or greater than the second. */
export const compareOnGrid = (first: number, second: number): number =>
  Math.sign(toGrid(first) - toGrid(second));
