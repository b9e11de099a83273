import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerValue, given, HOSPITALS } from "../m01/common.ts";
import { STITCH_SAYS } from "./stitch-words.ts";

const WHOLE = { unit: "pieces", step: 1 } as const;
const OPENED = { key: "opened", ...WHOLE, least: 3, greatest: 13 } as const;
const LEFT_IN = { key: "leftIn", ...WHOLE, least: 2, greatest: 8 } as const;
/** Opened and not needed after all, and how many are many: a repair that drops or spares more is another story. */
const MOST_SPARE = 2;
const MANY = 4;
const DROPPED = { key: "dropped", ...WHOLE, least: 1, greatest: 3 } as const;

const at = (givens: Givens) => ({ opened: given(givens, "opened"), leftIn: given(givens, "leftIn"), dropped: given(givens, "dropped") });
const solved = (givens: Givens): Readonly<Record<string, number>> => ({ wasted: at(givens).opened - at(givens).leftIn, reorder: at(givens).opened });
const value = (say: Say, id: string): string => String(answerValue(say, id));

/** 11j: what was opened, what stayed in the knee, what is waste, what is ordered again. */
export const openVsUsed: SumFamily = {
  kind: "sum",
  id: "open-vs-used",
  code: "11j",
  module: "M11",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m11-count"],
  reads: [],
  sources: [],
  cautions: ["C5", "C7"],
  givens: [OPENED, LEFT_IN, DROPPED],
  asks: [
    { id: "wasted", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "reorder", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const leftIn = chance.onGrid(LEFT_IN);
    const dropped = chance.onGrid({ ...DROPPED, greatest: leftIn > MANY ? DROPPED.greatest : DROPPED.greatest - 1 });
    const spare = chance.below(MOST_SPARE + 1);
    return { givens: { opened: leftIn + dropped + spare, leftIn, dropped }, about: { hospital: chance.pick(HOSPITALS), implant: chance.pick(["anchors", "implants"]) } };
  },
  solve: solved,
  slips: [
    { id: "dropped-as-used", gives: ({ givens }) => ({ ...solved(givens), wasted: at(givens).opened - at(givens).leftIn - at(givens).dropped }) },
    { id: "only-the-dropped", gives: ({ givens }) => (at(givens).opened - at(givens).leftIn === at(givens).dropped ? null : { ...solved(givens), wasted: at(givens).dropped }) },
    { id: "used-ones-ordered", gives: ({ givens }) => ({ ...solved(givens), reorder: at(givens).leftIn }) },
    { id: "dropped-ordered-twice", gives: ({ givens }) => ({ ...solved(givens), reorder: at(givens).opened + at(givens).dropped }) },
  ],
  words: {
    en: {
      title: "Opened, used, dropped",
      stems: [
        (say) => [`At ${say.about("hospital")} the ${say.about("implant")} of one repair are reckoned up. Some stayed in the knee, some fell, and what else was opened was not needed. All are single-use.`],
        (say) => [`End of a repair at ${say.about("hospital")}: ${say.about("implant")} opened, left in the knee and dropped. What is opened cannot go back on the shelf.`],
        (say) => [`The record wants what stayed in the knee, the store wants what left the shelf. ${say.about("hospital")}, one repair, ${say.about("implant")}.`],
      ],
      question: "How many go to waste, and how many are ordered again to fill the shelf?",
      givens: { opened: "Opened", leftIn: "Left in the knee", dropped: "Dropped, among the opened" },
      asks: { wasted: "Waste", reorder: "To be ordered again" },
      says: { ...STITCH_SAYS, none: "Nothing was opened" },
      slips: {
        "dropped-as-used": { name: "dropped ones counted as used", because: () => ["A dropped one is not in the knee. Counted as used, the count at the end does not agree and the record names an implant that is not there."] },
        "only-the-dropped": { name: "only the dropped ones", because: () => ["What was opened and not needed is waste as well. Single-use means once, and opening is the once."] },
        "used-ones-ordered": { name: "only used ones ordered", because: () => ["The shelf lost all that were opened, used or not."] },
        "dropped-ordered-twice": { name: "dropped ones ordered twice", because: () => ["The dropped ones are among the opened already. They left the shelf once."] },
      },
      working: (say) => [`Waste: ${say.bare("opened")} − ${say.bare("leftIn")} = ${value(say, "wasted")}`, `To be ordered again: all that were opened, ${value(say, "reorder")}`],
      right: (say) => [`${value(say, "wasted")} to waste, ${value(say, "reorder")} to be ordered, and ${say.bare("leftIn")} labels in the record.`],
      off: () => ["Opened is what left the shelf. What is not in the knee is waste, for whatever reason."],
      inverse: () => [],
      turns: () => ["One fewer opened, with the same number in the knee, is one fewer to waste and one fewer to order."],
    },
  },
};
