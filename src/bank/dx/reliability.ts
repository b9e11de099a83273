import { measurementError } from "../../engine/evidence/measurement-error.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import { answerValue, given, HOSPITALS } from "../m01/common.ts";

const ITEMS = { key: "items", unit: "pieces", least: 15, greatest: 40, step: 1 } as const;
const SPREAD = { key: "sdPoints", unit: "points", least: 2.5, greatest: 7, step: 0.1 } as const;
const WITHIN = { key: "withinPoints", unit: "points", least: 2, greatest: 8, step: 0.1 } as const;

/** Totals that spread over more of the sheet than this are not met in one group. */
const WIDEST_SHARE = 0.2;

const at = (givens: Givens) => ({ items: given(givens, "items"), sdPoints: given(givens, "sdPoints"), within: given(givens, "withinPoints") });
/** Kuder–Richardson 20 from the sum of p × (1 − p) and the spread of the totals (Kuder and Richardson 1937, 10.1007/BF02288391). */
const reliability = ({ items, sdPoints, within }: ReturnType<typeof at>): number => (items / (items - 1)) * (1 - within / sdPoints ** 2);
const solved = (givens: Givens): Solution => {
  const r = reliability(at(givens));
  if (!(r > 0 && r < 1)) return Number.isNaN(r) ? { reliability: r, semPoints: r } : { says: "none" };
  return { reliability: r, semPoints: measurementError({ sdPoints: at(givens).sdPoints, reliability: r }) };
};
const r = (givens: Givens): number => reliability(at(givens));

/** D4, here 15d: reliability of a sheet, and what it means for one score. */
export const reliabilityOfSheet: SumFamily = {
  kind: "sum",
  id: "reliability",
  code: "15d",
  module: "DX",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["dx-reliability"],
  reads: [],
  sources: [],
  cautions: ["C12"],
  givens: [ITEMS, SPREAD, WITHIN],
  asks: [
    { id: "reliability", unit: "pieces", roundTo: 0.01, rounding: "nearest", safeSide: "none" },
    { id: "semPoints", unit: "points", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const items = chance.onGrid(ITEMS);
    const sdPoints = chance.onGrid({ ...SPREAD, greatest: Math.min(SPREAD.greatest, Math.floor(items * WIDEST_SHARE * 10) / 10) });
    // The sum of p × (1 − p) can be a quarter of the items at most, and must leave a reliability that a sheet may have.
    const most = Math.min(WITHIN.greatest, Math.floor(Math.min(items / 4, sdPoints ** 2 * 0.6) * 10) / 10);
    const least = Math.max(WITHIN.least, Math.ceil(Math.min(most, sdPoints ** 2 * 0.12) * 10) / 10);
    return { givens: { items, sdPoints, withinPoints: chance.onGrid({ ...WITHIN, least: Math.min(least, most), greatest: most }) }, about: { hospital: chance.pick(HOSPITALS), sheet: chance.pick(["needle depth", "doses and cuff", "counting and waste"]) } };
  },
  solve: solved,
  slips: [
    { id: "variance-for-spread", gives: ({ givens }) => ({ reliability: r(givens), semPoints: at(givens).sdPoints ** 2 * Math.sqrt(1 - r(givens)) }) },
    { id: "items-factor-left-out", gives: ({ givens }) => ({ reliability: 1 - at(givens).within / at(givens).sdPoints ** 2, semPoints: at(givens).sdPoints * Math.sqrt(at(givens).within / at(givens).sdPoints ** 2) }) },
    { id: "root-left-out", gives: ({ givens }) => ({ reliability: r(givens), semPoints: at(givens).sdPoints * (1 - r(givens)) }) },
  ],
  words: {
    en: {
      title: "How steady is a score",
      stems: [
        (say) => [`A sheet on ${say.about("sheet")} was answered by a group at ${say.about("hospital")}; every item counts one point. From the shares of right answers the sum of p × (1 − p) was taken, and from the totals the standard deviation, both divided by n.`],
        (say) => [`A score is a measurement, and the sheet is the instrument. ${say.about("hospital")}, sheet on ${say.about("sheet")}, one point an item; variances divided by n.`],
        (say) => [`Before two learners at ${say.about("hospital")} are told apart by a point, ask how steady a point is. Sheet on ${say.about("sheet")}, items right or wrong, variances divided by n.`],
      ],
      question: "What is the reliability (Kuder–Richardson 20, two decimals), and the standard error of one score (one decimal)?",
      givens: { items: "Items", sdPoints: "Standard deviation of the totals", withinPoints: "Sum of p × (1 − p) over the items" },
      asks: { reliability: "Reliability", semPoints: "Standard error of a score" },
      says: { none: "There is no such reliability", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "variance-for-spread": { name: "variance for standard deviation", because: () => ["The standard error is in points, like the standard deviation. The variance is in points squared."] },
        "items-factor-left-out": { name: "factor of the items left out", because: () => ["The number of items over one less stands in front. Without it a short sheet looks less steady than it is."] },
        "root-left-out": { name: "root left out", because: () => ["What reliability leaves over is a share of the variance. Its root is a share of the standard deviation."] },
      },
      working: (say) => [
        `${say.bare("items")} ÷ ${say.value("items") - 1} × (1 − ${say.bare("withinPoints")} ÷ ${say.bare("sdPoints")}²) = ${say.number(answerValue(say, "reliability"), 2)}`,
        `${say.bare("sdPoints")} × √(1 − ${say.number(answerValue(say, "reliability"), 3)}) = ${say.number(answerValue(say, "semPoints"))} points`,
      ],
      right: (say) => [`Reliability ${say.number(answerValue(say, "reliability"), 2)}; one score is good to about ${say.number(answerValue(say, "semPoints"))} points either way, two times out of three.`],
      off: () => ["Reliability from the two variances, with the factor of the items; then standard deviation times the root of what reliability leaves."],
      inverse: () => [],
      turns: () => ["More items of the same kind make the sheet steadier; a group that is all alike makes it look less so."],
    },
  },
};
