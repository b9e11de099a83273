import { jointAccuracy } from "../../engine/evidence/joint-accuracy.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerText, given, HOSPITALS, PERCENT } from "../m01/common.ts";
import { askShare, TEST_SAYS } from "./test-words.ts";

const SHARE = { unit: "%", least: 55, greatest: 95, step: 1 } as const;
const KEYS = ["firstSensitivityPercent", "firstSpecificityPercent", "secondSensitivityPercent", "secondSpecificityPercent"] as const;

type Rule = "any" | "all";
const ruleOf = (about: Draw["about"]): Rule => (about["rule"] === "all" ? "all" : "any");
const tests = (givens: Givens) => [
  { sensitivity: given(givens, KEYS[0]) / PERCENT, specificity: given(givens, KEYS[1]) / PERCENT },
  { sensitivity: given(givens, KEYS[2]) / PERCENT, specificity: given(givens, KEYS[3]) / PERCENT },
];
const isShares = (givens: Givens): boolean => KEYS.every((key) => given(givens, key) >= 0 && given(givens, key) <= PERCENT);
const solved = (givens: Givens, rule: Rule): Solution => {
  if (!isShares(givens)) return { says: "none" };
  const { sensitivity, specificity } = jointAccuracy(tests(givens), { positiveIf: rule });
  return { sensitivityPercent: PERCENT * sensitivity, specificityPercent: PERCENT * specificity };
};
const both = (givens: Givens, of: (first: number, second: number) => number): Solution => ({
  sensitivityPercent: of(given(givens, KEYS[0]), given(givens, KEYS[2])),
  specificityPercent: of(given(givens, KEYS[1]), given(givens, KEYS[3])),
});
const ruleText = (say: Say): string => (say.about("rule") === "all" ? "The pair counts as positive only if both are" : "The pair counts as positive if either is");
const rounded = { places: 1, unit: "%" } as const;

/** 02g: two tests together, where one failing says nothing about the other. */
export const twoTests: SumFamily = {
  kind: "sum",
  id: "two-tests",
  code: "02g",
  module: "M02",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m02-accuracy"],
  reads: [],
  sources: [],
  cautions: [],
  givens: KEYS.map((key) => ({ key, ...SHARE })),
  asks: ["sensitivityPercent", "specificityPercent"].map(askShare),
  draw: (chance) => ({ givens: Object.fromEntries(KEYS.map((key) => [key, chance.onGrid(SHARE)])), about: { rule: chance.pick(["any", "all"]), hospital: chance.pick(HOSPITALS) } }),
  solve: (givens, about) => solved(givens, ruleOf(about)),
  slips: [
    { id: "the-other-rule", gives: ({ givens, about }) => solved(givens, ruleOf(about) === "any" ? "all" : "any") },
    { id: "average-of-both", gives: ({ givens }) => both(givens, (first, second) => (first + second) / 2) },
    { id: "better-of-both", gives: ({ givens }) => both(givens, Math.max) },
  ],
  words: {
    en: {
      title: "Two tests together",
      stems: [
        (say) => [`At ${say.about("hospital")} every child has an examination and a scan. ${ruleText(say)}. Take the two as independent: what one misses says nothing about the other.`],
        (say) => [`Two tests make a third one, better in one way and worse in the other. ${ruleText(say)}. They are taken as independent here, which is rarely quite true. ${say.about("hospital")}.`],
        (say) => [`${ruleText(say)}, says the sheet of ${say.about("hospital")} about examination and scan. Work out the pair, as if the two never failed together more often than by chance.`],
      ],
      question: "What are sensitivity and specificity of the pair? In per cent, to one decimal.",
      givens: { firstSensitivityPercent: "Examination, sensitivity", firstSpecificityPercent: "Examination, specificity", secondSensitivityPercent: "Scan, sensitivity", secondSpecificityPercent: "Scan, specificity" },
      asks: { sensitivityPercent: "Sensitivity of the pair", specificityPercent: "Specificity of the pair" },
      says: TEST_SAYS,
      slips: {
        "the-other-rule": { name: "the other rule", because: (say) => [`${ruleText(say)}. You worked it out the other way, where the other of the two numbers gains.`] },
        "average-of-both": { name: "average of both", because: () => ["A pair is not the average of its parts. One rule gains sensitivity and loses specificity, the other does the opposite."] },
        "better-of-both": { name: "the better of both", because: () => ["Nobody gets the better of both. What one number gains the other pays for."] },
      },
      working: (say) => say.about("rule") === "all" ? [
        `Both find it: ${say.bare(KEYS[0])} % × ${say.bare(KEYS[2])} % = ${answerText(say, "sensitivityPercent", rounded)}`,
        `Not both in error on a whole meniscus: 100 % − (100 − ${say.bare(KEYS[1])}) % × (100 − ${say.bare(KEYS[3])}) % = ${answerText(say, "specificityPercent", rounded)}`,
      ] : [
        `Not both miss it: 100 % − (100 − ${say.bare(KEYS[0])}) % × (100 − ${say.bare(KEYS[2])}) % = ${answerText(say, "sensitivityPercent", rounded)}`,
        `Both right on a whole meniscus: ${say.bare(KEYS[1])} % × ${say.bare(KEYS[3])} % = ${answerText(say, "specificityPercent", rounded)}`,
      ],
      right: () => ["Right, if the two are independent. A tear that is hard to feel is often hard to see as well, and then the gain is smaller."],
      off: () => ["With either, a tear is missed only if both miss it; with both, a false alarm needs both to be wrong."],
      inverse: () => [],
      turns: (say) => [say.about("rule") === "all" ? "With either counting, sensitivity would gain and specificity pay." : "With both needed, specificity would gain and sensitivity pay."],
    },
  },
};
