import { headHeightCm } from "../../engine/fluid/head-height-cm.ts";
import { headPressureMmHg } from "../../engine/fluid/head-pressure-mm-hg.ts";
import type { Draw, Givens, GivenSpec } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { liquid } from "../../facts/liquid.ts";
import { given } from "./fluid-words.ts";

/** What the families of a standing column of saline draw in common. */

const TEMPERATURES = ["20", "37"] as const;

export const COLUMN_READS = TEMPERATURES.map((degrees) => `density.saline-${degrees}@1`);
export const COLUMN_SOURCES = COLUMN_READS.map((entry) => ({ source: "rogers-pitzer-1982", entry }));

export const DENSITY: GivenSpec = { key: "densityKgPerM3", unit: "kg/m3", least: 990, greatest: 1010, step: 0.1 };

interface Saline {
  readonly densityKgPerM3: number;
  readonly degrees: string;
  readonly origins: NonNullable<Draw["origins"]>;
  readonly sources: NonNullable<Draw["sources"]>;
}

/** Saline as it comes from the shelf or from the warmer, with its published density. */
export const drawSaline = (chance: Chance): Saline => {
  const degrees = chance.pick(TEMPERATURES);
  const entry = `density.saline-${degrees}@1`;
  return { densityKgPerM3: liquid(entry).number.value ?? 0, degrees, origins: { densityKgPerM3: { from: "study", entry } }, sources: COLUMN_SOURCES.filter((mark) => mark.entry === entry) };
};

/** Pressure of a column of this question's saline; negative below the joint, where it would draw. */
export const pressureOf = (givens: Givens, heightCm: number): number => heightCm * mmHgPerCm(given(givens, "densityKgPerM3"));

/** Height of the column that makes a pressure. */
export const heightOf = (givens: Givens, pressureMmHg: number): number => pressureMmHg * cmPerMmHg(given(givens, "densityKgPerM3"));

/** What one centimetre of this liquid makes, by the engine's law of the column; no number where there is no liquid. */
const mmHgPerCm = (densityKgPerM3: number): number => (densityKgPerM3 > 0 ? headPressureMmHg({ heightCm: 1, densityKgPerM3 }) : Number.NaN);
const cmPerMmHg = (densityKgPerM3: number): number => (densityKgPerM3 > 0 ? headHeightCm({ pressureMmHg: 1, densityKgPerM3 }) : Number.NaN);

/** "0.739", as a sentence names it. */
export const factorOf = (say: Say): string => mmHgPerCm(say.value("densityKgPerM3")).toFixed(3);
/** "0.73895", as a working needs it: its product with a height is right to a hundredth. */
export const exactFactorOf = (say: Say): string => mmHgPerCm(say.value("densityKgPerM3")).toFixed(5);
export const backFactorOf = (say: Say): string => cmPerMmHg(say.value("densityKgPerM3")).toFixed(4);

export const densityLabel = (say: Say): string => `Density of saline at ${say.about("degrees")}\u2009°C`;

/** Where the bag comes from, as a clause: it says which density is printed. */
export const bagOf = (say: Say): string => (say.about("degrees") === "37" ? "a bag from the warmer" : "a bag from the shelf");

export const COLUMN_SAYS = {
  none: "No such height or pressure here",
  "cannot-be-told": "Cannot be told from this",
  "ask-locally": "Ask locally",
} as const;
