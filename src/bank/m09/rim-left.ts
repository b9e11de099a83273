import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { discoid } from "../../facts/discoid.ts";
import { meniscusSize } from "../../facts/meniscus-size.ts";
import { answerText, CHILDREN, given, isSaid, SIDES } from "../m01/common.ts";

const WIDTH = { key: "widthMm", unit: "mm", least: 10, greatest: 24, step: 0.5 } as const;
const TARGET = { key: "targetMm", unit: "mm", least: 6, greatest: 12, step: 0.5 } as const;
const LOW = { key: "printedLowMm", unit: "mm", least: 5, greatest: 9, step: 1 } as const;
const HIGH = { key: "printedHighMm", unit: "mm", least: 6, greatest: 10, step: 1 } as const;
const NORMAL = { key: "hiatusTenMm", unit: "mm", least: 10, greatest: 14, step: 1 } as const;
const PRINTED = "rim-left.literature@1";
const HIATUS = "hiatus-width.10@1";

const over = (givens: Givens, key: string): number => sumOnGrid(given(givens, "widthMm"), -given(givens, key));
const solved = (givens: Givens): Solution => {
  const trimMm = over(givens, "targetMm");
  return trimMm <= 0 ? { says: "none" } : { trimMm };
};
const above = (trimMm: number): Solution | null => (trimMm > 0 ? { trimMm } : null);
const trim = { places: 1, unit: "mm" } as const;
const overHere = (say: Say): string => say.number(sumOnGrid(say.value("widthMm"), -say.value("targetMm")));

/** 09g: how much may come off a wide meniscus when the local rim is to be left. */
export const rimLeft: SumFamily = {
  kind: "sum",
  id: "rim-left",
  code: "09g",
  module: "M09",
  version: 1,
  firstWave: false,
  unsafe: true,
  objectives: ["m09-rim"],
  reads: [PRINTED, HIATUS],
  sources: [{ source: "gamble", entry: PRINTED }, { source: "gamble", entry: HIATUS }],
  cautions: ["C3", "C6"],
  givens: [WIDTH, TARGET, LOW, HIGH, NORMAL],
  asks: [{ id: "trimMm", unit: "mm", roundTo: 0.5, rounding: "down", safeSide: "down" }],
  draw: (chance) => {
    const isTooNarrow = chance.happens(1, 6);
    const targetMm = chance.onGrid(isTooNarrow ? { ...TARGET, least: WIDTH.least } : TARGET);
    const widthMm = chance.onGrid(isTooNarrow ? { ...WIDTH, greatest: targetMm } : { ...WIDTH, least: Math.max(WIDTH.least, targetMm + 1) });
    return {
      givens: { widthMm, targetMm, printedLowMm: discoid(PRINTED).number.from ?? 0, printedHighMm: discoid(PRINTED).number.to ?? 0, hiatusTenMm: meniscusSize(HIATUS).number.value ?? 0 },
      about: { child: chance.pick(CHILDREN), age: chance.pick(["7", "9", "10", "12"]), side: chance.pick(SIDES) },
      origins: { targetMm: { from: "local" }, printedLowMm: { from: "study", entry: PRINTED }, printedHighMm: { from: "study", entry: PRINTED }, hiatusTenMm: { from: "study", entry: HIATUS } },
    };
  },
  solve: solved,
  slips: [
    { id: "trimmed-to-the-amount", gives: ({ givens }) => ({ trimMm: given(givens, "targetMm") }) },
    { id: "printed-rim-for-the-sheet", gives: ({ givens }) => above(over(givens, "printedLowMm")) },
    { id: "wider-printed-rim", gives: ({ givens }) => above(over(givens, "printedHighMm")) },
    { id: "normal-width-for-the-sheet", gives: ({ givens }) => above(over(givens, "hiatusTenMm")) },
    { id: "half-a-millimetre-more", gives: ({ givens }) => ({ trimMm: Math.max(0, over(givens, "targetMm")) + 0.5 }) },
  ],
  words: {
    en: {
      title: "What should stay",
      stems: [
        (say) => [`${say.about("child")} is ${say.about("age")} and has symptoms from a lateral meniscus reported as wide in the ${say.about("side")} knee. The rim was found stable. Your hospital’s sheet names the width that is to stay; two other widths from print are shown beside it, and they disagree.`],
        (say) => [`What is cut off does not grow back. ${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee, lateral meniscus reported as wide, stable rim. The sheet says what should stay; the printed widths beside it are no default.`],
        (say) => [`A lateral meniscus reported as wide in the ${say.about("side")} knee of ${say.about("child")}, ${say.about("age")}, rim stable, operation agreed. The width that is to stay is the local sheet’s.`],
      ],
      question: "How much may be trimmed at most, so that the sheet’s width stays? Rounded down to half a millimetre.",
      givens: { widthMm: "Width now", targetMm: "To be left, your hospital’s sheet", printedLowMm: "Recommended in print, from", printedHighMm: "Recommended in print, to", hiatusTenMm: "Normal width at the hiatus at 10 years, one paper" },
      asks: { trimMm: "To be trimmed, at most" },
      says: { none: "Nothing is to be trimmed", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "trimmed-to-the-amount": { name: "took away what should stay", because: (say) => [`${say.of("targetMm")} is what is to be left. You removed what should stay.`] },
        "printed-rim-for-the-sheet": { name: "printed rim for the sheet’s", because: (say) => [`${say.of("printedLowMm")} stands in print and is disputed in print. The sheet here says ${say.of("targetMm")}.`] },
        "wider-printed-rim": { name: "wider printed rim for the sheet’s", because: (say) => [`${say.of("printedHighMm")} is the wider end of what one paper recommends. The sheet here says ${say.of("targetMm")}.`] },
        "normal-width-for-the-sheet": { name: "normal width for the sheet’s", because: (say) => [`${say.of("hiatusTenMm")} is one paper’s normal width at the hiatus, at 10 years. The sheet here says ${say.of("targetMm")}.`] },
        "half-a-millimetre-more": { name: "half a millimetre more", because: () => ["Half a millimetre over the limit is over the limit. Round to the side on which something stays."] },
      },
      working: (say) => [`${say.bare("widthMm")} − ${say.bare("targetMm")} = ${overHere(say)} mm`, isSaid(say) ? "Not wider than what is to stay: nothing comes off." : "At most that; rounded down."],
      right: (say) => isSaid(say) ? ["Nothing comes off. It is no wider than what the sheet leaves."] : [`At most ${answerText(say, "trimMm", trim)}. Trim less, look, and measure again.`],
      off: (say) => isSaid(say) ? ["Set the width beside what is to stay: there is nothing over."] : ["Width now, less what is to stay by your own sheet. The printed widths are there to be compared, not to be used."],
      inverse: (say, { text }) => [`If ${text} were to be left. The sheet says ${say.of("targetMm")}.`],
    },
  },
  inverseOf: "targetMm",
};
