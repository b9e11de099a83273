import { shareNearer } from "../../engine/evidence/share-nearer.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { bundleLine } from "../../facts/bundle-line.ts";
import { given } from "./aimed-line.ts";

const HABIT = { key: "beyondMm", unit: "mm", least: 1, greatest: 9, step: 0.5 } as const;
const MEAN = { key: "meanMm", unit: "mm", least: 4, greatest: 6, step: 0.1 } as const;
const SPREAD = { key: "sdMm", unit: "mm", least: 1, greatest: 2, step: 0.1 } as const;
const HUNDRED = 100;

const shareOf = (givens: Givens): number => HUNDRED * shareNearer({ distanceMm: given(givens, "beyondMm"), meanMm: given(givens, "meanMm"), sdMm: given(givens, "sdMm") });
const percent = (say: Say): string => `${Math.round((say.answer as Record<string, number>)["sharePercent"] ?? 0)}\u2009%`;

/** 10j: in what share of children a habitual depth reaches the bundle, on the worst line. */
export const depthShare: SumFamily = {
  kind: "sum",
  id: "depth-share",
  code: "10j",
  module: "M10",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m10-reject"],
  reads: ["junction-to-bundle.boys@1", "junction-to-bundle.girls@1"],
  sources: [{ source: "schachne-2019", entry: "junction-to-bundle.boys@1" }, { source: "schachne-2019", entry: "junction-to-bundle.girls@1" }],
  cautions: ["C3", "C14"],
  givens: [HABIT, MEAN, SPREAD],
  asks: [{ id: "sharePercent", unit: "%", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const sex = chance.pick(["boys", "girls"]);
    const entry = `junction-to-bundle.${sex}@1`;
    const { mean = 0, sd = 0 } = bundleLine(entry).number;
    return {
      givens: { beyondMm: chance.onGrid(HABIT), meanMm: mean, sdMm: sd },
      about: { sex, who: chance.pick(["A colleague", "A visiting surgeon", "An older surgeon", "A trainee"]) },
      origins: { meanMm: { from: "study", entry }, sdMm: { from: "study", entry } },
    };
  },
  solve: (givens) => ({ sharePercent: shareOf(givens) }),
  slips: [
    { id: "the-others", gives: ({ givens }) => ({ sharePercent: HUNDRED - shareOf(givens) }) },
    { id: "mean-as-a-wall", gives: ({ givens }) => ({ sharePercent: given(givens, "beyondMm") < given(givens, "meanMm") ? 0 : HUNDRED }) },
    { id: "both-tails", gives: ({ givens }) => ({ sharePercent: 2 * Math.min(shareOf(givens), HUNDRED - shareOf(givens)) }) },
    { id: "half-whatever", gives: () => ({ sharePercent: HUNDRED / 2 }) },
  ],
  words: {
    en: {
      title: "A habit and a spread",
      stems: [
        (say) => [`${say.about("who")} goes equally far beyond the meniscocapsular junction in every knee. The line is aimed at the bundle from the anterolateral portal; the children are ${say.about("sex")} of 10–18. Take their distances as a normal distribution.`],
        (say) => [`One depth for all: a habit. On the line aimed at the bundle, the ${say.about("sex")} of the study had the mean and spread below. Treat them as normal.`],
        (say) => [`${say.about("who")} says: “I always go that far.” For ${say.about("sex")} of 10–18, on the line aimed at the bundle, mean and spread are printed. Assume a normal distribution.`],
      ],
      question: "In what share of these children would that depth reach the near edge of the bundle? To the nearest per cent.",
      givens: { beyondMm: "Depth beyond the junction, by habit", meanMm: (say) => `Junction to bundle, mean of ${say.about("sex")} 10–18`, sdMm: (say) => `Spread, standard deviation of ${say.about("sex")} 10–18` },
      asks: { sharePercent: "Share of children" },
      says: { none: "In none of them", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "the-others": { name: "the others counted", because: () => ["That is the share in whom the habit stays in front of the bundle. The question asks about the rest."] },
        "mean-as-a-wall": { name: "mean taken for a wall", because: () => ["Not every child stands at the mean. In this model half of them lie nearer, whatever the mean is."] },
        "both-tails": { name: "both tails counted", because: () => ["Only children whose bundle is nearer are reached. The far tail belongs to those who are out of reach."] },
        "half-whatever": { name: "half, whatever the depth", because: (say) => [`Half would be right at a depth of exactly ${say.of("meanMm")}. At ${say.of("beyondMm")} it is another share.`] },
      },
      working: (say) => [
        `How far from the mean, in spreads: (${say.bare("beyondMm")} − ${say.bare("meanMm")}) ÷ ${say.bare("sdMm")} = ${((say.value("beyondMm") - say.value("meanMm")) / say.value("sdMm")).toFixed(2).replace("-", "−")}`,
        `Share of a normal distribution below that: ${percent(say)}`,
      ],
      right: (say) => [`In ${percent(say)} of them the habit would reach the bundle, on this line and in this model. It is a share of lines that touch, not of children who are hurt.`],
      off: () => ["Ask how many spreads the depth lies from the mean, then what share of a normal distribution lies below that. It is a model, and a line that touches is not an injury."],
      inverse: (say, { text }) => [`If the mean were ${text}. In the study it was ${say.of("meanMm")}.`],
    },
  },
  inverseOf: "meanMm",
};
