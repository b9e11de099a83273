import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { Draw, Givens, GivenSpec } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { greatestDepthMm, leastDepthMm } from "../../engine/repair/line-depths.ts";
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

export const ENTRY: GivenSpec = { key: "entryToJunctionMm", unit: "mm", least: 2, greatest: 9, step: 0.1 };
export const JUNCTION: GivenSpec = { key: "junctionToBundleMm", unit: "mm", least: 1.8, greatest: 8.4, step: 0.1 };
export const FREE_EDGE: GivenSpec = { key: "freeEdgeToBundleMm", unit: "mm", least: 9.8, greatest: 18.4, step: 0.1 };
export const MARGIN: GivenSpec = { key: "marginMm", unit: "mm", least: 1, greatest: 3, step: 0.5 };
export const NEED: GivenSpec = { key: "throughCapsuleMm", unit: "mm", least: 2, greatest: 10, step: 0.1 };

/** Invented children of the demo; ages are those of the study. */
const CHILDREN = {
  boys: ["Ivo", "Teodor", "Rasmus", "Jarek", "Silvan"],
  girls: ["Anouk", "Liesel", "Marit", "Tamsin", "Oriel"],
} as const;
const AGES = ["10", "11", "12", "13", "14", "15", "16", "17"] as const;
const OWN_WIDTH = { least: 8, greatest: 10, step: 0.1 };

type Sex = keyof typeof CHILDREN;
export type Basis = "mean" | "low" | "scan";

/** A given that the draw holds. */
export const given = (givens: Givens, key: string): number => givens[key] as number;

const number = (pin: string, part: "mean" | "value"): number => bundleLine(pin).number[part] as number;

export interface Distances {
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

/** The line, in one sentence with the child in it: what it is, how it was read, and what is not known. */
export const lineOf = (say: Say): string =>
  `The needle follows a straight line from the anterolateral portal to the popliteal bundle, through the posterior horn of the ${say.about("side")} lateral meniscus (MRI, axial plane, no fluid; knee position not stated).`;

const WHOSE = {
  mean: (say: Say) => `Take the means of ${say.about("sex")} as they were published: ${say.about("sex")} and ${say.about("sex") === "boys" ? "girls" : "boys"} were measured apart.`,
  low: () => "A mean is not a limit, so take the low bound: the mean less two standard deviations.",
  scan: (say: Say) => `The two distances to the bundle were read on ${say.about("child")}’s own scan, along this very line.`,
} as const;

/** The sentence that says whose distances these are. */
export const whoseDistance = (say: Say): string => WHOSE[say.about("basis") as Basis](say);

/** The same where a limit is built on them: a mean is printed with what it does not promise. */
export const whoseLimit = (say: Say): string =>
  say.about("basis") === "mean" ? `${whoseDistance(say)} About half of them lie nearer than that, so the limit is the sum’s, not ${say.about("child")}’s.` : whoseDistance(say);

const ORIGIN = {
  mean: (say: Say) => `mean of ${say.about("sex")} 10–18`,
  low: (say: Say) => `low bound of ${say.about("sex")} 10–18`,
  scan: () => "on this scan",
} as const;

const origin = (say: Say, basis = say.about("basis") as Basis): string => ORIGIN[basis](say);

/** Labels of the givens. The free edge is printed on every list, so that printing it is no hint. */
export const LINE_GIVENS = {
  entryToJunctionMm: "Entry to meniscocapsular junction",
  junctionToBundleMm: (say: Say) => `Meniscocapsular junction to bundle, ${origin(say)}`,
  freeEdgeToBundleMm: (say: Say) => `Free edge to bundle, ${origin(say, say.about("basis") === "low" ? "mean" : (say.about("basis") as Basis))}`,
  marginMm: "Margin to keep in front of the bundle",
  throughCapsuleMm: "Needed beyond the junction, your teacher’s figure",
} as const;

/** How deep in front of the junction the needle enters: on the meniscus, so less than its width on this line. */
export const drawEntry = (chance: Chance, { givens }: Distances): number => {
  const widthMm = sumOnGrid(givens["freeEdgeToBundleMm"] as number, -(givens["junctionToBundleMm"] as number));
  return chance.onGrid({ ...ENTRY, greatest: Math.min(ENTRY.greatest, Math.floor(widthMm) - 1) });
};

/** The least depth of a draw of this group. */
export const leastOf = (givens: Givens): number =>
  leastDepthMm({ entryToJunctionMm: given(givens, "entryToJunctionMm"), throughCapsuleMm: given(givens, "throughCapsuleMm") });

/** The greatest depth of a draw of this group, measured to the bundle from the junction or, as a slip, from elsewhere. */
export const greatestOf = (givens: Givens, key = "junctionToBundleMm"): number =>
  greatestDepthMm({ entryToJunctionMm: given(givens, "entryToJunctionMm"), junctionToStructureMm: given(givens, key), marginMm: given(givens, "marginMm") });

/** Where a need beyond the junction is given: whose it is, and that a child's is not known. */
export const NEED_UNKNOWN = "To hold, the anchor must open behind the capsule. What a child’s capsule needs has not been published; the figure below is your teacher’s.";

export const LINE_SAYS = {
  none: "No safe depth on this line",
  "cannot-be-told": "Cannot be told from this",
  "ask-locally": "Ask locally",
} as const;

export const LINE_SOURCES = [{ source: "schachne-2019", entry: "junction-to-bundle.boys@1" }, { source: "schachne-2019", entry: "junction-to-bundle.girls@1" }] as const;

/** The greatest depth with the mean in place of the low bound that the stem names; null where it names another. */
export const meanForLow = ({ givens, about }: Draw): number | null =>
  about["basis"] === "low" ? greatestOf({ ...givens, junctionToBundleMm: number(`junction-to-bundle.${about["sex"] ?? ""}@1`, "mean") }, "junctionToBundleMm") : null;
