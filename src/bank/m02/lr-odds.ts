import { oddsOfShare } from "../../engine/evidence/odds-of-share.ts";
import { postTestShare } from "../../engine/evidence/post-test-share.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import { type Draw, type Givens, isSays, type Solution } from "../../engine/question/family-head.ts";
import { answerText, answerValue, given, HOSPITALS, PERCENT } from "../m01/common.ts";
import { askShare, TEST_SAYS, TESTS, testOf } from "./test-words.ts";

const SENSITIVITY = { key: "sensitivityPercent", unit: "%", least: 55, greatest: 95, step: 1 } as const;
const SPECIFICITY = { key: "specificityPercent", unit: "%", least: 60, greatest: 95, step: 1 } as const;
const BEFORE = { key: "beforePercent", unit: "%", least: 5, greatest: 60, step: 1 } as const;

type About = Draw["about"];
const isNegative = (about: About): boolean => about["result"] === "negative";
const share = (givens: Givens, key: string): number => given(givens, key) / PERCENT;
const ratioOf = (givens: Givens, negative: boolean): number =>
  negative ? (1 - share(givens, "sensitivityPercent")) / share(givens, "specificityPercent") : share(givens, "sensitivityPercent") / (1 - share(givens, "specificityPercent"));
const after = (givens: Givens, ratio: number): Solution => {
  const before = share(givens, "beforePercent");
  if (!(before > 0 && before < 1 && ratio > 0 && Number.isFinite(ratio))) return { says: "none" };
  return { ratio, afterPercent: PERCENT * postTestShare({ preTestShare: before, ratio }) };
};
const tenth = (percent = 0): string => percent.toFixed(1);
const own = (givens: Givens, about: About): Solution => after(givens, ratioOf(givens, isNegative(about)));
/** The chance that follows where the ratio is rounded before it is used; null where the rounding does not show. */
const afterRounding = (givens: Givens, about: About): Solution | null => {
  const ratio = Number(ratioOf(givens, isNegative(about)).toFixed(2));
  const [exact, early] = [own(givens, about), after(givens, ratio)];
  if (isSays(exact) || isSays(early)) return null;
  return tenth(exact["afterPercent"]) === tenth(early["afterPercent"]) ? null : { ...exact, afterPercent: early["afterPercent"] ?? 0 };
};
const withRatio = ({ givens, about }: Draw, afterPercent: number): Solution => ({ ratio: ratioOf(givens, isNegative(about)), afterPercent });

/** 02c: a likelihood ratio, and what it makes of a chance. */
export const lrOdds: SumFamily = {
  kind: "sum",
  id: "lr-odds",
  code: "02c",
  module: "M02",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m02-accuracy"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [SENSITIVITY, SPECIFICITY, BEFORE],
  asks: [{ id: "ratio", unit: "pieces", roundTo: 0.01, rounding: "nearest", safeSide: "none" }, askShare("afterPercent")],
  draw: (chance) => ({
    givens: { sensitivityPercent: chance.onGrid(SENSITIVITY), specificityPercent: chance.onGrid(SPECIFICITY), beforePercent: chance.onGrid(BEFORE) },
    about: { result: chance.pick(["positive", "negative"]), test: chance.pick(TESTS), hospital: chance.pick(HOSPITALS) },
  }),
  solve: own,
  slips: [
    { id: "share-times-ratio", gives: (draw) => withRatio(draw, given(draw.givens, "beforePercent") * ratioOf(draw.givens, isNegative(draw.about))) },
    { id: "ratio-rounded-early", gives: ({ givens, about }) => afterRounding(givens, about) },
    { id: "the-other-ratio", gives: ({ givens, about }) => after(givens, ratioOf(givens, !isNegative(about))) },
    { id: "odds-left-as-they-are", gives: (draw) => withRatio(draw, PERCENT * oddsOfShare({ share: share(draw.givens, "beforePercent") }) * ratioOf(draw.givens, isNegative(draw.about))) },
  ],
  words: {
    en: {
      title: "From ratio to chance",
      stems: [
        (say) => [`At ${say.about("hospital")} a child had ${testOf(say)} of the meniscus. The result is ${say.about("result")}. The chance of a tear before it is the clinic’s own estimate.`],
        (say) => [`A test moves a chance; it does not replace it. ${say.about("hospital")}: ${testOf(say)} of the meniscus, result ${say.about("result")}.`],
        (say) => [`The result of ${testOf(say)} of the meniscus is ${say.about("result")}. You want the chance of a tear after it, from the chance before it. ${say.about("hospital")}.`],
      ],
      question: "What is the likelihood ratio of this result (two decimals), and the chance of a tear after it (one decimal)?",
      givens: { sensitivityPercent: "Sensitivity", specificityPercent: "Specificity", beforePercent: "Chance of a tear before the test" },
      asks: { ratio: "Likelihood ratio", afterPercent: "Chance after the test" },
      says: TEST_SAYS,
      slips: {
        "share-times-ratio": { name: "chance times ratio", because: () => ["A ratio works on odds. Turn the chance into odds first; multiplied straight, it may pass a hundred per cent."] },
        "ratio-rounded-early": { name: "ratio rounded before it was used", because: () => ["The way is right. The ratio was rounded to two decimals and then worked with, and that moved the chance. Keep all its digits until the end."] },
        "the-other-ratio": { name: "the other result’s ratio", because: (say) => [`The result is ${say.about("result")}, and you took the ratio of the other one.`] },
        "odds-left-as-they-are": { name: "odds left as they are", because: () => ["Those are the odds after the test. As a chance they are odds ÷ (1 + odds)."] },
      },
      working: (say) => {
        const odds = say.value("beforePercent") / (PERCENT - say.value("beforePercent"));
        return [
          say.about("result") === "negative" ? `Ratio: (100 − ${say.bare("sensitivityPercent")}) ÷ ${say.bare("specificityPercent")} = ${say.number(answerValue(say, "ratio"), 2)}` : `Ratio: ${say.bare("sensitivityPercent")} ÷ (100 − ${say.bare("specificityPercent")}) = ${say.number(answerValue(say, "ratio"), 2)}`,
          `Odds before: ${say.bare("beforePercent")} ÷ (100 − ${say.bare("beforePercent")}) = ${say.number(odds, 3)}; after: ${say.number(odds * answerValue(say, "ratio"), 3)}`,
          `As a chance: ${answerText(say, "afterPercent", { places: 1, unit: "%" })}`,
        ];
      },
      right: (say) => [`From ${say.of("beforePercent")} to ${answerText(say, "afterPercent", { places: 1, unit: "%" })}. A ratio near one would have moved nothing.`],
      off: () => ["Ratio of this result, odds before, odds after, chance after. In that order."],
      inverse: () => [],
      turns: (say) => [`With the other result the ratio would be ${say.number(say.about("result") === "negative" ? say.value("sensitivityPercent") / (PERCENT - say.value("specificityPercent")) : (PERCENT - say.value("sensitivityPercent")) / say.value("specificityPercent"), 2)}.`],
    },
  },
};
