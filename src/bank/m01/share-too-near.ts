import { shareNearer } from "../../engine/evidence/share-nearer.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import { bundleLine } from "../../facts/bundle-line.ts";
import { answerText, given, HOSPITALS, PERCENT } from "./common.ts";

const DEPTH = { key: "beyondMm", unit: "mm", least: 2, greatest: 8, step: 0.5 } as const;
const MEAN = { key: "meanMm", unit: "mm", least: 4, greatest: 6, step: 0.1 } as const;
const SPREAD = { key: "sdMm", unit: "mm", least: 1, greatest: 2, step: 0.1 } as const;

const shareOf = (givens: Givens): number => {
  const [distanceMm, meanMm, sdMm] = [given(givens, "beyondMm"), given(givens, "meanMm"), given(givens, "sdMm")];
  return distanceMm > 0 && meanMm > 0 && sdMm > 0 ? PERCENT * shareNearer({ distanceMm, meanMm, sdMm }) : Number.NaN;
};
const said = (sharePercent: number): Solution => (Number.isNaN(sharePercent) ? { says: "none" } : { sharePercent });
const whole = { places: 0, unit: "%" } as const;

/** 01d: the share of children whose bundle lies nearer than a depth, in a normal model of the published spread. */
export const shareTooNear: SumFamily = {
  kind: "sum",
  id: "share-too-near",
  code: "01d",
  module: "M01",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m01-share"],
  reads: ["junction-to-bundle.boys@1", "junction-to-bundle.girls@1"],
  sources: [{ source: "schachne-2019", entry: "junction-to-bundle.boys@1" }, { source: "schachne-2019", entry: "junction-to-bundle.girls@1" }],
  cautions: ["C3", "C14"],
  givens: [DEPTH, MEAN, SPREAD],
  asks: [{ id: "sharePercent", unit: "%", roundTo: 1, rounding: "nearest", safeSide: "up" }],
  draw: (chance) => {
    const sex = chance.pick(["boys", "girls"]);
    const entry = `junction-to-bundle.${sex}@1`;
    const { mean = 0, sd = 0 } = bundleLine(entry).number;
    return {
      givens: { beyondMm: chance.onGrid(DEPTH), meanMm: mean, sdMm: sd },
      about: { sex, hospital: chance.pick(HOSPITALS) },
      sources: [{ source: "schachne-2019", entry }],
      origins: { meanMm: { from: "study", entry }, sdMm: { from: "study", entry } },
    };
  },
  solve: (givens) => said(shareOf(givens)),
  slips: [
    { id: "the-safe-ones-counted", gives: ({ givens }) => ({ sharePercent: PERCENT - shareOf(givens) }) },
    { id: "mean-as-a-wall", gives: ({ givens }) => (given(givens, "beyondMm") < given(givens, "meanMm") ? { sharePercent: 0 } : null) },
    { id: "mean-as-a-floor", gives: ({ givens }) => (given(givens, "beyondMm") > given(givens, "meanMm") ? { sharePercent: PERCENT } : null) },
    { id: "both-tails", gives: ({ givens }) => ({ sharePercent: 2 * Math.min(shareOf(givens), PERCENT - shareOf(givens)) }) },
    { id: "depth-over-mean", gives: ({ givens }) => ({ sharePercent: (PERCENT / 2) * (given(givens, "beyondMm") / given(givens, "meanMm")) }) },
  ],
  words: {
    en: {
      title: "How many are nearer",
      stems: [
        (say) => [`A straight line is aimed at the popliteal bundle from the anterolateral portal, through the posterior lateral horn. In ${say.about("sex")} of 10–18 the way from the meniscocapsular junction to the bundle had the mean and spread below. Treat it as a normal distribution.`],
        (say) => [`At ${say.about("hospital")} somebody proposes one depth beyond the meniscocapsular junction for all ${say.about("sex")} of 10–18. The line is aimed at the bundle from the anterolateral portal; mean and spread are published. Treat the distances as normally distributed.`],
        (say) => [`A mean hides everybody who is nearer. Line aimed at the bundle from the anterolateral portal, ${say.about("sex")} of 10–18, distance from the meniscocapsular junction; take a normal distribution with the mean and spread below.`],
      ],
      question: "In what share of these children does the bundle lie nearer than that depth? To the nearest per cent.",
      givens: { beyondMm: "Depth beyond the junction", meanMm: (say) => `Junction to bundle, mean of ${say.about("sex")} 10–18`, sdMm: (say) => `Standard deviation, ${say.about("sex")} 10–18` },
      asks: { sharePercent: "Share of children" },
      says: { none: "There is no such share", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "the-safe-ones-counted": { name: "the others counted", because: () => ["You counted the children whose bundle lies farther away. The question is about those whose bundle is nearer."] },
        "mean-as-a-wall": { name: "mean taken for a wall", because: (say) => [`${say.of("beyondMm")} is less than the mean, but a mean protects nobody. In this model half of the children are nearer than ${say.of("meanMm")}.`] },
        "mean-as-a-floor": { name: "mean taken for everybody", because: (say) => [`${say.of("beyondMm")} is more than the mean, but not every child lies at the mean. In some the bundle is farther away still.`] },
        "both-tails": { name: "both tails counted", because: () => ["Only one tail is in danger: the children whose bundle is nearer. In the far tail the needle does not reach it."] },
        "depth-over-mean": { name: "in proportion to the mean", because: () => ["A distribution is not a ruler: the share does not grow in step with the depth. Count in standard deviations."] },
      },
      working: (say) => [
        `From the mean, in standard deviations: (${say.bare("beyondMm")} − ${say.bare("meanMm")}) ÷ ${say.bare("sdMm")} = ${say.number((say.value("beyondMm") - say.value("meanMm")) / say.value("sdMm"), 2)}`,
        `Share of a normal distribution below that: ${answerText(say, "sharePercent", { places: 2, unit: "%" })}`,
      ],
      right: (say) => [`${answerText(say, "sharePercent", whole)} in this model, on this line. A line that touches is not an injury rate; it says that one depth for all is no plan.`],
      off: (say) => [`Count in standard deviations from ${say.of("meanMm")}, then ask what share of a normal distribution lies below. A share given too low leaves children out who are at risk.`],
      inverse: (say, { text }) => [`If the depth were ${text}. Here it is ${say.of("beyondMm")}.`],
    },
  },
  inverseOf: "beyondMm",
};
