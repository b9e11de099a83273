import type { Draw } from "../../engine/question/family-head.ts";
import type { TrayFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { cappedDoseMg } from "../../engine/theatre/capped-dose-mg.ts";
import { mostVolumeMl } from "../../engine/theatre/most-volume-ml.ts";
import { antibiotic } from "../../facts/antibiotic.ts";
import { localAnaesthetic } from "../../facts/local-anaesthetic.ts";
import { dose, drawPatient, plain, WEIGHT, WEIGHT_LABEL, whoIs } from "./dose-words.ts";

const DOSE_PIN = "cefazolin.ashp@1";
const CAP_PIN = "cefazolin-cap.ashp@1";
const LIMIT_PIN = "la-limit.teaching-bupivacaine@1";
const MIXTURE_PIN = "adrenaline.one-in-200000@1";
const THOUSAND = 1000;
const TENFOLD = 10;
const STRENGTH_PERCENT = 0.25;
const DOSE = { key: "antibioticMgPerKg", unit: "mg/kg", least: 10, greatest: 50, step: 1 } as const;
const CAP = { key: "antibioticCapMg", unit: "mg", least: 100, greatest: 3000, step: 50 } as const;
const LIMIT = { key: "limitMgPerKg", unit: "mg/kg", least: 1, greatest: 5, step: 1 } as const;
const PAIN = { key: "painMgPerKg", unit: "mg/kg", least: 10, greatest: 15, step: 1 } as const;
const OPIOID = { key: "opioidMicrograms", unit: "micrograms", least: 2, greatest: 2, step: 1 } as const;
/** Heavy enough for the cap of the antibiotic, and no heavier: beyond that other caps would count that this sheet does not print. */
const HEAVY = { least: 68, greatest: 74, step: 1 };
const PAIN_MOST_MG = 1000;

/** What may stand in each of the five lines: as it should, odd but right, or wrong in a named way. */
const STATES = {
  antibiotic: ["as-it-should", "in-grams", "ten-fold", "cap-passed"],
  block: ["as-it-should", "small", "ten-fold", "pump"],
  mixture: ["as-it-should", "in-micrograms", "thousand"],
  pain: ["as-it-should", "ten-fold", "small"],
  opioid: ["as-it-should", "milligrams"],
} as const;
type Line = keyof typeof STATES;
const LINES = Object.keys(STATES) as Line[];
const FAULTS: readonly string[] = ["ten-fold", "cap-passed", "pump", "thousand", "milligrams"];
const ODD: readonly string[] = ["in-grams", "small", "in-micrograms"];

const stateOf = (draw: Draw, line: string): string => draw.about[line] ?? "as-it-should";
const linesWhere = (draw: Draw, states: readonly string[]): readonly string[] => (draw.shown ?? []).filter((line) => states.includes(stateOf(draw, line)));
const faultsIn = (draw: Draw): readonly string[] => linesWhere(draw, FAULTS);

/** A cap can be passed only where the dose by weight is larger. */
const isPossible = (state: string, isHeavy: boolean): boolean => (isHeavy ? state !== "in-grams" : state !== "cap-passed");

const drawStates = (chance: Chance, isHeavy: boolean): Readonly<Record<Line, string>> => {
  const states = Object.fromEntries(LINES.map((line) => [line, "as-it-should"])) as Record<Line, string>;
  const wanted = 1 + chance.below(3);
  const order = chance.shuffled(LINES);
  for (const [index, line] of order.entries()) {
    const pool = (STATES[line] as readonly string[]).filter((state) => isPossible(state, isHeavy) && (index < wanted ? FAULTS.includes(state) : !FAULTS.includes(state)));
    states[line] = chance.pick(pool);
  }
  return states;
};

const drawn = (chance: Chance): Draw => {
  const patient = drawPatient(chance);
  const isHeavy = chance.happens(1, 3);
  const weightKg = isHeavy ? chance.onGrid(HEAVY) : patient.weightKg;
  const about = isHeavy ? { ...patient.about, child: chance.pick(["Piet", "Yusra"]), age: "16 years old" } : patient.about;
  const pinned = (pin: string): number => antibiotic(pin).number.value as number;
  return {
    givens: {
      weightKg,
      antibioticMgPerKg: pinned(DOSE_PIN),
      antibioticCapMg: pinned(CAP_PIN) * THOUSAND,
      limitMgPerKg: localAnaesthetic(LIMIT_PIN).number.value as number,
      // A grown patient’s single dose is never passed, whatever the weight (common practice, no source).
      painMgPerKg: chance.onGrid({ ...PAIN, greatest: Math.min(PAIN.greatest, Math.floor(PAIN_MOST_MG / weightKg)) }),
      opioidMicrograms: OPIOID.least,
    },
    about: { ...about, ...drawStates(chance, isHeavy) },
    origins: {
      antibioticMgPerKg: { from: "local", entry: DOSE_PIN },
      antibioticCapMg: { from: "local", entry: CAP_PIN },
      limitMgPerKg: { from: "local", entry: LIMIT_PIN },
      painMgPerKg: { from: "local" },
      opioidMicrograms: { from: "local" },
    },
    shown: chance.shuffled(LINES),
  };
};

const byWeightMg = (say: Say): number => say.value("weightKg") * say.value("antibioticMgPerKg");
const antibioticMg = (say: Say): number => cappedDoseMg({ weightKg: say.value("weightKg"), mgPerKg: say.value("antibioticMgPerKg"), capMg: say.value("antibioticCapMg") });
const blockMl = (say: Say): number => mostVolumeMl({ weightKg: say.value("weightKg"), limitMgPerKg: say.value("limitMgPerKg"), percent: STRENGTH_PERCENT });
/** Well within the limit and in whole millilitres, as an order would be. */
const orderedMl = (say: Say, share: number): number => Math.max(1, Math.floor(blockMl(say) * share));
const limitMl = (say: Say): string => dose(Math.floor(blockMl(say) * TENFOLD) / TENFOLD, "mL");
const STRENGTH_TEXT = `${dose(localAnaesthetic(MIXTURE_PIN).number.value as number, "micrograms")} in each mL`;
const FAMILIAR = "The figures look familiar, and that is why it is passed: do the sum, then look at the number of places.";
const painMg = (say: Say): number => Math.floor((say.value("weightKg") * say.value("painMgPerKg")) / TENFOLD) * TENFOLD;

const LINE_TEXTS: Readonly<Record<Line, (say: Say, state: string) => string>> = {
  antibiotic: (say, state) => {
    const amounts: Readonly<Record<string, string>> = {
      "ten-fold": dose(antibioticMg(say) * TENFOLD, "mg"),
      "cap-passed": dose(byWeightMg(say), "mg"),
      "in-grams": dose(antibioticMg(say) / THOUSAND, "g"),
    };
    return `Cefazolin ${amounts[state] ?? dose(antibioticMg(say), "mg")}, intravenous, once, before the cuff`;
  },
  block: (say, state) => {
    if (state === "pump") return `Bupivacaine ${plain(STRENGTH_PERCENT)} per cent, ${dose(2, "mL")} in each hour, by pump, into the joint, for one day`;
    const share = state === "small" ? 0.15 : 0.6;
    return `Bupivacaine ${plain(STRENGTH_PERCENT)} per cent, ${dose(orderedMl(say, share) * (state === "ten-fold" ? TENFOLD : 1), "mL")}, portals and skin, once`;
  },
  mixture: (_, state) => {
    const strengths: Readonly<Record<string, string>> = { thousand: "adrenaline 1:1000", "in-micrograms": `adrenaline ${STRENGTH_TEXT}` };
    return `The bupivacaine of this case: with ${strengths[state] ?? "adrenaline 1:200 000"}, from the sealed vial`;
  },
  pain: (say, state) => {
    const scale = { "ten-fold": TENFOLD, small: 0.5 }[state] ?? 1;
    return `Paracetamol ${dose(Math.floor((painMg(say) * scale) / TENFOLD) * TENFOLD, "mg")}, by mouth, once, in recovery`;
  },
  opioid: (say, state) => `Fentanyl ${dose(say.value("weightKg") * say.value("opioidMicrograms"), state === "milligrams" ? "mg" : "micrograms")}, intravenous, once, by the anaesthetist`,
};

const withoutState = (draw: Draw, states: readonly string[]): readonly string[] | null => {
  const passed = linesWhere(draw, states);
  return passed.length === 0 ? null : faultsIn(draw).filter((line) => !passed.includes(line));
};

/** One line passed in one way; each is named, also where another was found. */
const without = (draw: Draw, line: Line, state: string): readonly string[] | null => (stateOf(draw, line) === state ? faultsIn(draw).filter((one) => one !== line) : null);
const withOdd = (draw: Draw, line: Line): readonly string[] | null => (ODD.includes(stateOf(draw, line)) ? [...faultsIn(draw), line] : null);

/** 12h: the prescription that must not be given. */
export const spotIt: TrayFamily = {
  kind: "tray",
  id: "spot-it",
  code: "12h",
  module: "M12",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m12-errors"],
  reads: [DOSE_PIN, CAP_PIN, LIMIT_PIN, MIXTURE_PIN],
  sources: [{ source: "ashp-2013", entry: DOSE_PIN }, { source: "em-page-2023", entry: LIMIT_PIN }],
  cautions: ["C2", "C4"],
  givens: [WEIGHT, DOSE, CAP, LIMIT, PAIN, OPIOID],
  draw: drawn,
  faults: faultsIn,
  critical: faultsIn,
  slips: [
    { id: "ten-fold-antibiotic", gives: (draw) => without(draw, "antibiotic", "ten-fold") },
    { id: "ten-fold-block", gives: (draw) => without(draw, "block", "ten-fold") },
    { id: "ten-fold-pain", gives: (draw) => without(draw, "pain", "ten-fold") },
    { id: "cap-passed", gives: (draw) => withoutState(draw, ["cap-passed"]) },
    { id: "unit-passed", gives: (draw) => withoutState(draw, ["milligrams"]) },
    { id: "mixture-passed", gives: (draw) => withoutState(draw, ["thousand"]) },
    { id: "pump-passed", gives: (draw) => withoutState(draw, ["pump"]) },
    { id: "grams-flagged", gives: (draw) => withOdd(draw, "antibiotic") },
    { id: "small-block-flagged", gives: (draw) => withOdd(draw, "block") },
    { id: "micrograms-flagged", gives: (draw) => withOdd(draw, "mixture") },
    { id: "small-pain-flagged", gives: (draw) => withOdd(draw, "pain") },
  ],
  words: {
    en: {
      title: "Spot the order that must not be given",
      stems: [
        (say) => [`${whoIs(say)} Five orders lie before you. The limits below are those of the sheet at ${say.about("hospital")}; the vial of bupivacaine holds ${plain(STRENGTH_PERCENT)} per cent. The sheet allows adrenaline only 1:200 000, and local anaesthetic only at portals and skin.`],
        (say) => [`You check the orders for ${say.about("child")}, ${say.about("age")}, against the sheet at ${say.about("hospital")}, printed below. It allows adrenaline only 1:200 000 and no pump into a joint; bupivacaine is kept as ${plain(STRENGTH_PERCENT)} per cent.`],
        (say) => [`A list of five was copied in a hurry. Before anything is drawn up, set each line for ${say.about("child")}, ${say.about("age")}, beside the sheet of ${say.about("hospital")}: limits as below, adrenaline 1:200 000 and no other, bupivacaine ${plain(STRENGTH_PERCENT)} per cent at portals and skin only.`],
      ],
      question: "Which of these orders must not be given as they stand?",
      givens: {
        weightKg: WEIGHT_LABEL,
        antibioticMgPerKg: "Cefazolin by weight, this hospital’s sheet",
        antibioticCapMg: "Cefazolin, never more than, the same sheet",
        limitMgPerKg: "Bupivacaine, limit by weight, the same sheet",
        painMgPerKg: "Paracetamol by mouth, at most by weight, the same sheet",
        opioidMicrograms: "Fentanyl for each kilogram, at most, the same sheet",
      },
      thing: (say, id) => LINE_TEXTS[id as Line](say, say.about(id)),
      nothing: "All five may be given",
      slips: {
        "ten-fold-antibiotic": { name: "ten-fold cefazolin passed", because: (say) => [`The cefazolin is ten times the ${dose(antibioticMg(say), "mg")} of the sheet. ${FAMILIAR}`] },
        "ten-fold-block": { name: "ten-fold bupivacaine passed", because: (say) => [`The bupivacaine is far beyond the limit of ${limitMl(say)}. ${FAMILIAR}`] },
        "ten-fold-pain": { name: "ten-fold paracetamol passed", because: (say) => [`The paracetamol is ten times the ${dose(painMg(say), "mg")} that the sheet allows at this weight. ${FAMILIAR}`] },
        "cap-passed": { name: "cap passed", because: (say) => [`${dose(byWeightMg(say), "mg")} is right by weight, but the sheet stops at ${say.of("antibioticCapMg")}. A heavy child has a cap as well.`] },
        "unit-passed": { name: "unit passed", because: (say) => [`The sheet gives fentanyl in micrograms. ${dose(say.value("weightKg") * say.value("opioidMicrograms"), "mg")} is a thousand times what it gives.`] },
        "mixture-passed": { name: "1:1000 passed", because: () => ["1:1000 is 1 mg in each millilitre, two hundred times the mixture that the sheet allows. Read the zeros aloud."] },
        "pump-passed": { name: "pump into the joint passed", because: () => ["The volume may lie within the limit and the place is still wrong. A pump keeps cartilage in the agent for hours, and cartilage can die of it."] },
        "grams-flagged": { name: "grams flagged", because: (say) => [`${dose(antibioticMg(say) / THOUSAND, "g")} and ${dose(antibioticMg(say), "mg")} are the same. The sheet gives so much; only the unit is unusual.`] },
        "small-block-flagged": { name: "a small volume flagged", because: (say) => [`The bupivacaine is well below its limit of ${limitMl(say)}. A limit need not be reached.`] },
        "micrograms-flagged": { name: "micrograms flagged", because: () => [`${STRENGTH_TEXT} and 1:200 000 are the same strength, written in two ways.`] },
        "small-pain-flagged": { name: "a small dose flagged", because: () => ["The paracetamol is about half of what the sheet allows at most. Ask whether it will be enough, but it is no fault."] },
      },
      working: (say) => [
        `Cefazolin: ${dose(byWeightMg(say), "mg")} by weight, cap ${say.of("antibioticCapMg")}, so ${dose(antibioticMg(say), "mg")}`,
        `Bupivacaine ${plain(STRENGTH_PERCENT)} per cent: at most ${limitMl(say)}, at portals and skin, never by pump into the joint`,
        `Paracetamol: at most ${dose(say.value("weightKg") * say.value("painMgPerKg"), "mg")}; fentanyl: at most ${dose(say.value("weightKg") * say.value("opioidMicrograms"), "micrograms")}; adrenaline: 1:200 000`,
      ],
      right: () => ["Each line was set beside the sheet: amount, unit, strength, place. What is merely unusual was left alone."],
      off: () => ["Do not read for what looks strange; reckon each line. Amount against weight and cap, then unit, then strength, then place."],
      moves: (say) => [`The weight moves four lines at once; the cap is met from ${plain(Math.ceil(say.value("antibioticCapMg") / say.value("antibioticMgPerKg")))} kg on.`],
      turns: () => ["A line is sound where amount, unit, strength and place all agree with the sheet, however it is written."],
    },
  },
};

