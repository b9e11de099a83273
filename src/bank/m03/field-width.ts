import { fieldWidthMm } from "../../engine/optics/field-width-mm.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerIn, CHILDREN, DISTANCE, drawDistance, FIELD, FIELD_LABEL, given, halfTangent, HOSPITALS, isField, measure, PICTURE_SAYS, radians } from "./optics-words.ts";

const solved = (givens: Givens): Solution => {
  const [distanceMm, fieldDeg] = [given(givens, "distanceMm"), given(givens, "fieldDeg")];
  return isField(fieldDeg) && distanceMm > 0 ? { widthMm: fieldWidthMm({ distanceMm, fieldDeg }) } : { says: "cannot-be-told" };
};
const times = ({ givens }: { givens: Givens }, factor: number): Solution => ({ widthMm: given(givens, "distanceMm") * factor });
const width = (say: Say): string => measure(answerIn(say, "widthMm"), "mm");

/** 03a: how wide the round is that the picture shows at a distance. */
export const fieldWidth: SumFamily = {
  kind: "sum",
  id: "field-width",
  code: "03a",
  module: "M03",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m03-field"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [FIELD, DISTANCE],
  asks: [{ id: "widthMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const fieldDeg = chance.onGrid(FIELD);
    return {
      givens: { fieldDeg, distanceMm: drawDistance(chance, fieldDeg) },
      about: { child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS), thing: chance.pick(["the front of the condyle", "the back of the patella", "the flat of the tibia"]) },
      origins: { fieldDeg: { from: "local" } },
    };
  },
  solve: solved,
  slips: [
    { id: "one-side-only", gives: ({ givens }) => times({ givens }, Math.tan(radians(given(givens, "fieldDeg") / 2))) },
    { id: "whole-angle", gives: ({ givens }) => (given(givens, "fieldDeg") !== 90 ? times({ givens }, 2 * Math.tan(radians(given(givens, "fieldDeg")))) : null) },
    // At 120° twice the sine is the tangent: nobody could tell this from half the width.
    { id: "sine-for-tangent", gives: ({ givens }) => (given(givens, "fieldDeg") === 120 ? null : times({ givens }, 2 * Math.sin(radians(given(givens, "fieldDeg") / 2)))) },
    { id: "radians-for-degrees", gives: ({ givens }) => times({ givens }, 2 * Math.tan(given(givens, "fieldDeg") / 2)) },
    { id: "arc-for-width", gives: ({ givens }) => times({ givens }, radians(given(givens, "fieldDeg"))) },
  ],
  inverseOf: "distanceMm",
  words: {
    en: {
      title: "How wide is the view",
      stems: [
        (say) => [`In the knee of ${say.about("child")} the scope looks squarely at ${say.about("thing")}. The distance counts from the point where the view opens.`],
        (say) => [`You see ${say.about("thing")} in the knee of ${say.about("child")} as a round. The scope stands square to it, as far away as printed, counted from where the view opens.`],
        (say) => [`“How much of it do we see from here?” The scope stands before ${say.about("thing")} in the knee of ${say.about("child")}, square to it.`],
      ],
      question: "How wide is the round that the picture shows there? To the nearest tenth of a millimetre.",
      givens: { fieldDeg: FIELD_LABEL, distanceMm: "Distance" },
      asks: { widthMm: "Width seen" },
      says: PICTURE_SAYS,
      slips: {
        "one-side-only": { name: "one side only", because: () => ["That is from the middle of the picture to its edge. The round has two such halves."] },
        "whole-angle": { name: "whole angle", because: (say) => [`The triangle from the middle to the edge holds half of ${say.of("fieldDeg")}, not all of it.`] },
        "sine-for-tangent": { name: "sine for tangent", because: (say) => [`${say.of("distanceMm")} lie along the middle of the view, not along its edge. Half the width over that distance is the tangent.`] },
        "radians-for-degrees": { name: "degrees read as radians", because: () => ["Your calculator is in radians. Set it to degrees, and the wild value goes."] },
        "arc-for-width": { name: "arc for a width", because: () => ["Distance times angle is the length along a curved wall. What you look at is taken as flat, and the flat round is wider."] },
      },
      working: (say) => [`Half the angle: ${measure(say.value("fieldDeg") / 2, "deg")}, tangent ${halfTangent(say)}`, `2 × ${say.bare("distanceMm")} × ${halfTangent(say)} = ${width(say)}`],
      right: (say) => [`${width(say)} at ${say.of("distanceMm")}. Twice as far is twice as wide, and every detail half as large.`],
      off: () => ["Half the field, its tangent, times the distance, twice."],
      inverse: (say, { text }) => [`If the distance were ${text}. It is ${say.of("distanceMm")}.`],
    },
  },
};
