import { withUnit } from "../../engine/quantity/format.ts";
import type { UnitId } from "../../engine/quantity/units.ts";
import type { Givens, GivenSpec } from "../../engine/question/family-head.ts";
import { placesOf } from "../../engine/quantity/places.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";

/** What the families of medicines have in common: invented children, safe digits, and the three answers that are not a number. */

const PLACES = 3;

/** A dose value as it is written safely: no trailing zero, always a digit before the point. */
export const plain = (value: number): string => String(Number(value.toFixed(PLACES)));

/** A sentence begins with a capital letter, also where a medicine stands first. */
export const atStart = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A number that only explains, cut to a tenth. */
export const roughly = (value: number): string => plain(Math.round(value * 10) / 10);

/** A dose value with its unit, written safely. */
export const dose = (value: number, unit: UnitId): string => withUnit(plain(value), unit);

/** True where a value cut down to whole steps would not end in a zero behind the point. */
export const isWrittenSafely = (value: number, step: number): boolean => {
  const places = placesOf(step);
  const steps = Math.floor(Number((value / step).toFixed(PLACES)));
  return places === 0 || steps % 10 !== 0;
};

/** A given that the draw holds. */
export const given = (givens: Givens, key: string): number => givens[key] as number;

interface Child {
  readonly name: string;
  readonly age: string;
  readonly leastKg: number;
  readonly greatestKg: number;
}

/** Invented children. Weights for plausibility only, from memory (curriculum table); the question always states the weight. */
const CHILDREN: readonly Child[] = [
  { name: "Asta", age: "5 years old", leastKg: 15, greatestKg: 22 },
  { name: "Bram", age: "8 years old", leastKg: 21, greatestKg: 31 },
  { name: "Cosima", age: "10 years old", leastKg: 26, greatestKg: 38 },
  { name: "Anton", age: "12 years old", leastKg: 32, greatestKg: 48 },
  { name: "Sunniva", age: "14 years old", leastKg: 40, greatestKg: 60 },
  { name: "Piet", age: "16 years old", leastKg: 48, greatestKg: 72 },
  { name: "Linnea", age: "8 years old", leastKg: 22, greatestKg: 30 },
  { name: "Emre", age: "10 years old", leastKg: 27, greatestKg: 37 },
  { name: "Yusra", age: "12 years old", leastKg: 33, greatestKg: 47 },
  { name: "Finn", age: "14 years old", leastKg: 42, greatestKg: 58 },
];

export const HOSPITALS = ["Saltmere", "Northmoor", "Thornbeck"] as const;

export const WEIGHT: GivenSpec = { key: "weightKg", unit: "kg", least: 12, greatest: 110, step: 1 };
export const WEIGHT_LABEL = "Body weight, measured today";

/** A child of the demo, a hospital, and a weight that fits the age. */
export const drawPatient = (chance: Chance): { readonly about: Readonly<Record<string, string>>; readonly weightKg: number } => {
  const { name, age, leastKg, greatestKg } = chance.pick(CHILDREN);
  return {
    about: { child: name, age, hospital: chance.pick(HOSPITALS) },
    weightKg: chance.onGrid({ least: leastKg, greatest: greatestKg, step: 1 }),
  };
};

/** "Sunniva is 14 years old." */
export const whoIs = (say: Say): string => `${say.about("child")} is ${say.about("age")}.`;

/** Whose limits these are. */
export const sheetOf = (say: Say): string => `The limits below are those of the sheet at ${say.about("hospital")}, the hospital of this case.`;

/** The strength of a solution, kept on a grid that prints no zero behind its last digit: whole, tenths or hundredths. */
export const strengthSpecs = (prefix: string): readonly GivenSpec[] => [
  { key: `${prefix}Percent`, unit: "%", least: 1, greatest: 2, step: 1 },
  { key: `${prefix}TenthsPercent`, unit: "%", least: 0.1, greatest: 1.9, step: 0.1 },
  { key: `${prefix}HundredthsPercent`, unit: "%", least: 0.05, greatest: 1.95, step: 0.01 },
];

const STRENGTH_KEYS = ["Percent", "TenthsPercent", "HundredthsPercent"] as const;

const strengthKey = (prefix: string, percent: number): string => `${prefix}${STRENGTH_KEYS[placesOf(percent)]}`;

/** A strength as the given of the grid that it fits. */
export const strengthGiven = (prefix: string, percent: number): Givens => ({ [strengthKey(prefix, percent)]: percent });

/** Whole keys by prefix: a draw asks for them again and again. */
const KEYS_BY_PREFIX = new Map<string, readonly string[]>();

const strengthKeys = (prefix: string): readonly string[] => {
  const known = KEYS_BY_PREFIX.get(prefix) ?? STRENGTH_KEYS.map((key) => `${prefix}${key}`);
  KEYS_BY_PREFIX.set(prefix, known);
  return known;
};

/** The strength that a draw holds, in per cent. */
export const strengthIn = (givens: Givens, prefix: string): number => {
  const keys = strengthKeys(prefix);
  return given(givens, keys.find((key) => key in givens) ?? keys[0] ?? prefix);
};

/** The same label for each grid of a strength. */
export const strengthLabels = (prefix: string, label: string | ((say: Say) => string)): Readonly<Record<string, string | ((say: Say) => string)>> =>
  Object.fromEntries(strengthSpecs(prefix).map(({ key }) => [key, label]));

/** Givens that are printed, by key; for words that compute again what the answer is made of. */
export const givensOf = (say: Say, keys: readonly string[]): Givens => Object.fromEntries(keys.filter(say.has).map((key) => [key, say.value(key)]));

export const DOSE_SAYS = {
  none: "None may be given",
  "cannot-be-told": "Cannot be told from this",
  "ask-locally": "Ask locally before anything is drawn up",
} as const;

/** A single answer of this draw. */
export const answerNumber = (say: Say, id: string): number => (say.answer as Readonly<Record<string, number>>)[id] ?? 0;
