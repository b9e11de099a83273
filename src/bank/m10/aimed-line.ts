import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { Draw, GivenSpec } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { bundleLine } from "../../facts/bundle-line.ts";

/** What the families of one line, aimed at the bundle from the anterolateral portal, draw in common. */

export const AIMED_LINE_READS = [
  "junction-to-bundle.boys@1",
  "junction-to-bundle.girls@1",
  "free-edge-to-bundle.boys@1",
  "free-edge-to-bundle.girls@1",
  "junction-to-bundle-low.boys@1",
  "junction-to-bundle-low.girls@1",
] as const;

export const ENTRY: GivenSpec = { key: "entryToJunctionMm", unit: "mm", least: 2, greatest: 10, step: 0.1 };
export const JUNCTION: GivenSpec = { key: "junctionToBundleMm", unit: "mm", least: 1.8, greatest: 8.4, step: 0.1 };
export const FREE_EDGE: GivenSpec = { key: "freeEdgeToBundleMm", unit: "mm", least: 9.8, greatest: 18.4, step: 0.1 };
export const MARGIN: GivenSpec = { key: "marginMm", unit: "mm", least: 1, greatest: 3, step: 0.5 };
export const NEED: GivenSpec = { key: "throughCapsuleMm", unit: "mm", least: 3, greatest: 10, step: 0.1 };

/** Invented children of the demo; ages are those of the study. */
const CHILDREN = {
  boys: ["Ivo", "Teodor", "Rasmus", "Jarek", "Silvan"],
  girls: ["Anouk", "Liesel", "Marit", "Tamsin", "Oriel"],
} as const;
const AGES = ["10", "11", "12", "13", "14", "15", "16", "17"] as const;
const OWN_WIDTH = { least: 8, greatest: 10, step: 0.1 };

type Sex = keyof typeof CHILDREN;
export type Basis = "mean" | "low" | "scan";

const number = (pin: string, part: "mean" | "value"): number => bundleLine(pin).number[part] as number;

interface Distances {
  readonly givens: Readonly<Record<string, number>>;
  readonly origins: NonNullable<Draw["origins"]>;
}

const studied = (sex: Sex, low: boolean): Distances => {
  const junction = low ? `junction-to-bundle-low.${sex}@1` : `junction-to-bundle.${sex}@1`;
  const edge = `free-edge-to-bundle.${sex}@1`;
  return {
    givens: { junctionToBundleMm: number(junction, low ? "value" : "mean"), freeEdgeToBundleMm: number(edge, "mean") },
    origins: { junctionToBundleMm: { from: "study", entry: junction }, freeEdgeToBundleMm: { from: "study", entry: edge } },
  };
};

const scanned = (chance: Chance): Distances => {
  const junctionToBundleMm = chance.onGrid(JUNCTION);
  return { givens: { junctionToBundleMm, freeEdgeToBundleMm: sumOnGrid(junctionToBundleMm, chance.onGrid(OWN_WIDTH)) }, origins: {} };
};

/** A child, and the distances on the line: the study's mean, its low bound, or this question's own scan. */
export const drawAimedLine = (chance: Chance, bases: readonly Basis[]): Draw & Distances => {
  const sex = chance.pick<Sex>(["boys", "girls"]);
  const basis = chance.pick(bases);
  const distances = basis === "scan" ? scanned(chance) : studied(sex, basis === "low");
  const about = { child: chance.pick(CHILDREN[sex]), age: chance.pick(AGES), side: chance.pick(["left", "right"]), sex, basis };
  return { ...distances, about };
};

const WHOSE = {
  mean: (say: Say) => `Boys and girls were measured apart; for ${say.about("sex")} aged 10–18 the mean distance from the meniscocapsular junction to the bundle is ${say.of("junctionToBundleMm")}. Work with that mean.`,
  low: (say: Say) => `The mean is not a limit, so work with the low bound: for ${say.about("sex")} aged 10–18, the mean less two standard deviations puts the bundle ${say.of("junctionToBundleMm")} behind the meniscocapsular junction.`,
  scan: (say: Say) => `On the scan of this question, along this very line, the bundle lies ${say.of("junctionToBundleMm")} behind the meniscocapsular junction.`,
} as const;

/** The sentence that says whose distance this is. */
export const whoseDistance = (say: Say): string => WHOSE[say.about("basis") as Basis](say);

/** The sentence on the free edge, printed in every stem so that printing it is no hint. */
export const freeEdgeSentence = (say: Say): string =>
  say.about("basis") === "scan"
    ? `From the free edge of the meniscus it is ${say.of("freeEdgeToBundleMm")}.`
    : `From the free edge of the meniscus the mean is ${say.of("freeEdgeToBundleMm")}.`;

/** What the line is and what it is not: the same in every stem of this group. */
export const LINE = "The line runs straight from the anterolateral portal to the popliteal bundle, in the axial plane, read from MRI without fluid; the knee position is not stated.";

export const LINE_GIVENS = {
  entryToJunctionMm: "entry to junction",
  junctionToBundleMm: "junction to bundle",
  freeEdgeToBundleMm: "free edge to bundle",
  marginMm: "margin to keep",
  throughCapsuleMm: "needed beyond the junction",
} as const;

export const LINE_SAYS = {
  none: "No safe depth on this line",
  "cannot-be-told": "Cannot be told from this",
  "ask-locally": "Ask locally",
} as const;

export const LINE_SOURCES = [{ source: "schachne-2019", entry: "junction-to-bundle.boys@1" }, { source: "schachne-2019", entry: "junction-to-bundle.girls@1" }] as const;
