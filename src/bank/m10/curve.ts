import { withUnit } from "../../engine/quantity/format.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { curvedReachMm } from "../../engine/repair/curved-reach-mm.ts";
import { given } from "./aimed-line.ts";
import { AGES, CHILDREN, childIn, DRAWING_SAYS } from "./needle-words.ts";

const RADIUS = { key: "curveRadiusMm", unit: "mm", least: 40, greatest: 150, step: 5 } as const;
const ARC = { key: "arcMm", unit: "mm", least: 10, greatest: 40, step: 1 } as const;

const reach = (givens: Givens) => {
  const { forwardMm, sideMm } = curvedReachMm({ curveRadiusMm: given(givens, "curveRadiusMm"), arcMm: given(givens, "arcMm") });
  return { forwardMm, sideMm };
};
const DEGREES = 180 / Math.PI;
/** What a calculator set to degrees makes of a turn in radians. */
const turnAsDegrees = (givens: Givens) => {
  const angle = given(givens, "arcMm") / given(givens, "curveRadiusMm") / DEGREES;
  return { forwardMm: given(givens, "curveRadiusMm") * Math.sin(angle), sideMm: given(givens, "curveRadiusMm") * (1 - Math.cos(angle)) };
};
const turn = (say: Say): string => (say.value("arcMm") / say.value("curveRadiusMm")).toFixed(3);
const number = (say: Say, id: string): string => withUnit(Number((say.answer as Record<string, number>)[id] ?? 0).toFixed(1), "mm");

/** 10m: where a curved needle ends. */
export const curve: SumFamily = {
  kind: "sum",
  id: "curve",
  code: "10m",
  module: "M10",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m10-closest"],
  reads: [],
  sources: [],
  cautions: ["C2"],
  givens: [RADIUS, ARC],
  asks: [
    { id: "forwardMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
    { id: "sideMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => ({ givens: { curveRadiusMm: chance.onGrid(RADIUS), arcMm: chance.onGrid(ARC) }, about: { child: chance.pick(CHILDREN), age: chance.pick(AGES) } }),
  solve: reach,
  slips: [
    { id: "taken-for-straight", gives: ({ givens }) => ({ forwardMm: given(givens, "arcMm"), sideMm: 0 }) },
    { id: "turn-taken-as-degrees", gives: ({ givens }) => turnAsDegrees(givens) },
    { id: "ends-exchanged", gives: ({ givens }) => ({ forwardMm: reach(givens).sideMm, sideMm: reach(givens).forwardMm }) },
    { id: "doubled-shift", gives: ({ givens }) => ({ forwardMm: reach(givens).forwardMm, sideMm: 2 * reach(givens).sideMm }) },
  ],
  words: {
    en: {
      title: "A curved needle",
      stems: [
        (say) => [`The needle for ${childIn(say)} is bent to an even curve. From where the curve begins it is pushed out by the length below.`],
        (say) => [`In the knee of ${childIn(say)} a curved needle leaves its straight guide. It follows its own circle, not your eye.`],
        (say) => [`A curve helps to go round something, and it moves the tip where you do not look. One stitch for ${childIn(say)} with the curve below.`],
      ],
      question: "How far forward and how far to the side does the tip stand? To the nearest tenth of a millimetre.",
      givens: { curveRadiusMm: "Radius of the curve", arcMm: "Length pushed out, along the curve" },
      asks: { forwardMm: "Forward", sideMm: "To the side" },
      says: { ...DRAWING_SAYS, none: "No reach with this needle" },
      slips: {
        "taken-for-straight": { name: "taken for straight", because: (say) => [`Along the curve it is ${say.of("arcMm")}, but the tip stands ${number(say, "sideMm")} beside the straight line. Anything that lies there is met without being seen.`] },
        "turn-taken-as-degrees": { name: "turn read as degrees", because: (say) => [`Length over radius is a turn in radians: ${turn(say)} of them, about ${Math.round((DEGREES * say.value("arcMm")) / say.value("curveRadiusMm"))} degrees. Taken as degrees the needle would hardly leave its place.`] },
        "ends-exchanged": { name: "forward and side exchanged", because: () => ["Forward goes with the sine of the turn, to the side with one less its cosine."] },
        "doubled-shift": { name: "shift doubled", because: () => ["The shift is the radius times one less the cosine of the whole turn; it is not counted on both sides."] },
      },
      working: (say) => [
        `Turn: ${say.bare("arcMm")} ÷ ${say.bare("curveRadiusMm")} = ${turn(say)} radians`,
        `Forward: ${say.bare("curveRadiusMm")} × sine of the turn = ${number(say, "forwardMm")}`,
        `To the side: ${say.bare("curveRadiusMm")} × (1 − cosine of the turn) = ${number(say, "sideMm")}`,
      ],
      right: (say) => [`The tip stands ${number(say, "forwardMm")} forward and ${number(say, "sideMm")} to the side. The wider the curve, the straighter the needle.`],
      off: () => ["Length over radius is the turn in radians. Sine for forward, one less cosine for the side."],
      turns: () => ["The shift to the side grows nearly with the square of the length: twice as far out is nearly four times as far aside."],
      inverse: () => [],
    },
  },
};
