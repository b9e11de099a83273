import { withUnit } from "../../engine/quantity/format.ts";
import { compareOnGrid } from "../../engine/quantity/grid.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { needAlongMm } from "../../engine/repair/need-along-mm.ts";
import { given, LINE_SAYS } from "./aimed-line.ts";
import { AGES, CHILDREN, childOf } from "./needle-words.ts";

const NEED = { key: "needMm", unit: "mm", least: 4, greatest: 9, step: 0.1 } as const;
const DEEP = { key: "deepMm", unit: "mm", least: 9, greatest: 15, step: 0.5 } as const;
const ASIDE = { key: "asideMm", unit: "mm", least: 1, greatest: 4, step: 0.5 } as const;
const RADIUS = { key: "vesselRadiusMm", unit: "mm", least: 2, greatest: 3, step: 0.1 } as const;
const MARGIN = { key: "marginMm", unit: "mm", least: 1, greatest: 2, step: 0.5 } as const;
const TILT = { key: "tiltDeg", unit: "deg", least: 5, greatest: 30, step: 1 } as const;
const RADIANS = Math.PI / 180;
const CLOSEST_SHARE = 0.9;

/** Depth along a line tilted towards the vessel at which the margin to its wall is used up; null where the line passes it by. */
const meetsMm = (givens: Givens, tiltDeg: number): number | null => {
  const tilt = tiltDeg * RADIANS;
  const along = given(givens, "deepMm") * Math.cos(tilt) + given(givens, "asideMm") * Math.sin(tilt);
  const across = given(givens, "asideMm") * Math.cos(tilt) - given(givens, "deepMm") * Math.sin(tilt);
  const kept = given(givens, "vesselRadiusMm") + given(givens, "marginMm");
  return Math.abs(across) < kept ? along - Math.sqrt(kept * kept - across * across) : null;
};

const leastOf = (givens: Givens, tiltDeg = given(givens, "tiltDeg")): number => needAlongMm({ needMm: given(givens, "needMm"), tiltDeg });
const wallMm = (givens: Givens): number => given(givens, "deepMm") - given(givens, "vesselRadiusMm") - given(givens, "marginMm");
const greatestOf = (givens: Givens): number => meetsMm(givens, given(givens, "tiltDeg")) ?? wallMm(givens);

const solve = (givens: Givens): Solution => {
  const leastMm = leastOf(givens);
  const greatestMm = greatestOf(givens);
  return compareOnGrid(leastMm, greatestMm) > 0 ? { says: "none" } : { leastMm, greatestMm };
};

const KEYS = ["needMm", "deepMm", "asideMm", "vesselRadiusMm", "marginMm", "tiltDeg"];
const givensOf = (say: Say): Givens => Object.fromEntries(KEYS.map((key) => [key, say.value(key)]));
const least = (say: Say): string => withUnit(leastOf(givensOf(say)).toFixed(1), "mm");
const greatest = (say: Say): string => withUnit(greatestOf(givensOf(say)).toFixed(1), "mm");
const isNone = (say: Say): boolean => typeof say.answer["says"] === "string";

/** 10l: what a tilt does to the need and to the limit. */
export const angleAndDepth: SumFamily = {
  kind: "sum",
  id: "angle-and-depth",
  code: "10l",
  module: "M10",
  version: 0,
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
    const drawn = { needMm: chance.onGrid(NEED), deepMm: chance.onGrid(DEEP), asideMm: chance.onGrid(ASIDE), vesselRadiusMm: chance.onGrid(RADIUS), marginMm: chance.onGrid(MARGIN) };
    // The tilt goes towards the vessel and never so far that the line would pass behind it.
    const towards = Math.atan(drawn.asideMm / drawn.deepMm) / RADIANS;
    const most = Math.max(TILT.least, Math.min(TILT.greatest, Math.floor(towards + CLOSEST_SHARE * (Math.asin((drawn.vesselRadiusMm + drawn.marginMm) / Math.hypot(drawn.deepMm, drawn.asideMm)) / RADIANS))));
    return { givens: { ...drawn, tiltDeg: TILT.least + chance.below(most - TILT.least + 1) }, about: { child: chance.pick(CHILDREN), age: chance.pick(AGES) } };
  },
  solve,
  slips: [
    { id: "times-the-cosine", gives: ({ givens }) => ({ leastMm: given(givens, "needMm") * Math.cos(given(givens, "tiltDeg") * RADIANS), greatestMm: greatestOf(givens) }) },
    { id: "limit-over-the-cosine", gives: ({ givens }) => ({ leastMm: leastOf(givens), greatestMm: wallMm(givens) / Math.cos(given(givens, "tiltDeg") * RADIANS) }) },
    { id: "tilt-forgotten", gives: ({ givens }) => ({ leastMm: given(givens, "needMm"), greatestMm: wallMm(givens) }) },
  ],
  words: {
    en: {
      title: "A tilted needle",
      stems: [
        (say) => [`The needle for ${childOf(say)} does not go square through the capsule: it is tilted towards the vessel. Depths are measured from the entry; the capsule lies flat across, the vessel is round. All sizes are of the model.`],
        (say) => [`Tilt changes two things in two ways. In the model of ${childOf(say)} the capsule is a flat layer and the vessel a round one, and the needle leans towards it.`],
        (say) => [`The portal of ${childOf(say)} forces a tilt towards the vessel. What must be passed is flat, what must not be met is round.`],
      ],
      question: "Which depths along the tilted needle are left? Give the least, rounded up, and the greatest, rounded down, to a tenth of a millimetre, or say that there is none.",
      givens: { needMm: "Needed square through the capsule, your teacher’s figure", deepMm: "Centre of the vessel, straight ahead", asideMm: "Centre of the vessel, to the side of the tilt", vesselRadiusMm: "Radius of the vessel, assumed", marginMm: "Margin to keep", tiltDeg: "Tilt towards the vessel" },
      asks: { leastMm: "Least depth", greatestMm: "Greatest depth" },
      says: LINE_SAYS,
      slips: {
        "times-the-cosine": { name: "cosine multiplied", because: (say) => [`A slanting way through a flat layer is longer, not shorter: ${say.of("needMm")} are divided by the cosine. Multiplied, the anchor may open inside the joint.`] },
        "limit-over-the-cosine": { name: "limit divided by the cosine", because: (say) => [`The vessel is no flat wall. A needle that leans towards it meets it earlier, at ${greatest(say)}.`] },
        "tilt-forgotten": { name: "tilt forgotten", because: (say) => [`At ${say.of("tiltDeg")} the need grows to ${least(say)} and the limit moves to ${greatest(say)}.`] },
      },
      working: (say) => [
        `Need along the needle: ${say.bare("needMm")} ÷ cos ${say.of("tiltDeg")} = ${least(say)}`,
        `Limit: where the tilted line comes within ${say.bare("vesselRadiusMm")} + ${say.bare("marginMm")} of the centre: ${greatest(say)}`,
        isNone(say) ? "The need ends behind the limit: no depth on this line." : "Every depth between them is left.",
      ],
      right: (say) => isNone(say) ? [`The need is ${least(say)}, the limit ${greatest(say)}: the tilt closed the window. Choose a portal from which the needle stands straighter.`] : [`From ${least(say)} to ${greatest(say)}. The flat layer asks for more, the round vessel allows less: a tilt costs at both ends.`],
      off: () => ["Treat the two ends apart: divide the flat layer by the cosine, and find where the tilted line comes within radius and margin of the vessel’s centre."],
      turns: (say) => isNone(say) ? ["With less tilt the need shrinks and, as long as the line still points past the vessel’s middle, the limit moves away."] : [`At a need of more than ${greatest(say)} along the needle the window closes.`],
      inverse: () => [],
    },
  },
};
