import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import { once } from "../../engine/question/once.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerText, given, HOSPITALS } from "../m01/common.ts";

const KEYS = ["firstPoints", "secondPoints", "thirdPoints", "fourthPoints", "fifthPoints", "sixthPoints"] as const;
const GRID = { unit: "points", least: 4, greatest: 20, step: 1 } as const;
const TOTALS = KEYS.map((key) => ({ key, ...GRID }));
/** Totals closer together than this leave nothing to correlate with. */
const LEAST_SPAN = 4;

type About = Draw["about"];

interface Scores {
  readonly item: readonly number[];
  readonly totals: readonly number[];
}

const scoresOf = once((givens, about): Scores => ({ item: (about["right"] ?? "").split(" ").map(Number), totals: KEYS.map((key) => given(givens, key)) }));
const restOf = ({ item, totals }: Scores): readonly number[] => totals.map((total, at) => total - (item[at] ?? 0));
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const spread = (values: readonly number[], divisor: number): number => {
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / divisor);
};
const among = (values: readonly number[], item: readonly number[], score: 0 | 1): number => mean(values.filter((_, at) => item[at] === score));

interface Parts {
  readonly rightMean: number;
  readonly wrongMean: number;
  readonly spread: number;
  readonly root: number;
}

/** What stands in the formula: means of those who had the item right and wrong, spread of all, root of p × (1 − p). */
const partsOf = (values: readonly number[], item: readonly number[], divisor = values.length): Parts => {
  const share = mean(item);
  return { rightMean: among(values, item, 1), wrongMean: among(values, item, 0), spread: spread(values, divisor), root: Math.sqrt(share * (1 - share)) };
};
const correlation = (parts: Parts): number => ((parts.rightMean - parts.wrongMean) / parts.spread) * parts.root;

/** The item against the rest of the sheet. */
const partsAgainstRest = once((givens, about): Parts => {
  const scores = scoresOf(givens, about);
  return partsOf(restOf(scores), scores.item);
});

const solved = (givens: Givens, about: About): Solution => {
  const scores = scoresOf(givens, about);
  const found = correlation(partsAgainstRest(givens, about));
  return scores.totals.every(Number.isFinite) && Number.isNaN(found) ? { says: "none" } : { correlation: found };
};
const partsIn = ({ draw }: Say): Parts => partsAgainstRest(draw.givens, draw.about);
const found = (say: Say): string => answerText(say, "correlation", { places: 2, unit: "pieces" });
const NTH = ["First", "Second", "Third", "Fourth", "Fifth", "Sixth"] as const;
const label = (at: number) => (say: Say): string => `${NTH[at] ?? ""} learner, item ${say.about("right").split(" ")[at] === "1" ? "right" : "wrong"}`;

/** D3, here 15c: correlation of an item with the rest of its sheet. */
export const pointBiserial: SumFamily = {
  kind: "sum",
  id: "point-biserial",
  code: "15c",
  module: "DX",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["dx-item"],
  reads: [],
  sources: [],
  cautions: ["C12"],
  givens: TOTALS,
  asks: [{ id: "correlation", unit: "pieces", roundTo: 0.01, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const item = chance.shuffled([1, 1, chance.below(2), chance.below(2), 0, 0]);
    const low = GRID.least + chance.below(GRID.greatest - GRID.least - LEAST_SPAN + 1);
    const high = low + LEAST_SPAN + chance.below(GRID.greatest - low - LEAST_SPAN + 1);
    // One learner at either end of the span, so that the totals differ; whoever had the item right tends to the upper part.
    const totals = item.map((score) => chance.onGrid({ least: score === 1 && chance.happens(2, 3) ? Math.ceil((low + high) / 2) : low, greatest: high, step: 1 }));
    const [least, most] = [item.indexOf(0), item.lastIndexOf(1)];
    const placed = totals.map((total, at) => (at === least ? low : (at === most && high) || total));
    return { givens: Object.fromEntries(KEYS.map((key, at) => [key, placed[at] ?? low])), about: { hospital: chance.pick(HOSPITALS), item: chance.pick(["depth of a stitch", "width of a cuff", "count at the end", "height of a bag"]), right: item.join(" ") } };
  },
  solve: solved,
  slips: [
    { id: "item-left-in", gives: ({ givens, about }) => ({ correlation: correlation(partsOf(scoresOf(givens, about).totals, scoresOf(givens, about).item)) }) },
    { id: "two-divisors", gives: ({ givens, about }) => ({ correlation: correlation(partsOf(restOf(scoresOf(givens, about)), scoresOf(givens, about).item, KEYS.length - 1)) }) },
    {
      id: "root-left-out",
      gives: ({ givens, about }) => {
        const parts = partsAgainstRest(givens, about);
        return { correlation: (parts.rightMean - parts.wrongMean) / parts.spread };
      },
    },
    { id: "wrong-less-right", gives: ({ givens, about }) => ({ correlation: -correlation(partsAgainstRest(givens, about)) }) },
  ],
  plausible: { correlation: { least: -1, greatest: 1 } },
  words: {
    en: {
      title: "An item and the rest",
      stems: [
        (say) => [`Six learners at ${say.about("hospital")} answered a sheet with one point an item. The totals below contain the item on the ${say.about("item")}. You want its correlation with the rest of the sheet, spread divided by n.`],
        (say) => [`Does the item on the ${say.about("item")} go with the others? Six returns from ${say.about("hospital")}, one point an item; the totals still have this item in them. Divide the variance by n.`],
        (say) => [`A small exercise before the computer does it for thirty: six totals from ${say.about("hospital")}, one point an item, the item on the ${say.about("item")} among them. Variances divided by n.`],
      ],
      question: "What is the point-biserial correlation of the item with the rest of the sheet? Two decimals.",
      givens: Object.fromEntries(KEYS.map((key, at) => [key, label(at)])),
      asks: { correlation: "Correlation with the rest" },
      says: { none: "There is no such correlation", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "item-left-in": { name: "item left in the total", because: () => ["The item’s own point stands in the total, so the item agrees with itself. Take it out of every total before anything else."] },
        "two-divisors": { name: "two divisors mixed", because: () => ["The share under the root counts with n, the spread was taken with one less. Both by n, or the figure is too small."] },
        "root-left-out": { name: "root of p × (1 − p) left out", because: () => ["The difference of the means in units of spread is not yet a correlation. The root of p × (1 − p) belongs to it."] },
        "wrong-less-right": { name: "wrong less right", because: () => ["Mean of those who were right less mean of those who were wrong. The other way round, a good item looks broken."] },
      },
      working: (say) => [
        "The item’s point out of the totals of those who had it right; the others stay.",
        `Mean of the rest: ${say.number(partsIn(say).rightMean, 2)} points where right, ${say.number(partsIn(say).wrongMean, 2)} points where wrong`,
        `Spread of the rest, by n: ${say.number(partsIn(say).spread, 2)} points; √(p × (1 − p)) = ${say.number(partsIn(say).root, 3)}`,
        `(${say.number(partsIn(say).rightMean, 2)} − ${say.number(partsIn(say).wrongMean, 2)}) ÷ ${say.number(partsIn(say).spread, 2)} × ${say.number(partsIn(say).root, 3)} = ${found(say)}`,
      ],
      right: (say) => [`${found(say)}, from six learners. With so few, the standard error is near a half: it is an exercise, and no verdict on the item.`],
      off: () => ["First take the item out of the totals. Then mean where right less mean where wrong, over the spread of all, times the root of p × (1 − p)."],
      inverse: () => [],
      turns: () => ["Below nought: when those who had the item wrong did better in the rest. Then read its text and its key before anything else."],
    },
  },
};
