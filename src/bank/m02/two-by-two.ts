import { twoByTwo } from "../../engine/evidence/two-by-two.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import { answerText, given, HOSPITALS, PERCENT } from "../m01/common.ts";
import { askShare, TEST_SAYS, TESTS, testOf } from "./test-words.ts";

const CELL = { unit: "pieces", step: 1 } as const;

type Shares = { readonly sensitivityPercent: number; readonly specificityPercent: number; readonly ppvPercent: number; readonly npvPercent: number };

const cells = (givens: Givens) => ({ tp: given(givens, "tp"), fp: given(givens, "fp"), fn: given(givens, "fn"), tn: given(givens, "tn") });

const sharesOf = (givens: Givens): Shares => {
  const four = cells(givens);
  if (!Object.values(four).every((count) => Number.isInteger(count))) return { sensitivityPercent: Number.NaN, specificityPercent: Number.NaN, ppvPercent: Number.NaN, npvPercent: Number.NaN };
  const { sensitivity, specificity, ppv, npv } = twoByTwo(four);
  const percent = (share: number | null): number => PERCENT * (share ?? 0);
  return { sensitivityPercent: percent(sensitivity), specificityPercent: percent(specificity), ppvPercent: percent(ppv), npvPercent: percent(npv) };
};

const total = (givens: Givens): number => Object.values(cells(givens)).reduce((sum, count) => sum + count, 0);

/** 02a: sensitivity, specificity and both predictive values from four counts. */
export const twoByTwoTable: SumFamily = {
  kind: "sum",
  id: "two-by-two",
  code: "02a",
  module: "M02",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m02-accuracy"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [
    { key: "tp", ...CELL, least: 20, greatest: 60 },
    { key: "fp", ...CELL, least: 2, greatest: 20 },
    { key: "fn", ...CELL, least: 2, greatest: 12 },
    { key: "tn", ...CELL, least: 30, greatest: 90 },
  ],
  asks: ["sensitivityPercent", "specificityPercent", "ppvPercent", "npvPercent"].map(askShare),
  draw: (chance) => ({
    givens: {
      tp: chance.onGrid({ least: 20, greatest: 60, step: 1 }),
      fp: chance.onGrid({ least: 2, greatest: 20, step: 1 }),
      fn: chance.onGrid({ least: 2, greatest: 12, step: 1 }),
      tn: chance.onGrid({ least: 30, greatest: 90, step: 1 }),
    },
    about: { hospital: chance.pick(HOSPITALS), test: chance.pick(TESTS), meniscus: chance.pick(["medial", "lateral"]) },
  }),
  solve: (givens) => sharesOf(givens),
  slips: [
    {
      id: "rows-for-columns",
      gives: ({ givens }) => {
        const { sensitivityPercent, specificityPercent, ppvPercent, npvPercent } = sharesOf(givens);
        return { sensitivityPercent: ppvPercent, specificityPercent: npvPercent, ppvPercent: sensitivityPercent, npvPercent: specificityPercent };
      },
    },
    {
      id: "out-of-everybody",
      gives: ({ givens }) => {
        const positive = (PERCENT * given(givens, "tp")) / total(givens);
        const negative = (PERCENT * given(givens, "tn")) / total(givens);
        return { sensitivityPercent: positive, specificityPercent: negative, ppvPercent: positive, npvPercent: negative };
      },
    },
    {
      id: "missed-for-false-alarms",
      gives: ({ givens }) => {
        const { ppvPercent, npvPercent } = sharesOf(givens);
        return { ...sharesOf(givens), specificityPercent: PERCENT - npvPercent, ppvPercent, npvPercent: PERCENT - sharesOf(givens).specificityPercent };
      },
    },
  ],
  words: {
    en: {
      title: "Four counts",
      stems: [
        (say) => [`At ${say.about("hospital")} a year of children had ${testOf(say)} of the ${say.about("meniscus")} meniscus and then an arthroscopy. The counts of this invented year are below.`],
        (say) => [`Every child in this invented series from ${say.about("hospital")} had ${testOf(say)} first and an arthroscopy after it; the ${say.about("meniscus")} meniscus was judged both times.`],
        (say) => [`${say.about("hospital")} sets ${testOf(say)} beside what was found at arthroscopy, for the ${say.about("meniscus")} meniscus. The year is invented; the counts are whole.`],
      ],
      question: "What are sensitivity, specificity and the two predictive values? In per cent, to one decimal.",
      givens: { tp: "Torn, and called torn", fp: "Whole, but called torn", fn: "Torn, but called whole", tn: "Whole, and called whole" },
      asks: { sensitivityPercent: "Sensitivity", specificityPercent: "Specificity", ppvPercent: "Positive predictive value", npvPercent: "Negative predictive value" },
      says: TEST_SAYS,
      slips: {
        "rows-for-columns": { name: "rows for columns", because: () => ["Sensitivity starts from the torn menisci, a predictive value from what the test called torn. You started each from the other’s group."] },
        "out-of-everybody": { name: "out of everybody", because: () => ["Each of the four has its own group below the line: the torn, the whole, the called torn, the called whole. Nobody divides by all children."] },
        "missed-for-false-alarms": { name: "missed tears mixed with false alarms", because: () => ["A missed tear is torn; a false alarm is whole. Exchanged, they turn specificity and the negative predictive value upside down."] },
      },
      working: (say) => [
        `Sensitivity: ${say.bare("tp")} ÷ (${say.bare("tp")} + ${say.bare("fn")}) = ${answerText(say, "sensitivityPercent", { places: 1, unit: "%" })}`,
        `Specificity: ${say.bare("tn")} ÷ (${say.bare("tn")} + ${say.bare("fp")}) = ${answerText(say, "specificityPercent", { places: 1, unit: "%" })}`,
        `Positive predictive value: ${say.bare("tp")} ÷ (${say.bare("tp")} + ${say.bare("fp")}) = ${answerText(say, "ppvPercent", { places: 1, unit: "%" })}`,
        `Negative predictive value: ${say.bare("tn")} ÷ (${say.bare("tn")} + ${say.bare("fn")}) = ${answerText(say, "npvPercent", { places: 1, unit: "%" })}`,
      ],
      right: () => ["Sensitivity and specificity belong to the test. The predictive values belong to this list of children, and change with how many of them were torn."],
      off: () => ["Write the table: torn and whole above, called torn and called whole at the side. Sensitivity and specificity go down a column, predictive values along a row."],
      inverse: () => [],
      turns: () => ["Double the two counts of whole menisci: sensitivity and specificity stay, the positive predictive value falls."],
    },
  },
};
