import { CONVERSION_PLACES } from "./tolerance.ts";
import { type Decimal, decimal, divide, multiply } from "./decimal.ts";

/**
 * Units that a question may ask for or a learner may type. `size` is the exact size in the base unit of
 * the dimension, as decimal text. Millimetre of mercury: 13.5951 × 9.80665 Pa, exact by convention
 * (BIPM, SI Brochure, 8th edition, table 8); inch 25.4 mm and pound 0.45359237 kg exact
 * (NIST Special Publication 811, appendix B).
 */
export interface UnitFact {
  readonly dimension: string;
  readonly size: string;
  /** Other spellings that a learner may type, lower case. */
  readonly also?: readonly string[];
}

export type UnitId =
  | "mm"
  | "cm"
  | "m"
  | "in"
  | "mm2"
  | "cm2"
  | "deg"
  | "rad"
  | "%"
  | "points"
  | "mmHg"
  | "kPa"
  | "cmH2O"
  | "mL"
  | "L"
  | "mg"
  | "micrograms"
  | "g"
  | "kg"
  | "lb"
  | "s"
  | "min"
  | "h"
  | "mL/min"
  | "L/h"
  | "mL/kg"
  | "mg/kg"
  | "mg/mL"
  | "N"
  | "mPas"
  | "kg/m3"
  | "times"
  | "pieces";

export const UNITS: Readonly<Record<UnitId, UnitFact>> = {
  mm: { dimension: "length", size: "1", also: ["millimetre", "millimetres", "millimeter", "millimeters"] },
  cm: { dimension: "length", size: "10", also: ["centimetre", "centimetres", "centimeter", "centimeters"] },
  m: { dimension: "length", size: "1000", also: ["metre", "metres", "meter", "meters"] },
  in: { dimension: "length", size: "25.4", also: ["inch", "inches", '"'] },
  mm2: { dimension: "area", size: "1", also: ["mm²"] },
  cm2: { dimension: "area", size: "100", also: ["cm²"] },
  deg: { dimension: "angle", size: "1", also: ["°", "degree", "degrees"] },
  rad: { dimension: "angle", size: "57.295779513082", also: ["radian", "radians"] },
  "%": { dimension: "share", size: "1", also: ["percent", "per cent"] },
  points: { dimension: "points", size: "1", also: ["point", "percentage points"] },
  mmHg: { dimension: "pressure", size: "133.322387415", also: ["mmhg"] },
  kPa: { dimension: "pressure", size: "1000", also: ["kpa"] },
  cmH2O: { dimension: "pressure", size: "98.0665", also: ["cmh2o", "cmh₂o"] },
  mL: { dimension: "volume", size: "1", also: ["ml", "millilitre", "millilitres", "milliliter", "milliliters"] },
  L: { dimension: "volume", size: "1000", also: ["l", "litre", "litres", "liter", "liters"] },
  mg: { dimension: "mass", size: "1", also: ["milligram", "milligrams"] },
  micrograms: { dimension: "mass", size: "0.001", also: ["microgram", "mcg", "ug", "µg", "μg"] },
  g: { dimension: "mass", size: "1000", also: ["gram", "grams"] },
  kg: { dimension: "mass", size: "1000000", also: ["kilogram", "kilograms"] },
  lb: { dimension: "mass", size: "453592.37", also: ["lbs", "pound", "pounds"] },
  s: { dimension: "time", size: "1", also: ["sec", "second", "seconds"] },
  min: { dimension: "time", size: "60", also: ["mins", "minute", "minutes"] },
  h: { dimension: "time", size: "3600", also: ["hour", "hours", "hr", "hrs"] },
  "mL/min": { dimension: "flow", size: "60", also: ["ml/min"] },
  "L/h": { dimension: "flow", size: "1000", also: ["l/h"] },
  "mL/kg": { dimension: "volume per mass", size: "1", also: ["ml/kg"] },
  "mg/kg": { dimension: "mass per mass", size: "1" },
  "mg/mL": { dimension: "concentration", size: "1", also: ["mg/ml"] },
  N: { dimension: "force", size: "1", also: ["newton", "newtons"] },
  mPas: { dimension: "viscosity", size: "1", also: ["mpa·s", "mpa s"] },
  "kg/m3": { dimension: "density", size: "1", also: ["kg/m³"] },
  times: { dimension: "ratio", size: "1", also: ["×", "x"] },
  pieces: { dimension: "count", size: "1", also: ["piece"] },
};

const facts = (unit: UnitId): UnitFact => UNITS[unit];

/** True for text that is exactly one of our unit names. */
export const isUnitId = (text: string): text is UnitId => Object.hasOwn(UNITS, text);

/** The unit that a learner's text means, or null; capital letters do not matter except where they change the unit. */
export const unitNamed = (text: string): UnitId | null => {
  if (isUnitId(text)) return text;
  const lower = text.toLowerCase();
  for (const id of Object.keys(UNITS) as UnitId[]) {
    if (id.toLowerCase() === lower || facts(id).also?.includes(lower)) return id;
  }
  return null;
};

/** True where both units measure the same kind of thing. */
export const sameDimension = (first: UnitId, second: UnitId): boolean =>
  facts(first).dimension === facts(second).dimension;

/** A value in another unit of the same dimension; exact unless the ratio itself has no end. */
export const convert = (value: Decimal, from: UnitId, to: UnitId): Decimal => {
  if (!sameDimension(from, to)) throw new RangeError(`to must measure ${facts(from).dimension}, got ${to}`);
  const product = multiply(value, decimal(facts(from).size));
  return from === to ? value : divide(product, decimal(facts(to).size), Math.max(CONVERSION_PLACES, product.places));
};

const UNIT_IDS = Object.keys(UNITS) as UnitId[];

const SIBLINGS: ReadonlyMap<UnitId, readonly UnitId[]> = new Map(
  UNIT_IDS.map((unit) => [unit, UNIT_IDS.filter((id) => id !== unit && sameDimension(id, unit))]),
);

/** Every other unit of the same dimension, for naming a unit mix-up. */
export const siblings = (unit: UnitId): readonly UnitId[] => SIBLINGS.get(unit) ?? [];

const RATIOS = new Map<UnitId, ReadonlyMap<UnitId, number>>(
  UNIT_IDS.map((unit) => [unit, new Map(siblings(unit).map((id) => [id, Number(facts(id).size) / Number(facts(unit).size)]))]),
);

/** How many of the second unit one of the first is, as a double: near enough to rule a mix-up out, never to prove one. */
export const roughRatio = (from: UnitId, to: UnitId): number => RATIOS.get(to)?.get(from) ?? 1;
