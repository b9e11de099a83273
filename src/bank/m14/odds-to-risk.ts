import { oddsOfShare } from "../../engine/evidence/odds-of-share.ts";
import { postTestShare } from "../../engine/evidence/post-test-share.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerOf, drawCase, given, SUM_SAYS } from "./later-words.ts";

const PER_CENT = 100;
const RATIO = { key: "oddsRatioTimes", unit: "times", least: 1.2, greatest: 4.5, step: 0.01 } as const;
const BASE = { key: "baseRiskPercent", unit: "%", least: 3, greatest: 40, step: 1 } as const;

const base = (givens: Givens): number => given(givens, "baseRiskPercent") / PER_CENT;
const risk = (givens: Givens): number => PER_CENT * postTestShare({ preTestShare: base(givens), ratio: given(givens, "oddsRatioTimes") });
const oddsAfter = (givens: Givens): number => oddsOfShare({ share: base(givens) }) * given(givens, "oddsRatioTimes");
const answer = (say: Say): string => say.number(answerOf(say, "riskPercent"));
const baseOdds = (say: Say): number => say.value("baseRiskPercent") / (PER_CENT - say.value("baseRiskPercent"));

/** 14e: from an odds ratio to a risk. */
export const oddsToRisk: SumFamily = {
  kind: "sum",
  id: "odds-to-risk",
  code: "14e",
  module: "M14",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m14-rates"],
  reads: [],
  sources: [],
  cautions: ["C2", "C16"],
  givens: [RATIO, BASE],
  asks: [{ id: "riskPercent", unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({ givens: { oddsRatioTimes: chance.onGrid(RATIO), baseRiskPercent: chance.onGrid(BASE) }, about: { ...drawCase(chance), what: chance.pick(["a second tear", "a further operation", "a repair that fails", "stiffness"]), factor: chance.pick(["a tear that was displaced", "a repair later than three months", "an open growth plate", "a complex pattern"]) }, origins: { baseRiskPercent: { from: "local" } } }),
  solve: (givens) => ({ riskPercent: risk(givens) }),
  slips: [
    { id: "ratio-times-risk", gives: ({ givens }) => ({ riskPercent: given(givens, "oddsRatioTimes") * given(givens, "baseRiskPercent") }) },
    { id: "odds-as-risk", gives: ({ givens }) => ({ riskPercent: PER_CENT * oddsAfter(givens) }) },
    { id: "ratio-turned", gives: ({ givens }) => ({ riskPercent: PER_CENT * postTestShare({ preTestShare: base(givens), ratio: 1 / given(givens, "oddsRatioTimes") }) }) },
  ],
  words: {
    en: {
      title: "From odds to a risk",
      stems: [
        (say) => [`An invented review prints an odds ratio for ${say.about("what")}, with ${say.about("factor")} against without. A family asks for a risk, and a ratio is none.`],
        (say) => [`At ${say.about("hospital")} the risk of ${say.about("what")} is known from the unit’s own years. An invented review says how the odds change with ${say.about("factor")}.`],
        (say) => [`Somebody multiplies an odds ratio by a risk and is pleased. The case is invented: ${say.about("what")}, and ${say.about("factor")}. You reckon it through the odds.`],
      ],
      question: "What is the risk with it, in per cent, to the nearest tenth?",
      givens: { oddsRatioTimes: "Odds ratio, with against without", baseRiskPercent: "Risk without it, this unit’s figure" },
      asks: { riskPercent: "Risk with it" },
      says: SUM_SAYS,
      slips: {
        "ratio-times-risk": { name: "odds ratio times risk", because: (say) => [`An odds ratio multiplies odds. Multiplied by a risk it says too much, ${asAsked(say.value("oddsRatioTimes") * say.value("baseRiskPercent"), 0.1, "nearest")} for ${answer(say)} per cent, and the more so the larger the risk.`] },
        "odds-as-risk": { name: "odds read as a risk", because: () => ["You stopped at the odds. A risk is odds over one plus odds, and always smaller."] },
        "ratio-turned": { name: "ratio turned over", because: (say) => [`A ratio of ${say.bare("oddsRatioTimes")} makes it more frequent with than without. You went the other way.`] },
      },
      working: (say) => [`Odds without: ${say.bare("baseRiskPercent")} ÷ ${PER_CENT - say.value("baseRiskPercent")} = ${say.number(baseOdds(say), 4)}`, `Odds with: ${say.bare("baseRiskPercent")} ÷ ${PER_CENT - say.value("baseRiskPercent")} × ${say.bare("oddsRatioTimes")} = ${say.number(baseOdds(say) * say.value("oddsRatioTimes"), 4)}`, `Risk with: odds ÷ (1 + odds) = ${answer(say)} per cent`],
      right: (say) => [`${answer(say)} per cent. Odds ratio and risk ratio are near each other only where the risk is small.`],
      off: (say) => [`Through the odds: from risk to odds, times the ratio, and back to a risk, ${answer(say)} per cent.`],
      inverse: () => [],
      turns: () => ["Multiplying would be right for a risk ratio. Look which of the two the review prints."],
    },
  },
};
