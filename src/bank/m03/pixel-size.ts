import { pixelSizeMm } from "../../engine/optics/pixel-size-mm.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerIn, DISTANCE, drawDistance, FIELD, FIELD_LABEL, given, halfTangent, HOSPITALS, isField, measure, PICTURE_SAYS } from "./optics-words.ts";

const ACROSS = { key: "acrossPx", unit: "pieces", least: 400, greatest: 1080, step: 20 } as const;

const sizesOf = (givens: Givens): Record<"pixelMm" | "detailMm", number> => {
  const [acrossPx, fieldDeg, distanceMm] = [given(givens, "acrossPx"), given(givens, "fieldDeg"), given(givens, "distanceMm")];
  const holds = isField(fieldDeg) && distanceMm > 0 && Number.isInteger(acrossPx) && acrossPx > 0;
  const { pixelMm, detailMm } = holds ? pixelSizeMm({ acrossPx, fieldDeg, distanceMm }) : { pixelMm: Number.NaN, detailMm: Number.NaN };
  return { pixelMm, detailMm };
};
const both = (pixelMm: number, detailMm = 2 * pixelMm): Solution => ({ pixelMm, detailMm });
const widthOf = (say: Say): string => measure(answerIn(say, "pixelMm") * say.value("acrossPx"), "mm", 2);
const shown = (say: Say, ask: string): string => measure(answerIn(say, ask), "mm", 3);

/** 03i: what one pixel covers at a distance, and the smallest detail that can show. */
export const pixelSize: SumFamily = {
  kind: "sum",
  id: "pixel-size",
  code: "03i",
  module: "M03",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m03-field"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [ACROSS, FIELD, DISTANCE],
  asks: [
    { id: "pixelMm", unit: "mm", roundTo: 0.001, rounding: "nearest", safeSide: "none" },
    { id: "detailMm", unit: "mm", roundTo: 0.001, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const fieldDeg = chance.onGrid(FIELD);
    return {
      givens: { acrossPx: chance.onGrid(ACROSS), fieldDeg, distanceMm: drawDistance(chance, fieldDeg) },
      about: { hospital: chance.pick(HOSPITALS), thing: chance.pick(["a fine crack in the cartilage", "a frayed edge", "a thread", "a small vessel"]) },
      origins: { fieldDeg: { from: "local" } },
    };
  },
  solve: (givens) => sizesOf(givens),
  slips: [
    { id: "one-pixel-is-enough", gives: ({ givens }) => both(sizesOf(givens).pixelMm, sizesOf(givens).pixelMm) },
    { id: "one-side-only", gives: ({ givens }) => both(sizesOf(givens).pixelMm / 2) },
    { id: "pixels-over-millimetres", gives: ({ givens }) => both(1 / sizesOf(givens).pixelMm) },
    { id: "all-pixels-of-the-picture", gives: ({ givens }) => both(sizesOf(givens).pixelMm / given(givens, "acrossPx")) },
  ],
  words: {
    en: {
      title: "What a pixel covers",
      stems: [
        (say) => [`A thin scope of ${say.about("hospital")} hospital has its camera at the tip. You wonder whether ${say.about("thing")} could show at the distance below, square to the view.`],
        (say) => [`The picture of a small scope at ${say.about("hospital")} hospital is round; its pixels across are counted below. Before you say that ${say.about("thing")} is not there, ask what can show at all.`],
        (say) => [`“I see no ${say.about("thing").replace(/^a /, "")}.” Could one be seen with this scope of ${say.about("hospital")} hospital, at the distance below and square to the view?`],
      ],
      question: "What does one pixel cover, and what is the smallest detail that two pixels can show? Both to the nearest thousandth of a millimetre, rounded only at the end.",
      givens: { acrossPx: "Pixels across the round picture", fieldDeg: FIELD_LABEL, distanceMm: "Distance" },
      asks: { pixelMm: "One pixel covers", detailMm: "Smallest detail of two pixels" },
      says: PICTURE_SAYS,
      slips: {
        "one-pixel-is-enough": { name: "one pixel taken as enough", because: () => ["A detail shows only against something beside it: one pixel for it, one for its neighbour. It takes two."] },
        "one-side-only": { name: "one side only", because: () => ["That divides half of the round by all of its pixels. The pixels are counted right across."] },
        "pixels-over-millimetres": { name: "pixels over millimetres", because: () => ["That is how many pixels a millimetre has. The question asks how many millimetres a pixel has."] },
        "all-pixels-of-the-picture": { name: "all pixels of the picture", because: (say) => [`${say.bare("acrossPx")} × ${say.bare("acrossPx")} pixels fill the whole picture, but a width is crossed by ${say.bare("acrossPx")} only.`] },
      },
      working: (say) => [
        `Width seen: 2 × ${say.bare("distanceMm")} × ${halfTangent(say)} = ${widthOf(say)}`,
        `÷ ${say.bare("acrossPx")} = ${measure(answerIn(say, "pixelMm"), "mm", 4)} for one pixel`,
        `× 2 = ${shown(say, "detailMm")}`,
      ],
      right: (say) => [`Nothing finer than ${shown(say, "detailMm")} can show from here, and the lens may do worse. Halve the distance and you halve it: go nearer before you say that nothing is there.`],
      off: () => ["The width seen at this distance, divided by the pixels across; two of them make a detail."],
      inverse: () => [],
      turns: (say) => [`At half the distance one pixel covers ${measure(answerIn(say, "pixelMm") / 2, "mm", 4)}. More pixels do the same, if the lens can follow.`],
    },
  },
};
