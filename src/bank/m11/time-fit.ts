import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerValue, counted, given, withPlaces } from "../m01/common.ts";
import { CASE_ABOUT, caseOf, STITCH_SAYS } from "./stitch-words.ts";

const MINUTES = { unit: "min", step: 1 } as const;
const STITCHES = { key: "stitches", unit: "pieces", least: 2, greatest: 7, step: 1 } as const;
const EACH = { key: "eachMin", ...MINUTES, least: 4, greatest: 10 } as const;
const SWAP = { key: "swapMin", ...MINUTES, least: 1, greatest: 3 } as const;
const LOOK = { key: "lookMin", ...MINUTES, least: 3, greatest: 8 } as const;
const LEFT = { key: "cuffLeftMin", ...MINUTES, least: 15, greatest: 75 } as const;

const need = (givens: Givens): number => given(givens, "stitches") * given(givens, "eachMin") + (given(givens, "stitches") - 1) * given(givens, "swapMin") + given(givens, "lookMin");
const spare = (givens: Givens): number => given(givens, "cuffLeftMin") - need(givens);
const saySpare = (say: Say): number => answerValue(say, "spareMin");

/** 11i: whether the planned stitches fit into what is left of the cuff time. */
export const timeFit: SumFamily = {
  kind: "sum",
  id: "time-fit",
  code: "11i",
  module: "M11",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m11-time"],
  reads: [],
  sources: [],
  cautions: ["C15"],
  givens: [STITCHES, EACH, SWAP, LOOK, LEFT],
  asks: [{ id: "spareMin", unit: "min", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const givens = { stitches: chance.onGrid(STITCHES), eachMin: chance.onGrid(EACH), swapMin: chance.onGrid(SWAP), lookMin: chance.onGrid(LOOK) };
    const needed = need(givens);
    const cuffLeftMin = Math.min(LEFT.greatest, Math.max(LEFT.least, needed - 12 + chance.below(30)));
    return { givens: { ...givens, cuffLeftMin }, about: CASE_ABOUT(chance), origins: { cuffLeftMin: { from: "local" } } };
  },
  solve: (givens) => ({ spareMin: spare(givens) }),
  slips: [
    { id: "swaps-left-out", gives: ({ givens }) => ({ spareMin: spare(givens) + (given(givens, "stitches") - 1) * given(givens, "swapMin") }) },
    { id: "look-left-out", gives: ({ givens }) => ({ spareMin: spare(givens) + given(givens, "lookMin") }) },
    { id: "one-swap-too-many", gives: ({ givens }) => ({ spareMin: spare(givens) - given(givens, "swapMin") }) },
    { id: "sign-turned", gives: ({ givens }) => (spare(givens) === 0 ? null : { spareMin: -spare(givens) }) },
  ],
  words: {
    en: {
      title: "Do they fit into the cuff time",
      stems: [
        (say) => [`${caseOf(say)} The plan is made: stitches, one change of needle or device between each two, and a last look. The cuff alarm of your hospital’s sheet leaves the time below.`],
        (say) => [`Before the first stitch the anaesthetist reads the cuff time aloud. ${caseOf(say)} Stitch, change, stitch, and a last look at the end; the sheet’s limit leaves the minutes below.`],
        (say) => [`A repair half done at the alarm is the worst of both. ${caseOf(say)} Between two stitches there is one change, after the last one a look; the limit is your hospital’s.`],
      ],
      question: "How many whole minutes are left over at the end? Negative where it does not fit.",
      givens: { stitches: "Stitches", eachMin: "For each stitch", swapMin: "For each change between two stitches", lookMin: "For the last look", cuffLeftMin: "Left until the alarm, your hospital’s sheet" },
      asks: { spareMin: "Minutes left over" },
      says: { ...STITCH_SAYS, none: "There is no time to speak of" },
      slips: {
        "swaps-left-out": { name: "changes left out", because: (say) => [`${counted(say.value("stitches") - 1, "change")} of ${say.of("swapMin")} each: missing from your sum. Nobody stitches without changing.`] },
        "look-left-out": { name: "last look left out", because: () => ["The last look is part of the repair. Left out of the plan, it is left out of the knee."] },
        "one-swap-too-many": { name: "one change too many", because: () => ["Changes lie between stitches: one fewer than stitches."] },
        "sign-turned": { name: "sign turned", because: () => ["The need is taken from what is left. Negative means that the alarm comes first."] },
      },
      working: (say) => [
        `Need: ${say.bare("stitches")} × ${say.bare("eachMin")} + ${say.value("stitches") - 1} × ${say.bare("swapMin")} + ${say.bare("lookMin")} = ${say.value("cuffLeftMin") - saySpare(say)} min`,
        `${say.bare("cuffLeftMin")} − ${say.value("cuffLeftMin") - saySpare(say)} = ${say.number(saySpare(say), 0)} min`,
      ],
      right: (say) => saySpare(say) < 0 ? [`It does not fit: ${withPlaces(-saySpare(say), 0, "min")} are missing. Say so now, and ask how the sheet goes on.`] : [`It fits with ${withPlaces(saySpare(say), 0, "min")} to spare, and only if nothing goes wrong.`],
      off: () => ["Stitches times minutes, one change fewer than stitches, the last look; take it all from what is left."],
      inverse: (say, { text }) => [`If ${text} were left until the alarm. Here it is ${say.of("cuffLeftMin")}.`],
    },
  },
  inverseOf: "cuffLeftMin",
};
