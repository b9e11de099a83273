import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerValue, given } from "../m01/common.ts";
import { CASE_ABOUT, caseOf, STITCH_SAYS } from "./stitch-words.ts";

const STITCHES = { key: "stitches", unit: "pieces", least: 3, greatest: 11, step: 1 } as const;

const faces = (start: string | undefined, first: number, second: number): Readonly<Record<string, number>> =>
  start === "lower" ? { upper: second, lower: first } : { upper: first, lower: second };
const solved = (givens: Givens, about: Draw["about"]): Readonly<Record<string, number>> => {
  const stitches = given(givens, "stitches");
  return faces(about["start"], Math.ceil(stitches / 2), Math.floor(stitches / 2));
};
const isOdd = (givens: Givens): boolean => given(givens, "stitches") % 2 === 1;
const value = (say: Say, id: string): string => String(answerValue(say, id));

/** 11d: how many stitches on each face when they alternate. */
export const bothFaces: SumFamily = {
  kind: "sum",
  id: "both-faces",
  code: "11d",
  module: "M11",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m11-count"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [STITCHES],
  asks: [
    { id: "upper", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "lower", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => ({ givens: { stitches: chance.onGrid(STITCHES) }, about: { ...CASE_ABOUT(chance), start: chance.pick(["upper", "lower"]) } }),
  solve: solved,
  slips: [
    { id: "equal-halves", gives: ({ givens, about }) => (isOdd(givens) ? faces(about["start"], Math.floor(given(givens, "stitches") / 2), Math.floor(given(givens, "stitches") / 2)) : null) },
    { id: "began-on-the-other", gives: ({ givens, about }) => (isOdd(givens) ? faces(about["start"], Math.floor(given(givens, "stitches") / 2), Math.ceil(given(givens, "stitches") / 2)) : null) },
    { id: "all-on-each", gives: ({ givens }) => ({ upper: given(givens, "stitches"), lower: given(givens, "stitches") }) },
    { id: "all-on-the-first", gives: ({ givens, about }) => faces(about["start"], given(givens, "stitches"), 0) },
  ],
  words: {
    en: {
      title: "Both faces",
      stems: [
        (say) => [`${caseOf(say)} The stitches alternate between the upper and the lower face, so that the tear is not pulled to one side. The first goes on the ${say.about("start")} face.`],
        (say) => [`${caseOf(say)} Upper and lower face take turns; the ${say.about("start")} face begins.`],
        (say) => [`Stitched on one face only, the other opens. ${caseOf(say)} Faces alternate, beginning with the ${say.about("start")} one.`],
      ],
      question: "How many stitches lie on the upper and how many on the lower face?",
      givens: { stitches: "Stitches in all" },
      asks: { upper: "Upper face", lower: "Lower face" },
      says: STITCH_SAYS,
      slips: {
        "equal-halves": { name: "equal halves of an odd number", because: (say) => [`${say.bare("stitches")} is odd: one stitch got lost in halving. The face that begins has one more.`] },
        "began-on-the-other": { name: "began on the other face", because: (say) => [`The ${say.about("start")} face begins, and with an odd number it also ends.`] },
        "all-on-each": { name: "each stitch counted on both faces", because: () => ["A stitch lies on one face here. Counted on both, there are twice as many as were opened."] },
        "all-on-the-first": { name: "no turns taken", because: () => ["They alternate. All on one face would leave the other edge open."] },
      },
      working: (say) => [`The face that begins: ${say.bare("stitches")} ÷ 2, rounded up; the other: rounded down.`, `Upper ${value(say, "upper")}, lower ${value(say, "lower")}`],
      right: (say) => [`${value(say, "upper")} above, ${value(say, "lower")} below, ${say.bare("stitches")} together.`],
      off: () => ["Half of them on each face; where one is left over, the face that began has it."],
      inverse: () => [],
      turns: (say) => [`One stitch more would go on the ${(say.value("stitches") % 2 === 0) === (say.about("start") === "upper") ? "upper" : "lower"} face.`],
    },
  },
};
