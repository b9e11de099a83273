import { distanceForWidthMm } from "../../engine/optics/distance-for-width-mm.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerIn, CHILDREN, FIELD, FIELD_LABEL, given, halfTangent, HOSPITALS, isField, measure, PICTURE_SAYS, radians } from "./optics-words.ts";

const WIDTH = { key: "widthMm", unit: "mm", least: 10, greatest: 24, step: 0.5 } as const;

const solved = (givens: Givens): Solution => {
  const [widthMm, fieldDeg] = [given(givens, "widthMm"), given(givens, "fieldDeg")];
  return isField(fieldDeg) && widthMm > 0 ? { distanceMm: distanceForWidthMm({ widthMm, fieldDeg }) } : { says: "cannot-be-told" };
};
const over = ({ givens }: { givens: Givens }, divisor: number): Solution => ({ distanceMm: given(givens, "widthMm") / divisor });
const distance = (say: Say): string => measure(answerIn(say, "distanceMm"), "mm");

/** 03b: how far the scope must stand back to show a width. */
export const backOff: SumFamily = {
  kind: "sum",
  id: "back-off",
  code: "03b",
  module: "M03",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m03-field"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [WIDTH, FIELD],
  asks: [{ id: "distanceMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({
    givens: { widthMm: chance.onGrid(WIDTH), fieldDeg: chance.onGrid(FIELD) },
    about: { child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS), thing: chance.pick(["the tear", "the whole posterior horn", "the cartilage defect", "the loose piece and its bed"]) },
    origins: { fieldDeg: { from: "local" } },
  }),
  solve: solved,
  slips: [
    { id: "whole-for-half", gives: ({ givens }) => over({ givens }, Math.tan(radians(given(givens, "fieldDeg") / 2))) },
    { id: "whole-angle", gives: ({ givens }) => (given(givens, "fieldDeg") !== 90 ? over({ givens }, 2 * Math.tan(radians(given(givens, "fieldDeg")))) : null) },
    // At 120° twice the sine is the tangent: nobody could tell this from half the width.
    { id: "sine-for-tangent", gives: ({ givens }) => (given(givens, "fieldDeg") === 120 ? null : over({ givens }, 2 * Math.sin(radians(given(givens, "fieldDeg") / 2)))) },
    { id: "radians-for-degrees", gives: ({ givens }) => over({ givens }, 2 * Math.tan(given(givens, "fieldDeg") / 2)) },
    { id: "multiplied", gives: ({ givens }) => ({ distanceMm: 2 * given(givens, "widthMm") * Math.tan(radians(given(givens, "fieldDeg") / 2)) }) },
  ],
  inverseOf: "widthMm",
  words: {
    en: {
      title: "How far to stand back",
      stems: [
        (say) => [`You want ${say.about("thing")} in the knee of ${say.about("child")} in one picture, from edge to edge. The scope looks squarely at it.`],
        (say) => [`${say.about("thing").charAt(0).toUpperCase()}${say.about("thing").slice(1)} in the knee of ${say.about("child")} is to fill the picture, just so. The scope stands square to it.`],
        (say) => [`In the knee of ${say.about("child")} the picture is to take in ${say.about("thing")} and no more. How far away must the view open, with the scope square to it?`],
      ],
      question: "At what distance does the picture show just that width? To the nearest tenth of a millimetre.",
      givens: { widthMm: "Width to be shown", fieldDeg: FIELD_LABEL },
      asks: { distanceMm: "Distance" },
      says: PICTURE_SAYS,
      slips: {
        "whole-for-half": { name: "whole width for half", because: () => ["From the middle to the edge is half the width. The whole width over the tangent puts you twice too far away."] },
        "whole-angle": { name: "whole angle", because: (say) => [`Half the width belongs to half of ${say.of("fieldDeg")}. The whole angle has another tangent.`] },
        "sine-for-tangent": { name: "sine for tangent", because: () => ["The sine would give the way along the edge of the view. The distance runs along its middle, so it is the tangent."] },
        "radians-for-degrees": { name: "degrees read as radians", because: () => ["Your calculator is in radians. Set it to degrees, and the wild value goes."] },
        multiplied: { name: "multiplied", because: () => ["That is how wide the picture would be at that many millimetres. You know the width and want the distance, so divide."] },
      },
      working: (say) => [`Half the angle: ${measure(say.value("fieldDeg") / 2, "deg")}, tangent ${halfTangent(say)}`, `${say.bare("widthMm")} ÷ (2 × ${halfTangent(say)}) = ${distance(say)}`],
      right: (say) => [`${distance(say)} back. Whether a small joint has so much room is another question; if not, look at it piece by piece.`],
      off: () => ["Half the width over the tangent of half the field."],
      inverse: (say, { text }) => [`If ${text} were to be shown. Here it is ${say.of("widthMm")}.`],
    },
  },
};
