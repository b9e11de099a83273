import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { percentToMgPerMl } from "../../engine/theatre/percent-to-mg-per-ml.ts";
import { answerNumber, dose, DOSE_SAYS, drawPatient, plain, strengthGiven, strengthIn, strengthLabels, strengthSpecs, whoIs } from "./dose-words.ts";

const TENFOLD = 10;
const HUNDREDFOLD = 100;

/** Strengths that a label may carry (common practice, no source): hundredths, tenths and whole per cents, each written without a zero at the end. */
const STRENGTHS = {
  bupivacaine: [0.25, 0.5, 0.75, 0.1],
  ropivacaine: [0.2, 0.5, 0.75, 1],
  levobupivacaine: [0.25, 0.5, 0.75, 0.1],
  lidocaine: [0.5, 1, 1.5, 2],
  prilocaine: [0.5, 1, 2],
} as const;
const AGENTS = ["bupivacaine", "ropivacaine", "levobupivacaine", "lidocaine", "prilocaine"] as const;
const strong = (say: Say): string => dose(answerNumber(say, "mgPerMl"), "mg/mL");
const percent = (say: Say): string => plain(answerNumber(say, "mgPerMl") / TENFOLD);

/** 12b: from per cent to milligrams in a millilitre. */
export const percentStrength: SumFamily = {
  kind: "sum",
  id: "percent",
  code: "12b",
  module: "M12",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m12-errors"],
  reads: [],
  sources: [],
  cautions: ["C2", "C4"],
  givens: strengthSpecs("strength"),
  asks: [{ id: "mgPerMl", unit: "mg/mL", roundTo: 0.1, rounding: "nearest", safeSide: "up" }],
  draw: (chance) => {
    const agent = chance.pick(AGENTS);
    return { givens: strengthGiven("strength", chance.pick<number>(STRENGTHS[agent])), about: { ...drawPatient(chance).about, vial: chance.pick(["vial", "bottle", "bag"]), agent } };
  },
  solve: (givens) => ({ mgPerMl: percentToMgPerMl({ percent: strengthIn(givens, "strength") }) }),
  slips: [
    { id: "percent-as-milligrams", gives: ({ givens }) => ({ mgPerMl: strengthIn(givens, "strength") }) },
    { id: "hundredfold", gives: ({ givens }) => ({ mgPerMl: strengthIn(givens, "strength") * HUNDREDFOLD }) },
    { id: "milligrams-in-the-bottle", gives: ({ givens }) => ({ mgPerMl: strengthIn(givens, "strength") * HUNDREDFOLD * TENFOLD }) },
  ],
  words: {
    en: {
      title: "From per cent to milligrams",
      stems: [
        (say) => [`A label gives the strength of ${say.about("agent")} in per cent, and the sheet at ${say.about("hospital")} gives its limit in milligrams. Before the two can meet, one has to be turned into the other.`],
        (say) => [`You hold a ${say.about("vial")} of ${say.about("agent")} up to the light and read it aloud. ${whoIs(say)} Your colleague asks how many milligrams each millilitre holds.`],
        (say) => [`Before the field is opened the strength of ${say.about("agent")} is written on the board in milligrams, so that everybody can see it. The ${say.about("vial")} is marked in per cent.`],
      ],
      question: "How many milligrams are in one millilitre? To the nearest tenth.",
      givens: strengthLabels("strength", (say) => `Strength of ${say.about("agent")}, mass in volume, on the label`),
      asks: { mgPerMl: "Strength" },
      says: DOSE_SAYS,
      slips: {
        "percent-as-milligrams": { name: "per cent read as milligrams", because: (say) => [`${percent(say)} is a share, not a strength in mg/mL. The solution is ten times stronger than you think, so the dose would be ten times too large.`] },
        hundredfold: { name: "ten times too strong", because: (say) => [`One hundredth of a gram in a millilitre is 10 mg, so ${percent(say)} per cent is ${strong(say)}. Read ten times too strong, the child would get a tenth.`] },
        "milligrams-in-the-bottle": { name: "milligrams in 100 mL", because: () => ["This is what a bottle of 100 mL holds. The limit is set against one millilitre after another."] },
      },
      working: (say) => [`${percent(say)} per cent: ${percent(say)} g in 100 mL, which is ${plain(answerNumber(say, "mgPerMl") * HUNDREDFOLD)} mg in 100 mL`, `${percent(say)} × 10 = ${strong(say)}`],
      right: (say) => [`${strong(say)}. One per cent is ten milligrams in a millilitre; everything else follows from that one line.`],
      off: (say) => [`Start from one per cent, which is one gram in 100 mL, so 10 mg in each mL. Then ${percent(say)} per cent is ${strong(say)}.`],
      inverse: () => [],
      turns: () => ["The number in mg/mL is always ten times the number in per cent. Where yours is not, a place has slipped."],
    },
  },
};
