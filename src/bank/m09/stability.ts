import { compareOnGrid } from "../../engine/quantity/grid.ts";
import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { tear } from "../../facts/tear.ts";
import { CHILDREN, given, SIDES } from "../m01/common.ts";

const SHIFT = { key: "shiftMm", unit: "mm", least: 0.5, greatest: 8, step: 0.5 } as const;
const SHEET = { key: "sheetMm", unit: "mm", least: 2, greatest: 5, step: 1 } as const;
const FLIPPED_MM = 6;
const REMEMBERED = "leave-shift.adult@1";
const MEMORY_MM = tear(REMEMBERED).number.value ?? 0;

type About = Draw["about"];
type Picks = Readonly<Record<string, string>>;

/** Stable by a threshold: below it, and not to be brought out of place. */
const stableBy = (givens: Givens, about: About, thresholdMm: number): boolean => given(givens, "shiftMm") < thresholdMm && about["displaces"] === "stays";
const isExtra = (about: About): boolean => about["meniscus"] === "medial" || about["ligament"] === "reconstructed";
/** The sheet of the stem as a table: what displaces and cannot be brought back is not decided at the table alone. */
const picksFor = (stable: boolean, about: About): Picks => {
  if (!stable) return { stable: "unstable", plan: about["displaces"] === "locked" ? "ask" : "repair" };
  return { stable: "stable", plan: isExtra(about) ? "repair-although" : "leave" };
};
const truth = ({ givens, about }: Draw): Picks => picksFor(stableBy(givens, about, given(givens, "sheetMm")), about);

const DISPLACES: Readonly<Record<string, string>> = { stays: "It stays in place when the probe pulls", flips: "The probe brings it out of place and back", locked: "It has flipped into the notch and does not go back" };
const finding = (say: Say): string => `${DISPLACES[say.about("displaces")] ?? ""}; the ligament ${say.about("ligament") === "reconstructed" ? "is being reconstructed in the same operation" : "is whole"}.`;
const SHEET_TEXT = "Your hospital’s sheet for children: stable is what shifts less than its threshold and stays in place. Stable tears are left, except on the medial side or beside a reconstruction: those are repaired although stable. Unstable tears are repaired; what cannot be brought back is first discussed with the senior surgeon.";

/** 09i: stable or not, and what the local sheet does with it. */
export const stability: NameFamily = {
  kind: "name",
  id: "stability",
  code: "09i",
  module: "M09",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m09-plan"],
  reads: [REMEMBERED],
  sources: [{ source: "leave-table", entry: REMEMBERED }],
  cautions: ["C3", "C9"],
  givens: [SHIFT, SHEET],
  attributes: [
    { id: "stable", options: ["stable", "unstable"] },
    { id: "plan", options: ["leave", "repair-although", "repair", "ask"] },
  ],
  draw: (chance) => {
    const sheetMm = chance.onGrid(SHEET);
    const displaces = chance.pick(["stays", "stays", "stays", "flips", "locked"]);
    // What has flipped into the notch has shifted far.
    const isLittle = displaces !== "locked" && chance.happens(3, 5);
    const drawn = chance.onGrid({ ...SHIFT, least: displaces === "locked" ? FLIPPED_MM : SHIFT.least, greatest: isLittle ? sheetMm - SHIFT.step : SHIFT.greatest });
    // A shift that is exactly the threshold is an argument, not a question.
    const shiftMm = compareOnGrid(drawn, sheetMm) === 0 ? drawn - SHIFT.step : drawn;
    return {
      givens: { shiftMm, sheetMm },
      about: { child: chance.pick(CHILDREN), age: chance.pick(["10", "12", "13", "15"]), side: chance.pick(SIDES), meniscus: chance.pick(["medial", "lateral"]), ligament: chance.pick(["whole", "reconstructed"]), displaces },
      origins: { sheetMm: { from: "local" } },
    };
  },
  truth,
  slips: [
    {
      id: "threshold-from-memory",
      gives: (draw) => {
        const byMemory = stableBy(draw.givens, draw.about, MEMORY_MM);
        return byMemory === (truth(draw)["stable"] === "stable") ? null : picksFor(byMemory, draw.about);
      },
    },
    { id: "moving-one-left", gives: (draw) => (truth(draw)["stable"] === "unstable" ? { ...truth(draw), plan: "leave" } : null) },
    { id: "adult-rule-on-a-child", gives: (draw) => (truth(draw)["plan"] === "repair-although" ? { ...truth(draw), plan: "leave" } : null) },
    { id: "every-tear-repaired", gives: (draw) => (truth(draw)["plan"] === "leave" ? { ...truth(draw), plan: "repair" } : null) },
    { id: "flipped-one-not-discussed", gives: (draw) => (truth(draw)["plan"] === "ask" ? { ...truth(draw), plan: "repair" } : null) },
    { id: "small-shift-enough", gives: (draw) => (draw.about["displaces"] !== "stays" && given(draw.givens, "shiftMm") < given(draw.givens, "sheetMm") ? picksFor(true, draw.about) : null) },
    { id: "asked-without-need", gives: (draw) => (truth(draw)["plan"] === "ask" ? null : { ...truth(draw), plan: "ask" }) },
  ],
  words: {
    en: {
      title: "Leave, repair, ask",
      stems: [
        (say) => [SHEET_TEXT, `${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee, longitudinal tear of the ${say.about("meniscus")} meniscus. ${finding(say)}`],
        (say) => [`${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee, longitudinal tear of the ${say.about("meniscus")} meniscus. ${finding(say)}`, SHEET_TEXT],
        (say) => [`A printed rule for adults leaves more tears than many leave in children, and it is disputed. ${SHEET_TEXT}`, `${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee, ${say.about("meniscus")} meniscus, longitudinal tear. ${finding(say)}`],
      ],
      question: "Is the tear stable by this sheet, and what does the sheet do with it?",
      givens: { shiftMm: "Shift by the probe", sheetMm: "Threshold, your hospital’s sheet" },
      attributes: { stable: "By the sheet", plan: "Plan" },
      options: { stable: "Stable", unstable: "Unstable", leave: "Leave", "repair-although": "Repair, although stable", repair: "Repair, as it is unstable", ask: "Discuss with the senior surgeon first" },
      slips: {
        "threshold-from-memory": { name: "threshold from memory", because: (say) => [`The number in your head comes from adults. The sheet here says ${say.of("sheetMm")}.`] },
        "moving-one-left": { name: "a moving tear left", because: () => ["A tear that shifts or displaces is not left by this sheet. It will move again when the child does."] },
        "adult-rule-on-a-child": { name: "the adult rule on a child", because: () => ["Stable and left is the adult habit. This sheet repairs medial tears and those beside a reconstruction all the same."] },
        "every-tear-repaired": { name: "every tear repaired", because: () => ["Stable, lateral, ligament whole: this sheet leaves it. A repair has its own price."] },
        "flipped-one-not-discussed": { name: "flipped one not discussed", because: () => ["It does not go back. The sheet wants the senior surgeon asked before anything is stitched."] },
        "small-shift-enough": { name: "small shift taken as enough", because: () => ["It shifts little and still leaves its place. Stable needs both: below the threshold and in place."] },
        "asked-without-need": { name: "asked where the sheet answers", because: () => ["Asking is never wrong in a theatre. Here the sheet answers, and the question was what the sheet says."] },
      },
      working: (say) => [`${say.of("shiftMm")} against ${say.of("sheetMm")}, and: ${(DISPLACES[say.about("displaces")] ?? "").toLowerCase()}.`, "Then side and ligament, as the sheet says."],
      right: () => ["By this sheet. Where the threshold or the exceptions differ, so does the plan; that is why the sheet is read and not remembered."],
      off: () => ["First stable or not: threshold and place. Then the exceptions of the sheet: side, ligament, and what cannot be brought back."],
      moves: (say) => [`With a threshold of ${say.value("shiftMm") < say.value("sheetMm") ? "less" : "more"} than ${say.of("shiftMm")} the first answer would ${say.about("displaces") === "stays" ? "turn" : "stay, as it displaces"}.`],
    },
  },
};
