import { baseRateBehind } from "../../engine/evidence/base-rate-behind.ts";
import { predictiveValues } from "../../engine/evidence/predictive-values.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { testAccuracy } from "../../facts/test-accuracy.ts";
import { answerText, given, HOSPITALS, PERCENT } from "../m01/common.ts";
import { askShare, PAIR_IDS, PAIRS, type Pair, readsOf, sourcesOf } from "./test-words.ts";

const SENSITIVITY = { key: "sensitivityPercent", unit: "%", least: 60, greatest: 96, step: 0.1 } as const;
const SPECIFICITY = { key: "specificityPercent", unit: "%", least: 70, greatest: 95, step: 0.1 } as const;
const PPV = { key: "ppvPercent", unit: "%", least: 5, greatest: 95, step: 0.1 } as const;

const QUANTITIES = ["sensitivity", "specificity", "ppv"] as const;

const share = (givens: Givens, key: string): number => given(givens, key) / PERCENT;

const baseOf = (givens: Givens, specificity = share(givens, "specificityPercent")): Solution => {
  const [sensitivity, ppv] = [share(givens, "sensitivityPercent"), share(givens, "ppvPercent")];
  if (![sensitivity, specificity, ppv].every((one) => one > 0 && one < 1)) return { says: "none" };
  return { basePercent: PERCENT * baseRateBehind({ sensitivity, specificity, ppv }) };
};

const base = (givens: Givens): number => (baseOf(givens) as Record<string, number>)["basePercent"] ?? 0;
const source = (say: Say): string => (say.about("pair") === "own" ? `An invented report from ${say.about("hospital")} prints a scan of the meniscus` : `A paper about children prints ${PAIRS[say.about("pair") as Pair]}`);

/** 02e: the base rate that a printed predictive value was worked out with. */
export const hiddenBase: SumFamily = {
  kind: "sum",
  id: "hidden-base",
  code: "02e",
  module: "M02",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m02-base"],
  reads: [...readsOf("sensitivity"), ...readsOf("specificity"), ...readsOf("ppv")],
  sources: sourcesOf(PAIR_IDS, QUANTITIES),
  cautions: [],
  givens: [SENSITIVITY, SPECIFICITY, PPV],
  asks: [askShare("basePercent")],
  draw: (chance) => {
    const pair = chance.happens(1, 3) ? chance.pick(PAIR_IDS) : "own";
    const about = { pair, hospital: chance.pick(HOSPITALS) };
    if (pair === "own") {
      const [sensitivityPercent, specificityPercent] = [chance.onGrid(SENSITIVITY), chance.onGrid(SPECIFICITY)];
      const baseRate = chance.pick([5, 8, 10, 12, 15, 20, 25, 30, 40]) / PERCENT;
      const { ppv } = predictiveValues({ sensitivity: sensitivityPercent / PERCENT, specificity: specificityPercent / PERCENT, baseRate });
      return { givens: { sensitivityPercent, specificityPercent, ppvPercent: Number((PERCENT * (ppv ?? 0)).toFixed(1)) }, about, sources: [] };
    }
    const pin = (quantity: string): string => `${quantity}.${pair}@1`;
    const value = (quantity: string): number => testAccuracy(pin(quantity)).number.value ?? 0;
    const from = (quantity: string) => ({ from: "study" as const, entry: pin(quantity) });
    return {
      givens: { sensitivityPercent: value("sensitivity"), specificityPercent: value("specificity"), ppvPercent: value("ppv") },
      about,
      sources: sourcesOf([pair], QUANTITIES),
      origins: { sensitivityPercent: from("sensitivity"), specificityPercent: from("specificity"), ppvPercent: from("ppv") },
    };
  },
  solve: (givens) => baseOf(givens),
  slips: [
    { id: "given-up", gives: () => ({ says: "cannot-be-told" }) },
    { id: "value-for-base", gives: ({ givens }) => ({ basePercent: given(givens, "ppvPercent") }) },
    { id: "odds-for-share", gives: ({ givens }) => ({ basePercent: (PERCENT * base(givens)) / (PERCENT - base(givens)) }) },
    { id: "specificity-for-false-alarms", gives: ({ givens }) => baseOf(givens, 1 - share(givens, "specificityPercent")) },
  ],
  words: {
    en: {
      title: "The base rate behind the print",
      stems: [
        (say) => [`${source(say)}: sensitivity, specificity and positive predictive value, each to one decimal. The base rate is not printed.`],
        (say) => [`${source(say)}. Three numbers stand in the table and a fourth was needed to work one of them out.`],
        (say) => [`A predictive value always hides a base rate. ${source(say)}, with the three numbers below.`],
      ],
      question: "With which base rate was the predictive value worked out? In per cent, to one decimal.",
      givens: { sensitivityPercent: "Sensitivity, as printed", specificityPercent: "Specificity, as printed", ppvPercent: "Positive predictive value, as printed" },
      asks: { basePercent: "Base rate" },
      says: { none: "No base rate fits", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "given-up": { name: "given up too early", because: () => ["Three of the four numbers settle the fourth, up to the rounding of the print. That is what makes a hidden base rate visible."] },
        "value-for-base": { name: "predictive value taken for the base rate", because: (say) => [`${say.of("ppvPercent")} is the share with a tear after a positive test. The base rate is the share before any test, and is lower wherever the test helps.`] },
        "odds-for-share": { name: "odds left as they are", because: () => ["Those are the odds, with a tear to without. As a share of all children it is less: odds ÷ (1 + odds)."] },
        "specificity-for-false-alarms": { name: "specificity for false alarms", because: () => ["The false alarms come from the rest of the specificity, what is missing to a hundred."] },
      },
      working: (say) => {
        const [odds, ratio] = [say.value("ppvPercent") / (PERCENT - say.value("ppvPercent")), say.value("sensitivityPercent") / (PERCENT - say.value("specificityPercent"))];
        return [
          `Odds after a positive test: ${say.bare("ppvPercent")} ÷ (100 − ${say.bare("ppvPercent")}) = ${say.number(odds, 3)}`,
          `Likelihood ratio: ${say.bare("sensitivityPercent")} ÷ (100 − ${say.bare("specificityPercent")}) = ${say.number(ratio, 2)}`,
          `Odds before: ${say.number(odds, 3)} ÷ ${say.number(ratio, 2)} = ${say.number(odds / ratio, 4)}, a base rate of ${answerText(say, "basePercent", { places: 1, unit: "%" })}`,
        ];
      },
      right: (say) => [`${answerText(say, "basePercent", { places: 1, unit: "%" })}. If your own list of children has another share of tears, this predictive value is not yours.`],
      off: () => ["Turn the predictive value into odds, divide by the likelihood ratio, and turn the odds back into a share."],
      inverse: (say, { text }) => [`If the predictive value had been printed as ${text}. It is ${say.of("ppvPercent")}.`],
    },
  },
  inverseOf: "ppvPercent",
};
