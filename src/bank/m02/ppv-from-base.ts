import { predictiveValues } from "../../engine/evidence/predictive-values.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { testAccuracy } from "../../facts/test-accuracy.ts";
import { answerText, given, HOSPITALS, PERCENT, withPlaces } from "../m01/common.ts";
import { askShare, PAIR_IDS, PAIRS, type Pair, readsOf, sourcesOf, TEST_SAYS } from "./test-words.ts";

const SENSITIVITY = { key: "sensitivityPercent", unit: "%", least: 50, greatest: 98, step: 0.1 } as const;
const SPECIFICITY = { key: "specificityPercent", unit: "%", least: 60, greatest: 98, step: 0.1 } as const;
const BASE = { key: "basePercent", unit: "%", least: 2, greatest: 60, step: 1 } as const;

const QUANTITIES = ["sensitivity", "specificity"] as const;

const shares = (givens: Givens) => ({
  sensitivity: given(givens, "sensitivityPercent") / PERCENT,
  specificity: given(givens, "specificityPercent") / PERCENT,
  baseRate: given(givens, "basePercent") / PERCENT,
});

const valuesOf = (givens: Givens, baseRate = shares(givens).baseRate): Solution => {
  const { sensitivity, specificity } = shares(givens);
  if (![sensitivity, specificity, baseRate].every((share) => share > 0 && share < 1)) return { says: "none" };
  const { ppv, npv } = predictiveValues({ sensitivity, specificity, baseRate });
  return { ppvPercent: PERCENT * (ppv ?? 0), npvPercent: PERCENT * (npv ?? 0) };
};

const isPublished = (say: Say): boolean => say.about("pair") !== "own";
const testIs = (say: Say): string => (isPublished(say) ? `${PAIRS[say.about("pair") as Pair]} in children, as one paper printed it` : `a scan of the meniscus, as counted at ${say.about("hospital")}`);
/** What a thousand children become, in words that can be checked by hand. */
const perThousand = (say: Say): readonly string[] => {
  const torn = 1000 * (say.value("basePercent") / PERCENT);
  const whole = 1000 - torn;
  const found = torn * (say.value("sensitivityPercent") / PERCENT);
  const alarms = whole * (1 - say.value("specificityPercent") / PERCENT);
  return [
    `Of 1000 children ${say.number(torn, 0)} have a tear and ${say.number(whole, 0)} have none.`,
    `Positive: ${say.number(found)} with a tear and ${say.number(alarms)} without, so ${answerText(say, "ppvPercent", { places: 1, unit: "%" })} of the positive have one.`,
    `Negative: ${say.number(whole - alarms)} without a tear and ${say.number(torn - found)} with one, so ${answerText(say, "npvPercent", { places: 1, unit: "%" })} of the negative have none.`,
  ];
};

/** 02b: predictive values at a base rate. */
export const ppvFromBase: SumFamily = {
  kind: "sum",
  id: "ppv-from-base",
  code: "02b",
  module: "M02",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m02-accuracy"],
  reads: [...readsOf("sensitivity"), ...readsOf("specificity")],
  sources: sourcesOf(PAIR_IDS, QUANTITIES),
  cautions: [],
  givens: [SENSITIVITY, SPECIFICITY, BASE],
  asks: ["ppvPercent", "npvPercent"].map(askShare),
  draw: (chance) => {
    const pair = chance.happens(1, 2) ? chance.pick(PAIR_IDS) : "own";
    const about = { pair, hospital: chance.pick(HOSPITALS) };
    const basePercent = chance.onGrid(BASE);
    if (pair === "own") return { givens: { sensitivityPercent: chance.onGrid(SENSITIVITY), specificityPercent: chance.onGrid(SPECIFICITY), basePercent }, about, sources: [] };
    const [sensitivity, specificity] = [`sensitivity.${pair}@1`, `specificity.${pair}@1`];
    return {
      givens: { sensitivityPercent: testAccuracy(sensitivity).number.value ?? 0, specificityPercent: testAccuracy(specificity).number.value ?? 0, basePercent },
      about,
      sources: sourcesOf([pair], QUANTITIES),
      origins: { sensitivityPercent: { from: "study", entry: sensitivity }, specificityPercent: { from: "study", entry: specificity } },
    };
  },
  solve: (givens) => valuesOf(givens),
  slips: [
    { id: "the-test-for-the-child", gives: ({ givens }) => ({ ppvPercent: given(givens, "sensitivityPercent"), npvPercent: given(givens, "specificityPercent") }) },
    { id: "base-rate-left-out", gives: ({ givens }) => (given(givens, "basePercent") * 2 === PERCENT ? null : valuesOf(givens, 1 / 2)) },
    {
      id: "share-of-everybody",
      gives: ({ givens }) => {
        const { sensitivity, specificity, baseRate } = shares(givens);
        return { ppvPercent: PERCENT * sensitivity * baseRate, npvPercent: PERCENT * specificity * (1 - baseRate) };
      },
    },
    {
      id: "specificity-for-false-alarms",
      gives: ({ givens }) => {
        const { sensitivity, specificity, baseRate } = shares(givens);
        const found = sensitivity * baseRate;
        return { ...(valuesOf(givens) as Record<string, number>), ppvPercent: (PERCENT * found) / (found + specificity * (1 - baseRate)) };
      },
    },
  ],
  words: {
    en: {
      title: "What a positive test means here",
      stems: [
        (say) => [`The test: ${testIs(say)}. In the children who come to your clinic the base rate is the one below.`],
        (say) => [`A test is good or bad by itself; what its answer means depends on who is tested. Take ${testIs(say)}, and the base rate of your own clinic.`],
        (say) => [`A colleague at ${say.about("hospital")} asks what a positive and a negative answer are worth in the clinic there. The test: ${testIs(say)}.`],
      ],
      question: "What are the positive and the negative predictive value at this base rate? In per cent, to one decimal.",
      givens: { sensitivityPercent: (say) => `Sensitivity${isPublished(say) ? ", published" : ""}`, specificityPercent: (say) => `Specificity${isPublished(say) ? ", published" : ""}`, basePercent: "Base rate in this clinic" },
      asks: { ppvPercent: "Positive predictive value", npvPercent: "Negative predictive value" },
      says: TEST_SAYS,
      slips: {
        "the-test-for-the-child": { name: "the test taken for the child", because: (say) => [`${say.of("sensitivityPercent")} of those with a tear test positive. That does not say how many of the positive have a tear; the base rate decides it.`] },
        "base-rate-left-out": { name: "base rate left out", because: (say) => [`You worked as if every second child had a tear. Here it is ${say.of("basePercent")}.`] },
        "share-of-everybody": { name: "share of everybody", because: () => ["Those are shares of all children: with a tear and positive, without one and negative. A predictive value is a share of the positive alone, or of the negative alone."] },
        "specificity-for-false-alarms": { name: "specificity for false alarms", because: (say) => [`${say.of("specificityPercent")} of those without a tear test negative. The false alarms are the rest, ${withPlaces(PERCENT - say.value("specificityPercent"), 1, "%")}.`] },
      },
      working: perThousand,
      right: (say) => [`At a base rate of ${say.of("basePercent")}, ${answerText(say, "ppvPercent", { places: 1, unit: "%" })} of the positive have a tear and ${answerText(say, "npvPercent", { places: 1, unit: "%" })} of the negative have none. Another clinic, another answer, the same test.`],
      off: () => ["Take 1000 children. Split them by the base rate, then each group by what the test calls it, and read along the rows."],
      inverse: (say, { text }) => [`If the base rate were ${text}. Here it is ${say.of("basePercent")}.`],
    },
  },
  inverseOf: "basePercent",
};
