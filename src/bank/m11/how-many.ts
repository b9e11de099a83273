import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import { once } from "../../engine/question/once.ts";
import type { Say } from "../../engine/question/say.ts";
import { stitchCount } from "../../engine/repair/stitch-count.ts";
import { stitch } from "../../facts/stitch.ts";
import { answerValue, given, isSameNumber } from "../m01/common.ts";
import { CASE_ABOUT, caseOf, MARGIN, STITCH_SAYS, TEAR } from "./stitch-words.ts";

const SPACING = { key: "greatestSpacingMm", unit: "mm", least: 3, greatest: 8, step: 0.5 } as const;
const BENCH = "stitch-spacing.bench@1";

const countWith = (givens: Givens, endMarginMm = given(givens, "endMarginMm")): number =>
  stitchCount({ tearMm: given(givens, "tearMm"), endMarginMm, greatestSpacingMm: given(givens, "greatestSpacingMm") });

const betweenMm = (givens: Givens): number => sumOnGrid(given(givens, "tearMm"), -given(givens, "endMarginMm"), -given(givens, "endMarginMm"));

const countOf = once((givens) => countWith(givens));

/** True where the spacing goes into the stretch without a rest: then rounding down is no mistake, only leaving out the last post is. */
const isEven = (givens: Givens): boolean => Number.isInteger(Number((betweenMm(givens) / given(givens, "greatestSpacingMm")).toFixed(6)));

const shown = (say: Say): Givens => ({ tearMm: say.value("tearMm"), endMarginMm: say.value("endMarginMm"), greatestSpacingMm: say.value("greatestSpacingMm") });
const gaps = (say: Say): string => say.number(betweenMm(shown(say)) / say.value("greatestSpacingMm"), 2);
const wholeGaps = (say: Say): string => String(answerValue(say, "stitches") - 1);
const count = (say: Say): string => String(answerValue(say, "stitches"));

/** 11a: how many stitches a tear needs, one at each end and no gap above a greatest spacing. */
export const howMany: SumFamily = {
  kind: "sum",
  id: "how-many",
  code: "11a",
  module: "M11",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m11-number"],
  reads: [BENCH],
  sources: [{ source: "transcapsular-2017", entry: BENCH }],
  cautions: ["C3", "C9"],
  givens: [TEAR, MARGIN, SPACING],
  asks: [{ id: "stitches", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const isBench = chance.happens(1, 4);
    const tearMm = chance.onGrid(TEAR);
    const endMarginMm = chance.onGrid(MARGIN);
    const greatestSpacingMm = isBench ? (stitch(BENCH).number.value ?? 0) : chance.onGrid(SPACING);
    return {
      givens: { tearMm, endMarginMm, greatestSpacingMm },
      about: { ...CASE_ABOUT(chance), spacing: isBench ? "bench" : "sheet" },
      origins: { greatestSpacingMm: isBench ? { from: "study", entry: BENCH } : { from: "local" }, endMarginMm: { from: "local" } },
    };
  },
  solve: (givens) => ({ stitches: countOf(givens) }),
  slips: [
    { id: "last-post-left-out", gives: ({ givens }) => (isEven(givens) ? { stitches: countOf(givens) - 1 } : null) },
    { id: "one-too-few", gives: ({ givens }) => (isEven(givens) ? null : { stitches: countOf(givens) - 1 }) },
    { id: "whole-gaps-only", gives: ({ givens }) => (isEven(givens) ? null : { stitches: countOf(givens) - 2 }) },
    { id: "margins-left-out", gives: ({ givens }) => ({ stitches: countWith(givens, 0) }) },
    { id: "one-for-luck", gives: ({ givens }) => ({ stitches: countOf(givens) + 1 }) },
  ],
  words: {
    en: {
      title: "How many stitches",
      stems: [
        (say) => [`${caseOf(say)} One stitch stands at each end, inside the end margins, and no gap may be wider than the greatest spacing.`],
        (say) => [`${caseOf(say)} You want as few stitches as the rule allows: one at each end of the stretch between the margins, and no gap above the greatest spacing.`],
        (say) => [`Every stitch is an implant and a hole in a small meniscus; too few leave a gap. ${caseOf(say)} The rule: one at each end inside the margins, no gap above the greatest spacing.`],
      ],
      question: "How many stitches are needed at least? A whole number.",
      givens: {
        tearMm: "Length of the tear, along the rim",
        endMarginMm: "Left free at each end, your hospital’s sheet",
        greatestSpacingMm: (say) => (say.about("spacing") === "bench" ? "Greatest spacing, taken from a bench set-up" : "Greatest spacing, your hospital’s sheet"),
      },
      asks: { stitches: "Stitches" },
      says: STITCH_SAYS,
      slips: {
        "last-post-left-out": { name: "last post left out", because: (say) => [`${count(say)} posts stand on a fence of ${Number(count(say)) - 1} gaps. You counted the gaps; a stitch stands at either end.`] },
        "one-too-few": { name: "one too few", because: (say) => [`The stretch holds ${gaps(say)} greatest gaps, so it takes ${wholeGaps(say)}, and stitches are one more than gaps. You dropped the part of a gap, or the stitch at the far end.`] },
        "whole-gaps-only": { name: "whole gaps taken for stitches", because: (say) => [`Of ${gaps(say)} greatest gaps you kept the whole ones. The part needs a gap of its own, and the gaps need one stitch more than there are gaps.`] },
        "margins-left-out": { name: "margins left out", because: (say) => [`${say.of("endMarginMm")} stay free at each end. The stitches share what lies between, not the whole tear.`] },
        "one-for-luck": { name: "one more for luck", because: () => ["The rule was met without it. Each stitch more is another implant and another hole in a small meniscus."] },
      },
      working: (say) => [
        `Between the margins: ${say.bare("tearMm")} − 2 × ${say.bare("endMarginMm")} = ${say.number(betweenMm(shown(say)))} mm`,
        `Gaps: ${say.number(betweenMm(shown(say)))} ÷ ${say.bare("greatestSpacingMm")} = ${gaps(say)}${isSameNumber(gaps(say), wholeGaps(say)) ? ", no rest" : `, rounded up to ${wholeGaps(say)}`}`,
        `Stitches: one more than gaps, ${count(say)}`,
      ],
      right: (say) => [`${count(say)} stitches: one more than the gaps, and no gap is wider than ${say.of("greatestSpacingMm")}.`],
      off: () => ["Take the margins off both ends, see how many greatest gaps fit, round up, and add the stitch at the far end."],
      inverse: () => [],
      turns: (say) => [`${count(say)} stitches with this spacing serve a stretch of up to ${say.number((Number(count(say)) - 1) * say.value("greatestSpacingMm"))} mm between the margins; from there on it is one more.`],
    },
  },
};
