import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import { answerText, CHILDREN, given, PERCENT, SIDES } from "../m01/common.ts";

const DEPTH = { key: "depthMm", unit: "mm", least: 1, greatest: 13, step: 0.1 } as const;
const WIDTH = { key: "widthMm", unit: "mm", least: 6, greatest: 14, step: 0.1 } as const;

const share = (givens: Givens): number => (PERCENT * given(givens, "depthMm")) / given(givens, "widthMm");

/** 09d: how far a radial tear reaches into the width of a meniscus. */
export const depthInWidth: SumFamily = {
  kind: "sum",
  id: "depth-in-width",
  code: "09d",
  module: "M09",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m09-length"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [DEPTH, WIDTH],
  asks: [{ id: "sharePercent", unit: "%", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const widthMm = chance.onGrid(WIDTH);
    return { givens: { depthMm: chance.onGrid({ ...DEPTH, greatest: Math.floor(widthMm - 1) }), widthMm }, about: { child: chance.pick(CHILDREN), side: chance.pick(SIDES), place: chance.pick(["body of the lateral meniscus", "posterior horn of the lateral meniscus", "body of the medial meniscus"]) } };
  },
  solve: (givens) => ({ sharePercent: share(givens) }),
  slips: [
    { id: "from-the-rim", gives: ({ givens }) => ({ sharePercent: PERCENT - share(givens) }) },
    { id: "upside-down", gives: ({ givens }) => ({ sharePercent: PERCENT ** 2 / share(givens) }) },
    { id: "against-the-rest", gives: ({ givens }) => ({ sharePercent: (PERCENT * given(givens, "depthMm")) / sumOnGrid(given(givens, "widthMm"), -given(givens, "depthMm")) }) },
  ],
  words: {
    en: {
      title: "How deep in the width",
      stems: [
        (say) => [`A radial tear in the ${say.about("place")}, ${say.about("side")} knee of ${say.about("child")}. It begins at the free edge; depth and whole width were measured at the same place.`],
        (say) => [`A radial tear cuts the fibres that hold the ring together, from the free edge outwards. ${say.about("child")}, ${say.about("side")} knee, ${say.about("place")}.`],
        (say) => [`In a small meniscus the same millimetres are a larger share. ${say.about("child")}, ${say.about("side")} knee: radial tear of the ${say.about("place")}, from the free edge.`],
      ],
      question: "What share of the width does the tear cross, from the free edge? To the nearest per cent.",
      givens: { depthMm: "Depth of the tear, from the free edge", widthMm: "Whole width of the meniscus there" },
      asks: { sharePercent: "Share of the width" },
      says: { none: "It crosses no width", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "from-the-rim": { name: "counted from the rim", because: () => ["That is what is left whole, at the rim. A radial tear is counted from the free edge, where it begins."] },
        "upside-down": { name: "upside down", because: () => ["The tear is a part of the width, so its share is below a hundred."] },
        "against-the-rest": { name: "against what is left", because: () => ["You set the tear against the whole part. A share is of the full width."] },
      },
      working: (say) => [`${say.bare("depthMm")} ÷ ${say.bare("widthMm")} = ${answerText(say, "sharePercent", { places: 0, unit: "%" })}`],
      right: (say) => [`${answerText(say, "sharePercent", { places: 0, unit: "%" })} of the width; the rest is the ring that still holds.`],
      off: () => ["Depth from the free edge above the line, the whole width below it."],
      inverse: (say, { text }) => [Number.parseFloat(text) > say.value("widthMm") ? `Never: the tear would be ${text} deep, and the meniscus is ${say.of("widthMm")} wide.` : `If the tear were ${text} deep. Here it is ${say.of("depthMm")}.`],
    },
  },
  inverseOf: "depthMm",
};
