import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import { answerText, answerValue, given, HOSPITALS } from "../m01/common.ts";

const JUDGE = { unit: "points", least: 10, greatest: 26, step: 0.5 } as const;
const CRITICAL = { key: "critical", unit: "pieces", least: 2, greatest: 6, step: 1 } as const;
const ORDINARY = { key: "ordinary", unit: "pieces", least: 24, greatest: 32, step: 1 } as const;
const JUDGES = ["firstPoints", "secondPoints", "thirdPoints", "fourthPoints"] as const;
const NEAR = { least: -3, greatest: 3, step: 0.5 } as const;

const sums = (givens: Givens): readonly number[] => JUDGES.map((key) => given(givens, key));
const mean = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0) / values.length;
const spread = (values: readonly number[], divisor: number): number => Math.sqrt(values.reduce((total, value) => total + (value - mean(values)) ** 2, 0) / divisor);
const solved = (givens: Givens): Readonly<Record<string, number>> => ({
  cutPoints: mean(sums(givens)),
  spreadPoints: spread(sums(givens), JUDGES.length - 1),
  mustBeRight: given(givens, "critical"),
});
const median = (values: readonly number[]): number => mean([...values].sort((one, other) => one - other).slice(1, -1));
const tenth = { places: 1, unit: "points" } as const;

/** D5, here 15e: a cut score from the judges’ estimates, with the items that must be right kept apart. */
export const cutScore: SumFamily = {
  kind: "sum",
  id: "cut-score",
  code: "15e",
  module: "DX",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["dx-cut"],
  reads: [],
  sources: [],
  cautions: ["C12"],
  givens: [...JUDGES.map((key) => ({ key, ...JUDGE })), ORDINARY, CRITICAL],
  asks: [
    { id: "cutPoints", unit: "points", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
    { id: "spreadPoints", unit: "points", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
    { id: "mustBeRight", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const middle = 14 + chance.below(9);
    const judges = Object.fromEntries(JUDGES.map((key) => [key, middle + chance.onGrid(NEAR)]));
    return { givens: { ...judges, ordinary: chance.onGrid(ORDINARY), critical: chance.onGrid(CRITICAL) }, about: { hospital: chance.pick(HOSPITALS), sheet: chance.pick(["needle depth", "doses and cuff", "counting and waste"]) } };
  },
  solve: solved,
  slips: [
    { id: "critical-averaged-away", gives: ({ givens }) => ({ ...solved(givens), cutPoints: mean(sums(givens)) + given(givens, "critical") * (mean(sums(givens)) / given(givens, "ordinary")), mustBeRight: 0 }) },
    { id: "divided-by-all-judges", gives: ({ givens }) => ({ ...solved(givens), spreadPoints: spread(sums(givens), JUDGES.length) }) },
    { id: "middle-judges-only", gives: ({ givens }) => ({ ...solved(givens), cutPoints: median(sums(givens)) }) },
    { id: "strictest-judge", gives: ({ givens }) => ({ ...solved(givens), cutPoints: Math.max(...sums(givens)) }) },
  ],
  words: {
    en: {
      title: "A cut score and what must be right",
      stems: [
        (say) => [`Four judges at ${say.about("hospital")} estimated, item by item, the chance that a borderline learner answers the sheet on ${say.about("sheet")} correctly. Their sums over the ordinary items are below. The critical items stand on a list of their own.`],
        (say) => [`A standard is a judgement, so it needs several judges and says how far they differ. Sheet on ${say.about("sheet")}, ${say.about("hospital")}: sums of the four judges’ estimates over the ordinary items, and a number of critical items.`],
        (say) => [`${say.about("hospital")} sets a standard for the sheet on ${say.about("sheet")}. Four judges summed their item estimates for a borderline learner over the ordinary items. Critical items are not averaged: whoever sits the sheet must get each of them right.`],
      ],
      question: "What is the cut score on the ordinary items (mean), how far do the judges differ (standard deviation of a sample), and how many items must be right without exception? Points to one decimal.",
      givens: { firstPoints: "First judge", secondPoints: "Second judge", thirdPoints: "Third judge", fourthPoints: "Fourth judge", ordinary: "Ordinary items", critical: "Critical items" },
      asks: { cutPoints: "Cut score", spreadPoints: "Spread of the judges", mustBeRight: "Must be right" },
      says: { none: "No cut score follows", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "critical-averaged-away": { name: "critical items averaged away", because: () => ["A mean hides what must be right: a learner could pass with every critical item wrong. They stay apart from the cut score."] },
        "divided-by-all-judges": { name: "spread of the four alone", because: () => ["Four judges are a sample of those you could have asked, so the squares are divided by three."] },
        "middle-judges-only": { name: "outer judges dropped", because: () => ["The mean of all four was asked for. Dropping the strictest and the mildest is another rule, and must be agreed beforehand."] },
        "strictest-judge": { name: "strictest judge taken", because: () => ["One judge is an opinion. The mean of all is the standard, with its spread beside it."] },
      },
      working: (say) => [
        `Mean: (${JUDGES.map((key) => say.bare(key)).join(" + ")}) ÷ 4 = ${say.number(answerValue(say, "cutPoints"), 2)}`,
        `Standard deviation, divided by three: ${say.number(answerValue(say, "spreadPoints"), 2)}`,
        `Must be right: all ${say.bare("critical")}`,
        "Mean of item estimates for a borderline learner: Angoff 1971, from memory.",
      ],
      right: (say) => [`${answerText(say, "cutPoints", tenth)} of ${say.bare("ordinary")}, with a spread of ${answerText(say, "spreadPoints", tenth)} among the judges, and ${say.bare("critical")} items that no score makes up for.`],
      off: () => ["Mean and standard deviation of the four sums; the critical items are a list, not a number to be averaged in."],
      inverse: () => [],
      turns: () => ["A fifth judge moves the mean by a fifth of his or her distance from it. No judge moves the list of critical items."],
    },
  },
};
