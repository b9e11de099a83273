import { withUnit } from "../../engine/quantity/format.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { aimErrorMm } from "../../engine/repair/aim-error-mm.ts";
import { given } from "./aimed-line.ts";
import { AGES, CHILDREN, childIn, DRAWING_SAYS } from "./needle-words.ts";

const PATH = { key: "pathMm", unit: "mm", least: 30, greatest: 70, step: 1 } as const;
const ERROR = { key: "errorDeg", unit: "deg", least: 2, greatest: 10, step: 1 } as const;
const CLEAR = { key: "clearMm", unit: "mm", least: 3, greatest: 12, step: 0.5 } as const;

const missOf = (givens: Givens, errorDeg = given(givens, "errorDeg")): number => aimErrorMm({ pathMm: given(givens, "pathMm"), errorDeg });
const both = (givens: Givens, missMm: number) => ({ missMm, leftMm: given(givens, "clearMm") - missMm });
const number = (say: Say, id: string): string => withUnit(Number((say.answer as Record<string, number>)[id] ?? 0).toFixed(1), "mm");

const isPast = (say: Say): boolean => ((say.answer as Record<string, number>)["leftMm"] ?? 0) < 0;

/** 10h: the miss to the side of a line aimed a little wrong, and what is left of the clearance. */
export const aimError: SumFamily = {
  kind: "sum",
  id: "aim-error",
  code: "10h",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m10-angle"],
  reads: [],
  sources: [],
  cautions: ["C2"],
  givens: [PATH, ERROR, CLEAR],
  asks: [
    { id: "missMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
    { id: "leftMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => ({ givens: { pathMm: chance.onGrid(PATH), errorDeg: chance.onGrid(ERROR), clearMm: chance.onGrid(CLEAR) }, about: { child: chance.pick(CHILDREN), age: chance.pick(AGES) } }),
  solve: (givens) => both(givens, missOf(givens)),
  slips: [
    { id: "degrees-as-a-share", gives: ({ givens }) => both(givens, (given(givens, "pathMm") * given(givens, "errorDeg")) / 100) },
    { id: "degrees-as-radians", gives: ({ givens }) => both(givens, given(givens, "pathMm") * given(givens, "errorDeg")) },
    { id: "half-the-angle", gives: ({ givens }) => both(givens, missOf(givens, given(givens, "errorDeg") / 2)) },
    { id: "miss-added", gives: ({ givens }) => ({ missMm: missOf(givens), leftMm: given(givens, "clearMm") + missOf(givens) }) },
  ],
  words: {
    en: {
      title: "Aimed a little wrong",
      stems: [
        (say) => [`In the knee of ${childIn(say)} the needle goes from portal to target. In the plan it passes the nerve with the clearance below. The hand is off by the angle below, towards the nerve.`],
        (say) => [`No hand holds an angle exactly. For ${childIn(say)} you ask what a small error does at the far end, when it goes towards the nerve.`],
        (say) => [`The plan for ${childIn(say)} is drawn with a ruler; the needle is held by a person. Path, clearance and error of aim are below, and the error goes towards the nerve.`],
      ],
      question: "How far does the needle miss to the side, and how much clearance is left? To the nearest tenth of a millimetre; past the nerve is below 0.",
      givens: { pathMm: "Portal to target, along the needle", errorDeg: "Error of the aim, towards the nerve", clearMm: "Clearance to the nerve in the plan" },
      asks: { missMm: "Miss to the side", leftMm: "Clearance left" },
      says: { ...DRAWING_SAYS, none: "No miss on this line" },
      slips: {
        "degrees-as-a-share": { name: "degrees taken for per cent", because: (say) => [`${say.of("errorDeg")} are not ${say.bare("errorDeg")} per cent of the way. The miss is the path times the tangent of the angle.`] },
        "degrees-as-radians": { name: "degrees taken for radians", because: () => ["A wild value: the angle went into the product as it stands. A radian is some 57 degrees."] },
        "half-the-angle": { name: "angle halved", because: () => ["The error is measured from the planned line to the real one; there is nothing to halve."] },
        "miss-added": { name: "miss added to the clearance", because: (say) => [`The needle goes towards the nerve, so the miss of ${number(say, "missMm")} is taken away from ${say.of("clearMm")}.`] },
      },
      working: (say) => [
        `Miss: ${say.of("pathMm")} × tan ${say.of("errorDeg")} = ${number(say, "missMm")}`,
        `Left: ${say.of("clearMm")} − ${number(say, "missMm")} = ${number(say, "leftMm")}`,
      ],
      right: (say) => [`${say.of("errorDeg")} at the portal are ${number(say, "missMm")} at the target. A short path forgives more than a long one.${isPast(say) ? " Here the error is larger than the clearance: the needle would meet the nerve." : ""}`],
      off: () => ["Draw the two lines from the portal: the planned one and the real one. Their gap at the target is the path times the tangent of the angle."],
      turns: (say) => [`The clearance is used up where the path times the tangent reaches ${say.of("clearMm")}. Shorten the path, or plan with more room.`],
      inverse: () => [],
    },
  },
};
