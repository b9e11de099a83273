import { numberText, withUnit } from "../quantity/format.ts";
import { placesOf } from "../quantity/places.ts";
import type { UnitId } from "../quantity/units.ts";
import type { Family } from "./family.ts";
import type { Draw, GivenSpec, Solution } from "./family-head.ts";
import { solutionOf } from "./solve.ts";

/** Prints the values of one draw inside sentences. */
export interface Say {
  /** A given with its unit: "5.2 mm". */
  readonly of: (key: string) => string;
  /** A given without its unit, for sums: "5.2". */
  readonly bare: (key: string) => string;
  /** Any value with the digits of the asks' grid, without a unit. */
  readonly number: (value: number, places?: number) => string;
  /** A word of the case: a name, a side, an age. */
  readonly about: (key: string) => string;
  /** True for a given that this draw holds. */
  readonly has: (key: string) => boolean;
  /** True for a word that this draw holds. */
  readonly hasAbout: (key: string) => boolean;
  /** The raw value of a given. */
  readonly value: (key: string) => number;
  /** The draw itself, for sentences that work something out again. */
  readonly draw: Draw;
  /** The right answer of this draw. */
  readonly answer: Solution;
}

const known = <T>(value: T | undefined, key: string): T => {
  if (value === undefined) throw new RangeError(`key must be one that the draw holds, got ${key}`);
  return value;
};

/** A printer for one draw. */
export const sayFor = (specs: readonly GivenSpec[], draw: Draw, answer: Solution): Say => {
  const spec = (key: string): GivenSpec => known(specs.find((given) => given.key === key), key);
  const value = (key: string): number => known(draw.givens[key], key);
  const bare = (key: string): string => numberText(value(key), placesOf(spec(key).step));
  const unit = (key: string): UnitId => spec(key).unit;
  return {
    has: (key) => Object.hasOwn(draw.givens, key),
    hasAbout: (key) => Object.hasOwn(draw.about, key),
    value,
    bare,
    of: (key) => withUnit(bare(key), unit(key)),
    number: (number, places = 1) => numberText(number, places),
    about: (key) => known(draw.about[key], key),
    draw,
    answer,
  };
};

/** A printer for one draw of a family. */
export const sayOf = (family: Family, draw: Draw): Say =>
  sayFor(family.givens, draw, family.kind === "sum" ? solutionOf(family, draw) : {});
