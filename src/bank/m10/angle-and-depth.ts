import { withUnit } from "../../engine/quantity/format.ts";
import { compareOnGrid } from "../../engine/quantity/grid.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { needAlongMm } from "../../engine/repair/need-along-mm.ts";
import { given, LINE_SAYS } from "./aimed-line.ts";
import { AGES, CHILDREN, childIn } from "./needle-words.ts";

const NEED = { key: "needMm", unit: "mm", least: 4, greatest: 9, step: 0.1 } as const;
const DEEP = { key: "deepMm", unit: "mm", least: 9, greatest: 15, step: 0.5 } as const;
const ASIDE = { key: "asideMm", unit: "mm", least: 1.5, greatest: 4, step: 0.5 } as const;
const RADIUS = { key: "vesselRadiusMm", unit: "mm", least: 2, greatest: 3, step: 0.1 } as const;
const MARGIN = { key: "marginMm", unit: "mm", least: 1, greatest: 2, step: 0.5 } as const;
const TILT = { key: "tiltDeg", unit: "deg", least: 5, greatest: 24, step: 1 } as const;
const RADIANS = Math.PI / 180;
/** How much of the vessel with its margin a straight line must still meet, so that a tilt has something to come nearer to. */
const OVERLAP_MM = 0.5;

/** Depth along a line tilted towards the vessel at which the margin to its wall is used up: where the line enters the circle of radius and margin. */
const limitMm = (givens: Givens, tiltDeg: number): number => {
  const tilt = tiltDeg * RADIANS;
  const along = given(givens, "deepMm") * Math.cos(tilt) + given(givens, "asideMm") * Math.sin(tilt);
  const across = given(givens, "asideMm") * Math.cos(tilt) - given(givens, "deepMm") * Math.sin(tilt);
  const kept = given(givens, "vesselRadiusMm") + given(givens, "marginMm");
  return along - Math.sqrt(Math.max(0, kept * kept - across * across));
};

const leastOf = (givens: Givens, tiltDeg = given(givens, "tiltDeg")): number => needAlongMm({ needMm: given(givens, "needMm"), tiltDeg });
/** The limit of a needle that stands square: a tilted one meets the vessel earlier. */
const squareMm = (givens: Givens): number => limitMm(givens, 0);
const greatestOf = (givens: Givens): number => limitMm(givens, given(givens, "tiltDeg"));

const solve = (givens: Givens): Solution => {
  const leastMm = leastOf(givens);
  const greatestMm = greatestOf(givens);
  return compareOnGrid(leastMm, greatestMm) > 0 ? { says: "none" } : { leastMm, greatestMm };
};

const KEYS = ["needMm", "deepMm", "asideMm", "vesselRadiusMm", "marginMm", "tiltDeg"];
const givensOf = (say: Say): Givens => Object.fromEntries(KEYS.map((key) => [key, say.value(key)]));
/** Two decimals, so that the rounding that is asked can be seen. */
const fine = (value: number): string => withUnit(value.toFixed(2), "mm");
const exactLeast = (say: Say): string => fine(leastOf(givensOf(say)));
const exactGreatest = (say: Say): string => fine(greatestOf(givensOf(say)));
const square = (say: Say): string => fine(squareMm(givensOf(say)));
const least = (say: Say): string => withUnit(asAsked(leastOf(givensOf(say)), 0.1, "up"), "mm");
const greatest = (say: Say): string => withUnit(asAsked(greatestOf(givensOf(say)), 0.1, "down"), "mm");
const isNone = (say: Say): boolean => typeof say.answer["says"] === "string";

/** 10l: what a tilt does to the need and to the limit. */
export const angleAndDepth: SumFamily = {
  kind: "sum",
  id: "angle-and-depth",
  code: "10l",
  module: "M10",
  version: 1,
  firstWave: false,
  unsafe: true,
  objectives: ["m10-least"],
  reads: [],
  sources: [],
  cautions: ["C2"],
  givens: [NEED, DEEP, ASIDE, RADIUS, MARGIN, TILT],
  asks: [
    { id: "leastMm", unit: "mm", roundTo: 0.1, rounding: "up", safeSide: "up" },
    { id: "greatestMm", unit: "mm", roundTo: 0.1, rounding: "down", safeSide: "down" },
  ],
  draw: (chance) => {
    const vesselRadiusMm = chance.onGrid(RADIUS);
    const marginMm = chance.onGrid(MARGIN);
    const farthest = Math.floor((vesselRadiusMm + marginMm - OVERLAP_MM) / ASIDE.step) * ASIDE.step;
    const asideMm = chance.onGrid({ ...ASIDE, greatest: Math.min(ASIDE.greatest, farthest) });
    const deepMm = chance.onGrid(DEEP);
    // The tilt goes towards the vessel and not past its middle: there a tilt always brings the vessel nearer.
    const towards = Math.floor(Math.atan(asideMm / deepMm) / RADIANS);
    const tiltDeg = TILT.least + chance.below(towards - TILT.least + 1);
    return { givens: { needMm: chance.onGrid(NEED), deepMm, asideMm, vesselRadiusMm, marginMm, tiltDeg }, about: { child: chance.pick(CHILDREN), age: chance.pick(AGES) } };
  },
  solve,
  slips: [
    { id: "times-the-cosine", gives: ({ givens }) => ({ leastMm: given(givens, "needMm") * Math.cos(given(givens, "tiltDeg") * RADIANS), greatestMm: greatestOf(givens) }) },
    { id: "limit-over-the-cosine", gives: ({ givens }) => ({ leastMm: leastOf(givens), greatestMm: squareMm(givens) / Math.cos(given(givens, "tiltDeg") * RADIANS) }) },
    { id: "tilt-forgotten", gives: ({ givens }) => ({ leastMm: given(givens, "needMm"), greatestMm: squareMm(givens) }) },
  ],
  words: {
    en: {
      title: "A tilted needle",
      stems: [
        (say) => [`The needle for ${childIn(say)} does not go square through the capsule: it is tilted towards the vessel. Depths are read from the entry; the capsule lies flat across, the vessel is round. All sizes are of the model.`],
        (say) => [`Tilt changes two things in two ways. In the model of the knee of ${childIn(say)} the capsule is a flat layer and the vessel a round one, and the needle leans towards it.`],
        (say) => [`From the portal the needle for ${childIn(say)} can only come tilted, towards the vessel. What must be passed is flat, what must not be met is round.`],
      ],
      question: "Which depths along the tilted needle are left? Give the least, rounded up, and the greatest, rounded down, to a tenth of a millimetre, or say that there is none.",
      givens: { needMm: "Needed square from the entry through the capsule, assumed", deepMm: "Centre of the vessel, straight ahead", asideMm: "Centre of the vessel, to the side of the tilt", vesselRadiusMm: "Radius of the vessel, assumed", marginMm: "Margin to keep", tiltDeg: "Tilt towards the vessel" },
      asks: { leastMm: "Least depth", greatestMm: "Greatest depth" },
      says: LINE_SAYS,
      slips: {
        "times-the-cosine": { name: "cosine multiplied", because: (say) => [`A slanting way through a flat layer is longer, not shorter: ${say.of("needMm")} are divided by the cosine. Multiplied, the anchor may open inside the joint.`] },
        "limit-over-the-cosine": { name: "limit divided by the cosine", because: (say) => [`Dividing moves the limit away. But a round vessel is met earlier than a flat wall: square at ${square(say)}, tilted already at ${exactGreatest(say)}.`] },
        "tilt-forgotten": { name: "tilt forgotten", because: (say) => [`At ${say.of("tiltDeg")} the need grows from ${say.of("needMm")} to ${exactLeast(say)}, and the limit comes nearer, from ${square(say)} to ${exactGreatest(say)}.`] },
      },
      working: (say) => [
        `Need along the needle: ${say.bare("needMm")} ÷ cos ${say.of("tiltDeg")} = ${exactLeast(say)}, rounded up`,
        `Limit: where the tilted line comes within ${say.bare("vesselRadiusMm")} + ${say.bare("marginMm")} of the centre: ${exactGreatest(say)}, rounded down`,
        isNone(say) ? "The need ends behind the limit: no depth on this line." : "Every depth between them is left.",
      ],
      right: (say) => isNone(say) ? [`The need is ${exactLeast(say)}, the limit ${exactGreatest(say)}: no depth meets both. Choose a portal from which the needle stands straighter, or another technique.`] : [`From ${least(say)} to ${greatest(say)}. The flat layer asks for more, the round vessel allows less: a tilt costs at both ends.`],
      off: () => ["Treat the two ends apart: divide the flat layer by the cosine, and find where the tilted line comes within radius and margin of the vessel’s centre."],
      turns: (say) => isNone(say) ? ["With less tilt the need shrinks and the limit moves away. Whether that is enough is another sum."] : [`At a need of more than ${exactGreatest(say)} along the needle the window closes.`],
      inverse: () => [],
    },
  },
};
