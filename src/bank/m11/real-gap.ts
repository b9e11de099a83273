import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import { gridValue } from "../../engine/random/chance.ts";
import { stitchGapMm } from "../../engine/repair/stitch-gap-mm.ts";
import { answerText, counted, given } from "../m01/common.ts";
import { CASE_ABOUT, caseOf, MARGIN, STITCH_SAYS, TEAR } from "./stitch-words.ts";

const STITCHES = { key: "stitches", unit: "pieces", least: 2, greatest: 9, step: 1 } as const;
const SPREAD = { least: 2.5, greatest: 9 } as const;

const stretchMm = (givens: Givens): number => sumOnGrid(given(givens, "tearMm"), -given(givens, "endMarginMm"), -given(givens, "endMarginMm"));

/** Where the margins leave nothing there is no gap to speak of. */
const gapOf = (givens: Givens): Solution => {
  const stitches = given(givens, "stitches");
  if (stretchMm(givens) <= 0 || !(stitches >= 2)) return { says: "none" };
  return { gapMm: stitchGapMm({ tearMm: given(givens, "tearMm"), endMarginMm: given(givens, "endMarginMm"), stitches }) };
};

/** 11b: the gap between stitches that stand evenly. */
export const realGap: SumFamily = {
  kind: "sum",
  id: "real-gap",
  code: "11b",
  module: "M11",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m11-number"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [TEAR, MARGIN, STITCHES],
  asks: [{ id: "gapMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const tearMm = chance.onGrid(TEAR);
    const endMarginMm = chance.onGrid(MARGIN);
    const stretch = tearMm - 2 * endMarginMm;
    const fewest = Math.max(STITCHES.least, Math.ceil(stretch / SPREAD.greatest) + 1);
    const most = Math.min(STITCHES.greatest, Math.max(fewest, Math.floor(stretch / SPREAD.least) + 1));
    const stitches = gridValue(STITCHES, fewest - STITCHES.least + chance.below(most - fewest + 1));
    return { givens: { tearMm, endMarginMm, stitches }, about: CASE_ABOUT(chance), origins: { endMarginMm: { from: "local" } } };
  },
  solve: gapOf,
  slips: [
    { id: "divided-by-stitches", gives: ({ givens }) => ({ gapMm: stretchMm(givens) / given(givens, "stitches") }) },
    { id: "one-gap-too-many", gives: ({ givens }) => ({ gapMm: stretchMm(givens) / (given(givens, "stitches") + 1) }) },
    { id: "margins-left-out", gives: ({ givens }) => ({ gapMm: given(givens, "tearMm") / (given(givens, "stitches") - 1) }) },
    { id: "one-margin", gives: ({ givens }) => ({ gapMm: sumOnGrid(given(givens, "tearMm"), -given(givens, "endMarginMm")) / (given(givens, "stitches") - 1) }) },
  ],
  inverseOf: "tearMm",
  words: {
    en: {
      title: "The real gap",
      stems: [
        (say) => [`${caseOf(say)} The stitches stand evenly, the first and the last just inside the end margins.`],
        (say) => [`${caseOf(say)} You know how many stitches you will place. They stand evenly, one at each end inside the margins.`],
        (say) => [`A planned number says nothing until you know the gap it leaves. ${caseOf(say)} The stitches stand evenly between the two end margins, with one at either end.`],
      ],
      question: "How wide is the gap between neighbouring stitches? To the nearest tenth of a millimetre.",
      givens: { tearMm: "Length of the tear, along the rim", endMarginMm: "Left free at each end, your hospital’s sheet", stitches: "Stitches" },
      asks: { gapMm: "Gap" },
      says: { ...STITCH_SAYS, none: "There is no gap here" },
      slips: {
        "divided-by-stitches": { name: "divided by the stitches", because: (say) => [`${say.bare("stitches")} stitches leave ${counted(say.value("stitches") - 1, "gap")} between them. Divided by the stitches, the gap looks narrower than it is.`] },
        "one-gap-too-many": { name: "a gap before the first and after the last", because: (say) => [`The end stitches stand just inside the margins, so nothing is left beyond them to share: ${counted(say.value("stitches") - 1, "gap")}, no more.`] },
        "margins-left-out": { name: "margins left out", because: (say) => [`${say.of("endMarginMm")} stay free at each end. Only what lies between is shared out.`] },
        "one-margin": { name: "one margin left out", because: () => ["A tear has two ends, and the margin stays free at both."] },
      },
      working: (say) => [
        `Between the margins: ${say.bare("tearMm")} − 2 × ${say.bare("endMarginMm")} = ${say.number(say.value("tearMm") - 2 * say.value("endMarginMm"))} mm`,
        `Gaps: ${say.bare("stitches")} − 1 = ${say.value("stitches") - 1}`,
        `Gap: ${say.number(say.value("tearMm") - 2 * say.value("endMarginMm"))} ÷ ${say.value("stitches") - 1} = ${answerText(say, "gapMm", { places: 1, unit: "mm" })}`,
      ],
      right: (say) => [`${answerText(say, "gapMm", { places: 1, unit: "mm" })}. Set it beside the spacing that your sheet allows before you open the first implant.`],
      off: () => ["Take both margins off the tear, then share the rest among the gaps: one fewer than the stitches."],
      inverse: (say, { text }) => [`If the tear were ${text} long. Here it is ${say.of("tearMm")}.`],
    },
  },
};
