import { placesOf } from "../quantity/places.ts";
import { digest } from "./sha256.ts";
import { type NextUint32, xoshiro128 } from "./xoshiro.ts";

/** A grid of equally spaced values: least and greatest included, step greater than 0. */
export interface Grid {
  readonly least: number;
  readonly greatest: number;
  readonly step: number;
}

/** The draws that a family may take. Every one uses whole numbers only, so all engines agree. */
export interface Chance {
  /** A whole number from 0 to below `count`, each equally likely (rejection, no bias). */
  readonly below: (count: number) => number;
  /** One element of a list. */
  readonly pick: <T>(list: readonly T[]) => T;
  /** A value of a grid, exact to the digits shown. */
  readonly onGrid: (grid: Grid) => number;
  /** True with a chance of `parts` in `of`. */
  readonly happens: (parts: number, of: number) => boolean;
  /** The list in another order; every order equally likely. */
  readonly shuffled: <T>(list: readonly T[]) => T[];
}

const WORD = 2 ** 32;

/** The number of values on a grid. */
export const gridSize = ({ least, greatest, step }: Grid): number => Math.round((greatest - least) / step) + 1;

/** Value number `index` of a grid, free of the noise that repeated addition leaves. */
export const gridValue = (grid: Grid, index: number): number => {
  const places = Math.max(placesOf(grid.step), placesOf(grid.least));
  const scale = 10 ** places;
  return (Math.round(grid.least * scale) + index * Math.round(grid.step * scale)) / scale;
};

const unbiased = (next: NextUint32, count: number): number => {
  if (!Number.isSafeInteger(count) || count < 1 || count > WORD) {
    throw new RangeError(`count must be a whole number from 1 to 4294967296, got ${count}`);
  }
  const limit = WORD - (WORD % count);
  let word = next();
  while (word >= limit) word = next();
  return word % count;
};

/** Draws from a generator. */
export const chanceFrom = (next: NextUint32): Chance => {
  const below = (count: number): number => unbiased(next, count);
  const pick = <T>(list: readonly T[]): T => list[below(list.length)] as T;
  const shuffled = <T>(list: readonly T[]): T[] => {
    const copy = [...list];
    for (let last = copy.length - 1; last > 0; last -= 1) {
      const other = below(last + 1);
      [copy[last], copy[other]] = [copy[other] as T, copy[last] as T];
    }
    return copy;
  };
  return { below, pick, shuffled, onGrid: (grid) => gridValue(grid, below(gridSize(grid))), happens: (parts, of) => below(of) < parts };
};

/** Draws for one item: the generator is seeded from family, version and seed together. */
export const chanceFor = (family: string, version: number, seed: string): Chance =>
  chanceFrom(xoshiro128(digest(`${family}@${version}#${seed}`)));
