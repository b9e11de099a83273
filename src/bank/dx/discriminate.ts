import { differenceInterval } from "../../engine/evidence/difference-interval.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerText, answerValue, given, HOSPITALS } from "../m01/common.ts";

const LEARNERS = { key: "learners", unit: "pieces", least: 20, greatest: 40, step: 2 } as const;
const TOP = { key: "topRight", unit: "pieces", least: 2, greatest: 11, step: 1 } as const;
const BOTTOM = { key: "bottomRight", unit: "pieces", least: 0, greatest: 11, step: 1 } as const;
const UPPER_HALF = { key: "upperHalfRight", unit: "pieces", least: 2, greatest: 20, step: 1 } as const;
const LOWER_HALF = { key: "lowerHalfRight", unit: "pieces", least: 0, greatest: 20, step: 1 } as const;

/** Per cent of the group at either end, by custom. */
const END_PERCENT = 27;
const DEVIATE = 1.96;

const perSideOf = (learners: number): number => Math.round((END_PERCENT * learners) / 100);
const perSide = (givens: Givens): number => perSideOf(given(givens, "learners"));

interface Two {
  readonly events: number;
  readonly otherEvents: number;
  readonly each: number;
}

const ends = (givens: Givens): Two => ({ events: given(givens, "topRight"), otherEvents: given(givens, "bottomRight"), each: perSide(givens) });
const halves = (givens: Givens): Two => ({ events: given(givens, "upperHalfRight"), otherEvents: given(givens, "lowerHalfRight"), each: given(givens, "learners") / 2 });
const indexOf = ({ events, otherEvents, each }: Two): number => (events - otherEvents) / each;
const isCountable = ({ events, otherEvents, each }: Two): boolean => [events, otherEvents].every((count) => Number.isInteger(count) && count >= 0 && count <= each) && Number.isInteger(each) && each >= 1;

const solvedFor = (two: Two): Solution => {
  if (Number.isNaN(indexOf(two))) return { index: Number.NaN, low: Number.NaN, high: Number.NaN };
  if (!isCountable(two)) return { says: "none" };
  const { low, high } = differenceInterval({ events: two.events, total: two.each, otherEvents: two.otherEvents, otherTotal: two.each });
  return { index: indexOf(two), low, high };
};
const solved = (givens: Givens): Solution => solvedFor(ends(givens));

const around = (two: Two, half: number): Solution => ({ index: indexOf(two), low: indexOf(two) - half, high: indexOf(two) + half });
/** Standard error of the difference as it is taught for large groups. */
const largeError = ({ events, otherEvents, each }: Two): number => Math.sqrt([events, otherEvents].reduce((sum, count) => sum + ((count / each) * (1 - count / each)) / each, 0));

const shown = (say: Say, id: string): string => answerText(say, id, { places: 2, unit: "pieces" });
const sides = (say: Say): number => perSideOf(say.value("learners"));
const ITEMS = ["depth of a stitch", "width of a cuff", "count at the end", "height of a bag", "line to the bundle"] as const;

/** D2, here 15b: how well an item tells the strong from the weak, and how sure that is. */
export const discriminate: SumFamily = {
  kind: "sum",
  id: "discriminate",
  code: "15b",
  module: "DX",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["dx-item"],
  reads: [],
  sources: [],
  cautions: ["C12"],
  givens: [LEARNERS, TOP, BOTTOM, UPPER_HALF, LOWER_HALF],
  asks: [
    { id: "index", unit: "pieces", roundTo: 0.01, rounding: "nearest", safeSide: "none" },
    { id: "low", unit: "pieces", roundTo: 0.01, rounding: "nearest", safeSide: "none" },
    { id: "high", unit: "pieces", roundTo: 0.01, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const learners = chance.onGrid(LEARNERS);
    const each = perSideOf(learners);
    const topRight = chance.onGrid({ ...TOP, greatest: each });
    const bottomRight = chance.onGrid({ ...BOTTOM, greatest: Math.min(each, topRight + 1) });
    const between = learners / 2 - each;
    const upper = chance.below(between + 1);
    return { givens: { learners, topRight, bottomRight, upperHalfRight: topRight + upper, lowerHalfRight: bottomRight + chance.below(upper + 1) }, about: { hospital: chance.pick(HOSPITALS), item: chance.pick(ITEMS) } };
  },
  solve: solved,
  slips: [
    { id: "whole-halves", gives: ({ givens }) => solvedFor(halves(givens)) },
    { id: "over-the-whole-group", gives: ({ givens }) => ({ ...around(ends(givens), 0), ...solved(givens), index: (given(givens, "topRight") - given(givens, "bottomRight")) / given(givens, "learners") }) },
    { id: "index-as-exact", gives: ({ givens }) => around(ends(givens), 0) },
    { id: "large-group-interval", gives: ({ givens }) => around(ends(givens), DEVIATE * largeError(ends(givens))) },
  ],
  plausible: { index: { least: -0.5, greatest: 1 }, low: { least: -1, greatest: 1 }, high: { least: -0.5, greatest: 1 } },
  words: {
    en: {
      title: "Does the item tell them apart",
      stems: [
        (say) => [`A group at ${say.about("hospital")} answered a sheet with an item on the ${say.about("item")}. By the points of all other items the learners were put in order. The discrimination index is the share of right answers among the best ${END_PERCENT} % less that among the weakest ${END_PERCENT} %, rounded to whole learners.`],
        (say) => [`Item on the ${say.about("item")}, ${say.about("hospital")}. The best and the weakest ${END_PERCENT} % of the group, in whole learners, are set against each other: share right less share right. The order is by all other items.`, "Put a 95 % interval around the difference, from Wilson’s intervals of both shares."],
        (say) => [`The programme lead at ${say.about("hospital")} would like to delete the item on the ${say.about("item")}. First: its discrimination index, best ${END_PERCENT} % less weakest ${END_PERCENT} %, in whole learners; and how far that index can be trusted.`],
      ],
      question: "What is the index, and from where to where does its 95 % interval by Newcombe’s method reach? Two decimals.",
      givens: { learners: "Learners", topRight: (say) => `Right among the best ${sides(say)}`, bottomRight: (say) => `Right among the weakest ${sides(say)}`, upperHalfRight: "Right in the upper half", lowerHalfRight: "Right in the lower half" },
      asks: { index: "Discrimination index", low: "Lower end", high: "Upper end" },
      says: { none: "There is no such index", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "whole-halves": { name: "whole halves compared", because: (say) => [`Those near the middle differ little, and with them in, the difference shrinks or blurs. The index asks for ${sides(say)} at either end.`] },
        "over-the-whole-group": { name: "divided by the whole group", because: (say) => [`Each share is of its own side: ${sides(say)} learners, not ${say.bare("learners")}.`] },
        "index-as-exact": { name: "index taken as exact", because: (say) => [`${sides(say)} a side is noise: one learner who misreads a word moves the index by ${say.number(1 / sides(say), 2)}.`] },
        "large-group-interval": { name: "interval for large groups", because: () => ["The standard error that is taught for large groups leans past the ends in a small one, and has no width where everybody or nobody was right."] },
      },
      working: (say) => [
        `Either side: ${END_PERCENT} % of ${say.bare("learners")}, rounded: ${sides(say)} learners`,
        `Index: ${say.bare("topRight")} ÷ ${sides(say)} − ${say.bare("bottomRight")} ÷ ${sides(say)} = ${shown(say, "index")}`,
        `Wilson’s intervals of both shares, squared and added (Newcombe 1998): ${shown(say, "low")} to ${shown(say, "high")}`,
        `That the ends hold ${END_PERCENT} % is custom, no source; the halves are not needed.`,
      ],
      right: (say) => [`${shown(say, "index")}, and anything from ${shown(say, "low")} to ${shown(say, "high")} fits. With ${sides(say)} a side no item is deleted on this.${answerValue(say, "index") < 0 ? " Below nought, its text and its key are read again." : ""}`],
      off: () => ["Share right among the best less share right among the weakest, each over its own side; then Newcombe’s interval around the difference."],
      inverse: () => [],
      turns: () => ["With four times as many learners and the same shares, the interval is about half as wide. No single group of this size settles what an item is worth."],
    },
  },
};
