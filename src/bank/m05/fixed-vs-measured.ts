import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { cuff } from "../../facts/cuff.ts";
import { answerIn, given, HOSPITALS, measure } from "./theatre-words.ts";

const STUDY = { fixedMmHg: "cuff-trial.fixed@1", measuredMmHg: "cuff-trial.measured@1" } as const;
const FIXED = { key: "fixedMmHg", unit: "mmHg", least: 200, greatest: 300, step: 1 } as const;
const MEASURED = { key: "measuredMmHg", unit: "mmHg", least: 120, greatest: 240, step: 1 } as const;
const HUNDRED = 100;
const LEAST_DROP_MMHG = 40;

const shareOf = (givens: Givens): number => (HUNDRED * (given(givens, "fixedMmHg") - given(givens, "measuredMmHg"))) / given(givens, "fixedMmHg");
const answer = (say: Say): string => measure(answerIn(say, "reductionPercent"), "%", 1);
const drop = (say: Say): string => say.number(say.value("fixedMmHg") - say.value("measuredMmHg"), 0);
const isStudy = (say: Say): boolean => say.about("basis") === "study";
const twoChanges = (say: Say): string => (isStudy(say) ? "One group had the pressure measured and a wide contoured cuff, the other a fixed pressure and the usual cuff." : "At the same time the unit had bought wider cuffs.");
const credit = (say: Say): string => isStudy(say) ? "It cannot be credited to the measuring alone: the cuff was changed with it. The quality of the field was not found to differ, and the trial stopped early; that is absence of proof, not proof of no difference." : "It cannot be credited to the measuring alone: the cuffs were changed with it.";

/** 05f: by what share a measured pressure lies below a fixed one, and what that does not show. */
export const fixedVsMeasured: SumFamily = {
  kind: "sum",
  id: "fixed-vs-measured",
  code: "05f",
  module: "M05",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m05-pressure"],
  reads: [STUDY.fixedMmHg, STUDY.measuredMmHg],
  sources: Object.values(STUDY).map((entry) => ({ source: "reilly-2009", entry })),
  cautions: ["C15"],
  givens: [FIXED, MEASURED],
  asks: [{ id: "reductionPercent", unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const hospital = chance.pick(HOSPITALS);
    if (chance.happens(1, 8)) {
      return {
        givens: { fixedMmHg: cuff(STUDY.fixedMmHg).number.value ?? 0, measuredMmHg: cuff(STUDY.measuredMmHg).number.value ?? 0 },
        about: { basis: "study", hospital },
        origins: { fixedMmHg: { from: "study", entry: STUDY.fixedMmHg }, measuredMmHg: { from: "study", entry: STUDY.measuredMmHg } },
      };
    }
    const fixedMmHg = chance.pick([225, 250, 275, 300]);
    return { givens: { fixedMmHg, measuredMmHg: chance.onGrid({ ...MEASURED, greatest: Math.min(MEASURED.greatest, fixedMmHg - LEAST_DROP_MMHG) }) }, about: { basis: "audit", hospital }, sources: [] };
  },
  solve: (givens) => ({ reductionPercent: shareOf(givens) }),
  slips: [
    { id: "divided-by-the-measured", gives: ({ givens }) => ({ reductionPercent: (HUNDRED * (given(givens, "fixedMmHg") - given(givens, "measuredMmHg"))) / given(givens, "measuredMmHg") }) },
    { id: "what-is-left", gives: ({ givens }) => ({ reductionPercent: (HUNDRED * given(givens, "measuredMmHg")) / given(givens, "fixedMmHg") }) },
    { id: "difference-as-a-share", gives: ({ givens }) => ({ reductionPercent: given(givens, "fixedMmHg") - given(givens, "measuredMmHg") }) },
  ],
  inverseOf: "measuredMmHg",
  words: {
    en: {
      title: "Fixed or measured",
      stems: [
        (say) => [isStudy(say) ? `A trial in children of 10–17 compared two ways to set the cuff. ${twoChanges(say)}` : `${say.about("hospital")} hospital looks back on a year with a fixed pressure and a year with measured ones. ${twoChanges(say)}`],
        (say) => [isStudy(say) ? `Two groups of children of 10–17 years, two mean settings. ${twoChanges(say)}` : `An audit of ${say.about("hospital")} hospital prints two mean settings: before, the same pressure for every child, and after, measured pressure plus margin. ${twoChanges(say)}`],
        (say) => [`“Measuring alone has brought the pressure down,” says a colleague and shows two means. ${twoChanges(say)}`],
      ],
      question: "By how much is the second mean lower than the first? In per cent of the first, to the nearest tenth.",
      givens: { fixedMmHg: "Mean setting, fixed", measuredMmHg: "Mean setting, measured" },
      asks: { reductionPercent: "Lower by" },
      says: { none: "It is not lower", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "divided-by-the-measured": { name: "divided by the measured one", because: (say) => [`Lower than the first means in per cent of the first, ${say.of("fixedMmHg")}.`] },
        "what-is-left": { name: "what is left", because: () => ["That is the share that remained. The question asks for the share that went."] },
        "difference-as-a-share": { name: "difference taken for a share", because: (say) => [`${drop(say)} are mmHg. As a share they are set against ${say.of("fixedMmHg")}.`] },
      },
      working: (say) => [`Difference: ${say.bare("fixedMmHg")} − ${say.bare("measuredMmHg")} = ${drop(say)} mmHg`, `100 × ${drop(say)} ÷ ${say.bare("fixedMmHg")} = ${answer(say)}`],
      right: (say) => [`Lower by ${answer(say)}. ${credit(say)}`],
      off: (say) => [`The difference over the first mean, in per cent. ${credit(say)}`],
      inverse: (say, { text }) => [`If the second mean were ${text}. It is ${say.of("measuredMmHg")}.`],
    },
  },
};
