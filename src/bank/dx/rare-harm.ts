import { zeroEventsUpper } from "../../engine/evidence/zero-events-upper.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import { answerText, given, HOSPITALS, PERCENT } from "../m01/common.ts";

const CASES = { key: "cases", unit: "pieces", least: 15, greatest: 200, step: 1 } as const;

const solved = (givens: Givens): Solution => {
  const cases = given(givens, "cases");
  return cases >= 1 ? { upperPercent: PERCENT * zeroEventsUpper({ total: Math.round(cases) }).ruleOfThree } : { upperPercent: (PERCENT * 3) / cases };
};
const upper = { places: 1, unit: "%" } as const;

/** D9, here 15i: how large a risk may be where none was seen. */
export const rareHarm: SumFamily = {
  kind: "sum",
  id: "rare-harm",
  code: "15i",
  module: "DX",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["dx-small"],
  reads: [],
  sources: [],
  cautions: ["C12"],
  givens: [CASES],
  asks: [{ id: "upperPercent", unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({ givens: { cases: chance.onGrid(CASES) }, about: { hospital: chance.pick(HOSPITALS), harm: chance.pick(["numb foot", "injured vessel", "joint infection", "needle left behind"]), span: chance.pick(["two years", "three years", "five years"]) } }),
  solve: solved,
  slips: [
    { id: "none-seen-none-there", gives: () => ({ upperPercent: 0 }) },
    { id: "one-over-n", gives: ({ givens }) => ({ upperPercent: PERCENT / given(givens, "cases") }) },
    { id: "share-for-per-cent", gives: ({ givens }) => ({ upperPercent: 3 / given(givens, "cases") }) },
    { id: "called-untellable", gives: () => ({ says: "cannot-be-told" }) },
  ],
  words: {
    en: {
      title: "None seen is not none",
      stems: [
        (say) => [`In ${say.about("span")} the unit at ${say.about("hospital")} counted no ${say.about("harm")} in all of its operations. The report wants to call the operation safe.`],
        (say) => [`“Not one ${say.about("harm")} in ${say.about("span")}”, says ${say.about("hospital")}. What can be said of the risk, at 95 %, by the rule of three?`],
        (say) => [`Small numbers are kind. ${say.about("hospital")}: no ${say.about("harm")} in ${say.about("span")}. Use the rule of three before anybody writes safe.`],
      ],
      question: "How large may the risk still be, by the rule of three? In per cent, to one decimal.",
      givens: { cases: "Operations, none with this harm" },
      asks: { upperPercent: "Risk, at most" },
      says: { none: "There is no risk", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "none-seen-none-there": { name: "none seen, none there", because: (say) => [`${say.bare("cases")} operations without harm do not make the risk nothing. A harm that is rarer than one in so many will often not show in them.`] },
        "one-over-n": { name: "one over the number", because: () => ["One over the number is no upper end: harms that frequent are missed in more than a third of such series. Three over the number is the rule."] },
        "share-for-per-cent": { name: "share written as per cent", because: () => ["Three over the number is a share. In per cent it is a hundred times that."] },
        "called-untellable": { name: "given up too early", because: () => ["No harm seen still tells how large the risk may be at most."] },
      },
      working: (say) => [`3 ÷ ${say.bare("cases")} = ${answerText(say, "upperPercent", upper)} (Hanley and Lippman-Hand 1983)`],
      right: (say) => [`Up to ${answerText(say, "upperPercent", upper)} fits with having seen none. It may not be called safe, and units of this size cannot be ranked by it.`],
      off: () => ["Three divided by the number of operations, in per cent: the upper end at 95 % where none was seen."],
      inverse: () => [],
      turns: () => ["Ten times as many operations without harm, and the upper end is a tenth."],
    },
  },
};
