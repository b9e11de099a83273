import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { cappedDoseMg } from "../../engine/theatre/capped-dose-mg.ts";
import { antibiotic } from "../../facts/antibiotic.ts";
import { answerNumber, dose, DOSE_SAYS, drawPatient, given, roughly, sheetOf, WEIGHT, WEIGHT_LABEL, whoIs } from "./dose-words.ts";

const MG_PER_G = 1000;
const LB_PER_KG = 2.20462;
const TENFOLD = 10;
const ASKED_MG = 10;
/** The verdict says which side is safe against too much; with an antibiotic the other side is not safe either. */
const TOO_LITTLE = "Too little of an antibiotic is no safe answer either.";
const HEAVY = { least: 72, greatest: 104, step: 1 };
const DOSE = { key: "doseMgPerKg", unit: "mg/kg", least: 5, greatest: 50, step: 1 } as const;
const CAP = { key: "capMg", unit: "mg", least: 100, greatest: 3000, step: 50 } as const;

interface SheetLine {
  readonly medicine: string;
  readonly dose: string;
  readonly cap: string;
}

const LINES: readonly SheetLine[] = [
  { medicine: "cefazolin", dose: "cefazolin.ashp@1", cap: "cefazolin-cap.ashp@1" },
  { medicine: "cefazolin", dose: "cefazolin.third-sheet@1", cap: "cefazolin-cap.us-sheet@1" },
  { medicine: "clindamycin", dose: "clindamycin.ashp@1", cap: "clindamycin-cap.ashp@1" },
  { medicine: "clindamycin", dose: "clindamycin.ashp@1", cap: "clindamycin-cap.us-sheet@1" },
];

const pinnedValue = (pin: string): number => antibiotic(pin).number.value as number;
const inMg = (pin: string): number => pinnedValue(pin) * (antibiotic(pin).unit === "g" ? MG_PER_G : 1);

/** Heavy children come often enough that the cap is met, and some of them without a word of which weight counts. */
const drawWeight = (chance: Chance) => {
  const patient = drawPatient(chance);
  if (!chance.happens(3, 10)) return { ...patient, about: { ...patient.about, weight: "usual" } };
  const weightKg = chance.onGrid(HEAVY);
  const about = { ...patient.about, child: chance.pick(["Piet", "Finn", "Sunniva"]), age: "16 years old", weight: chance.happens(1, 3) ? "which" : "heavy" };
  return { about, weightKg };
};

const drawn = (chance: Chance): Draw => {
  const { about, weightKg } = drawWeight(chance);
  const line = chance.pick(LINES);
  return {
    givens: { weightKg, doseMgPerKg: pinnedValue(line.dose), capMg: inMg(line.cap) },
    about: { ...about, medicine: line.medicine },
    origins: { doseMgPerKg: { from: "local", entry: line.dose }, capMg: { from: "local", entry: line.cap } },
  };
};

const byWeight = (givens: Givens): number => given(givens, "weightKg") * given(givens, "doseMgPerKg");
const capped = (givens: Givens): number => cappedDoseMg({ weightKg: given(givens, "weightKg"), mgPerKg: given(givens, "doseMgPerKg"), capMg: given(givens, "capMg") });
const isCapped = (givens: Givens): boolean => byWeight(givens) > given(givens, "capMg");
const isOpen = (about: Draw["about"]): boolean => about["weight"] === "which";
const only = (holds: boolean, doseMg: number): Solution | null => (holds ? { doseMg } : null);

const isAsked = (say: Say): boolean => say.about("weight") === "which";
const product = (say: Say): string => dose(say.value("weightKg") * say.value("doseMgPerKg"), "mg");
const WEIGHT_LINES: Readonly<Record<string, (say: Say) => string>> = {
  usual: () => "The weight was measured today.",
  heavy: (say) => `${say.about("child")} is heavy for the height; the sheet says that the measured weight counts, up to the cap.`,
  which: (say) => `${say.about("child")} is much heavier than others of this height, and the sheet has one column for the measured and one for the ideal weight, without saying when each counts.`,
};
const weightLine = (say: Say): string => (WEIGHT_LINES[say.about("weight")] as (say: Say) => string)(say);

/** 12a: a dose by weight that never exceeds its cap. */
export const cappedDose: SumFamily = {
  kind: "sum",
  id: "capped-dose",
  code: "12a",
  module: "M12",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m12-dose"],
  reads: ["cefazolin.ashp@1", "cefazolin-cap.ashp@1", "cefazolin.third-sheet@1", "cefazolin-cap.us-sheet@1", "clindamycin.ashp@1", "clindamycin-cap.ashp@1", "clindamycin-cap.us-sheet@1"],
  sources: [{ source: "ashp-2013", entry: "cefazolin.ashp@1" }, { source: "us-sheet", entry: "cefazolin-cap.us-sheet@1" }, { source: "third-sheet", entry: "cefazolin.third-sheet@1" }],
  cautions: ["C2", "C4"],
  givens: [WEIGHT, DOSE, CAP],
  asks: [{ id: "doseMg", unit: "mg", roundTo: 10, rounding: "down", safeSide: "down" }],
  draw: drawn,
  solve: (givens, about) => {
    const doseMg = capped(givens);
    return isOpen(about) ? { says: "ask-locally" } : { doseMg };
  },
  slips: [
    { id: "no-cap", gives: ({ givens, about }) => only(isCapped(givens) && !isOpen(about), byWeight(givens)) },
    { id: "cap-for-everyone", gives: ({ givens, about }) => only(!isCapped(givens) && !isOpen(about), given(givens, "capMg")) },
    { id: "pounds", gives: ({ givens, about }) => only(!isOpen(about) && !isCapped(givens) && byWeight(givens) * LB_PER_KG < given(givens, "capMg"), byWeight(givens) * LB_PER_KG) },
    { id: "kilograms-for-pounds", gives: ({ givens, about }) => only(!isOpen(about) && byWeight(givens) / LB_PER_KG < given(givens, "capMg"), byWeight(givens) / LB_PER_KG) },
    { id: "rounded-up", gives: ({ givens, about }) => only(!isOpen(about) && capped(givens) % ASKED_MG !== 0, Math.ceil(capped(givens) / ASKED_MG) * ASKED_MG) },
    { id: "a-tenth", gives: ({ givens, about }) => only(!isOpen(about), capped(givens) / TENFOLD) },
    { id: "tenfold", gives: ({ givens }) => ({ doseMg: capped(givens) * TENFOLD }) },
    { id: "weight-as-it-stands", gives: ({ givens, about }) => only(isOpen(about), capped(givens)) },
  ],
  words: {
    en: {
      title: "A dose by weight, and its cap",
      stems: [
        (say) => [`${whoIs(say)} Before the cuff goes up, ${say.about("medicine")} is due. ${weightLine(say)}`, sheetOf(say)],
        (say) => [`At ${say.about("hospital")} you are handed the sheet and the weight of ${say.about("child")}, ${say.about("age")}. The order is for ${say.about("medicine")}. ${weightLine(say)}`, sheetOf(say)],
        (say) => [`Somebody reads you the order for ${say.about("medicine")} and waits for your number. ${whoIs(say)} ${weightLine(say)}`, sheetOf(say)],
      ],
      question: "Which single dose does the sheet give? Round down to whole tens of milligrams.",
      givens: { weightKg: WEIGHT_LABEL, doseMgPerKg: "Dose by weight, this hospital’s sheet", capMg: "Never more than, the same sheet" },
      asks: { doseMg: "Single dose" },
      says: DOSE_SAYS,
      slips: {
        "no-cap": { name: "cap left out", because: (say) => [`${say.bare("weightKg")} × ${say.bare("doseMgPerKg")} is ${product(say)}, but the sheet stops at ${say.of("capMg")}. A big child is not given more than an adult.`] },
        "cap-for-everyone": { name: "cap taken for the dose", because: (say) => [`${say.of("capMg")} is where the sheet stops, not what it gives. At ${say.of("weightKg")} the dose by weight is ${product(say)}.`] },
        pounds: { name: "pounds for kilograms", because: (say) => [`That is the dose for ${say.bare("weightKg")} kg turned into pounds. The sheet counts in kilograms, and pounds make the dose more than twice too large.`] },
        "kilograms-for-pounds": { name: "kilograms taken for pounds", because: (say) => [`${say.of("weightKg")} were turned as if they had been pounds. They are kilograms already, and the dose comes out far too small.`, TOO_LITTLE] },
        "rounded-up": { name: "rounded up", because: () => ["The sheet rounds down. A few milligrams do no harm here; the habit of rounding up does, where the dose is small."] },
        "a-tenth": { name: "a tenth of the dose", because: () => ["The figures are right and the place is wrong: this is a tenth of the dose.", TOO_LITTLE] },
        tenfold: { name: "ten times the dose", because: (say) => [isAsked(say) ? "This is ten times even the larger dose that could be meant. Write the product down, then look at its size." : "The figures are right and the place is wrong: this is ten times the dose. Read it back as a number of vials."] },
        "weight-as-it-stands": { name: "a weight chosen in silence", because: (say) => [`The sheet has two columns and does not say which one counts for ${say.about("child")}. Whoever chooses in silence has decided a dose alone.`] },
      },
      working: (say) => isAsked(say)
        ? [`By the measured weight: ${say.bare("weightKg")} × ${say.bare("doseMgPerKg")} = ${product(say)}`, "The sheet does not say whether the measured or the ideal weight counts: ask before anything is drawn up."]
        : [`By weight: ${say.bare("weightKg")} × ${say.bare("doseMgPerKg")} = ${product(say)}`, `The cap: ${say.of("capMg")}`, `The smaller of the two: ${dose(answerNumber(say, "doseMg"), "mg")}, then down to whole tens`],
      right: (say) => isAsked(say) ? ["Asking is the answer here. The sheet leaves open which weight counts, and a guess would not be seen by anybody."] : [`${dose(Number(asAsked(answerNumber(say, "doseMg"), 10, "down")), "mg")}: the smaller of dose by weight and cap, rounded down. Never up.`],
      off: (say) => isAsked(say) ? ["Look at the weight before the sum. Where the sheet leaves open which weight counts, the answer is to ask."] : [`Two numbers are made, ${product(say)} by weight and ${say.of("capMg")} as the cap, and the smaller one counts.`, TOO_LITTLE],
      inverse: () => [],
      turns: (say) => [`The cap begins to count at ${roughly(say.value("capMg") / say.value("doseMgPerKg"))} kg. Below that the weight decides, above it nothing more is added.`],
    },
  },
};
