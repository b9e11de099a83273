import { withUnit } from "../../engine/quantity/format.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { TrayFamily } from "../../engine/question/family.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { drawPatient, whoIs } from "./dose-words.ts";

/** Small whole numbers, so that every fault of the digits can be written with them and no dose is absurd. */
const DIGIT = { least: 1, greatest: 4, step: 1 };
const LB_PER_KG = 2.20462;
/** Amounts that no reader stumbles over, so that only the writing is asked about: from memory, never printed as a rule. */
const PARACETAMOL_MG_PER_KG = 12;
const MOST_ONDANSETRON_MG = 4;
const TEN = 10;
const MOST_ATROPINE_TENTHS = 5;
const ATROPINE_TENTHS_PER_KG = 0.2;
/** Atropine in tenths of a milligram, by weight and never above what a grown patient gets. */
const tenths = (weight: string): string => String(Math.min(MOST_ATROPINE_TENTHS, Math.round(Number(weight) * ATROPINE_TENTHS_PER_KG)));
const FIFTY = 50;

const unit = { mg: (text: string) => withUnit(text, "mg"), ml: (text: string) => withUnit(text, "mL") };

/** How each line is written, given one digit of the draw, or the weight of the child where the line holds a weight. */
const TEXTS: Readonly<Record<string, (digit: string) => string>> = {
  "trailing-zero": (digit) => `Dexamethasone ${unit.mg(`${digit}.0`)}, intravenous, once`,
  "naked-point": (weight) => `Atropine ${unit.mg(`.${tenths(weight)}`)}, intravenous, once, by the anaesthetist`,
  ug: (digit) => `Fentanyl ${digit}0 ug, intravenous, once`,
  pounds: (weight) => `Weight ${Math.round(Number(weight) * LB_PER_KG)} lb, measured today`,
  "limit-without-unit": (digit) => `Bupivacaine 0.25 per cent, portals and skin, never more than ${digit}`,
  "weight-without-date": (weight) => `Weight ${weight} kg, no date`,
  "no-route": (weight) => `Ondansetron ${unit.mg(String(Math.min(MOST_ONDANSETRON_MG, Math.floor(Number(weight) / TEN))))}, once, if needed`,
  "sound-whole": (digit) => `Dexamethasone ${unit.mg(digit)}, intravenous, once`,
  "sound-point": (weight) => `Atropine ${unit.mg(`0.${tenths(weight)}`)}, intravenous, once, by the anaesthetist`,
  "sound-micrograms": (digit) => `Fentanyl ${digit}0 micrograms, intravenous, once`,
  "sound-weight": (weight) => `Weight ${weight} kg, measured today`,
  "sound-limit": (digit) => `Ropivacaine 0.2 per cent, portals and skin, never more than ${unit.ml(`1${digit}`)}`,
  "sound-route": (weight) => `Paracetamol ${unit.mg(String(FIFTY * Math.floor((Number(weight) * PARACETAMOL_MG_PER_KG) / FIFTY)))}, by mouth, once, in recovery`,
  "length-stop": (digit) => `Needle stop, set and read aloud: ${withUnit(`1${digit}.0`, "mm")}`,
  "length-cuff": (digit) => `Cuff width, measured on the limb: ${withUnit(`1${digit}.0`, "cm")}`,
};

const FAULTS = ["trailing-zero", "naked-point", "ug", "pounds", "limit-without-unit", "weight-without-date", "no-route"] as const;
const SOUND = ["sound-whole", "sound-point", "sound-micrograms", "sound-weight", "sound-limit", "sound-route"] as const;
const LENGTHS = ["length-stop", "length-cuff"] as const;
/** Two lines about the same medicine beside each other would give the answer away. */
const TWINS: Readonly<Record<string, string>> = { "trailing-zero": "sound-whole", "naked-point": "sound-point", ug: "sound-micrograms", pounds: "sound-weight", "weight-without-date": "sound-weight" };
const WEIGHTS: readonly string[] = ["naked-point", "sound-point", "pounds", "weight-without-date", "sound-weight", "no-route", "sound-route"];

const kindOf = (draw: Draw, id: string): string => (draw.about[id] ?? "").split(":")[0] ?? "";
const faultsIn = (draw: Draw): readonly string[] => (draw.shown ?? []).filter((id) => FAULTS.some((fault) => fault === kindOf(draw, id)));
const linesOf = (draw: Draw, kinds: readonly string[]): readonly string[] => (draw.shown ?? []).filter((id) => kinds.includes(kindOf(draw, id)));

const drawn = (chance: Chance): Draw => {
  const { about, weightKg } = drawPatient(chance);
  const faults = chance.shuffled(FAULTS).slice(0, 2 + chance.below(3)).filter((fault, _, all) => fault !== "weight-without-date" || !all.includes("pounds"));
  const twins = faults.map((fault) => TWINS[fault]);
  const sound = chance.shuffled(SOUND.filter((kind) => !twins.includes(kind))).slice(0, 6 - faults.length);
  const kinds = chance.shuffled([...faults, ...sound, chance.pick(LENGTHS)]);
  const lines = Object.fromEntries(kinds.map((kind, index) => [`line-${index + 1}`, `${kind}:${WEIGHTS.includes(kind) ? weightKg : chance.onGrid(DIGIT)}`]));
  return { givens: {}, about: { ...about, ...lines }, shown: Object.keys(lines) };
};

const passed = (draw: Draw, kinds: readonly string[]): readonly string[] | null => {
  const lines = linesOf(draw, kinds);
  return lines.length === 0 ? null : faultsIn(draw).filter((id) => !lines.includes(id));
};

/** 12l: lines that are unsafe to read. */
export const writeItSafely: TrayFamily = {
  kind: "tray",
  id: "write-it-safely",
  code: "12l",
  module: "M12",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m12-errors"],
  reads: [],
  sources: [],
  cautions: ["C2", "C4"],
  givens: [],
  draw: drawn,
  faults: faultsIn,
  critical: faultsIn,
  slips: [
    { id: "trailing-zero-passed", gives: (draw) => passed(draw, ["trailing-zero"]) },
    { id: "naked-point-passed", gives: (draw) => passed(draw, ["naked-point"]) },
    { id: "ug-passed", gives: (draw) => passed(draw, ["ug"]) },
    { id: "pounds-passed", gives: (draw) => passed(draw, ["pounds"]) },
    { id: "unit-missing-passed", gives: (draw) => passed(draw, ["limit-without-unit"]) },
    { id: "date-missing-passed", gives: (draw) => passed(draw, ["weight-without-date"]) },
    { id: "route-missing-passed", gives: (draw) => passed(draw, ["no-route"]) },
    { id: "length-flagged", gives: (draw) => [...faultsIn(draw), ...linesOf(draw, LENGTHS)] },
  ],
  words: {
    en: {
      title: "Write it so that it cannot be misread",
      stems: [
        (say) => [`${whoIs(say)} Before the list you read what was written for the case, in a bad light and in a hurry, as somebody will at night. The amounts have been checked; only the writing is asked about.`],
        (say) => [`A sheet for ${say.about("child")}, ${say.about("age")}, was filled in by hand at ${say.about("hospital")}. The doses themselves have been checked. What counts now is how they are written.`],
        (say) => [`You copy a sheet for ${say.about("child")}, ${say.about("age")}, and stop at each line: could another reader make a different amount of it, or not know where it goes? The amounts themselves are right.`],
      ],
      question: "Which lines are unsafe to read as they are written?",
      givens: {},
      thing: (say, id) => {
        const [kind = "", digit = ""] = say.about(id).split(":");
        return (TEXTS[kind] as (digit: string) => string)(digit);
      },
      nothing: "Every line is safe to read",
      slips: {
        "trailing-zero-passed": { name: "trailing zero passed", because: () => ["A zero behind the point is lost with the point, and the dose is ten-fold when misread. Whole numbers of a dose are written without a point."] },
        "naked-point-passed": { name: "naked point passed", because: () => ["A point without a digit before it is overlooked, and the dose is ten-fold when misread. Write the zero in front."] },
        "ug-passed": { name: "ug passed", because: () => ["Written ug, micrograms are read as mg: thousand-fold when misread. Write the word in full."] },
        "pounds-passed": { name: "pounds passed", because: () => ["A weight in pounds, read as kilograms, more than doubles every dose that is made from it. Weights are written in kilograms only."] },
        "unit-missing-passed": { name: "a limit without its unit passed", because: () => ["Never more than so much of what: millilitres, or milligrams for each kilogram? What is not written will be filled in by somebody."] },
        "date-missing-passed": { name: "a weight without its date passed", because: () => ["A child’s weight of last year is another weight. Without a date nobody knows how old it is."] },
        "route-missing-passed": { name: "an order without its route passed", because: () => ["By mouth or into a vein is not written. The next reader will choose, and will not tell you."] },
        "length-flagged": { name: "a length flagged", because: () => ["The zero at the end of a length says how finely it was read: right for a length. The rule against it is a rule for doses."] },
      },
      working: () => ["Digits of a dose: no zero at the end behind a point, always one before it.", "Units: mg, mL, micrograms in full, kg.", "Beside the dose: route, and for a weight its date. Common practice, no source."],
      right: () => ["Every line that another reader could take for a different amount was found, and the length with its zero was left alone."],
      off: () => ["Read each line three times: the digits, the unit, and what is missing. A zero behind the point is unsafe in a dose and right in a length."],
      moves: () => ["The same digits are safe in one place and unsafe in another: 12.0 is right for a length in mm and wrong for a dose in mg."],
      turns: () => ["A line is safe where nobody can make another amount of it, and where route, unit and date stand in it."],
    },
  },
};
