import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { zoneAngleDeg } from "../../engine/repair/zone-angle-deg.ts";
import { zoneWidth } from "../../facts/zone-width.ts";
import { given } from "./aimed-line.ts";
import { DRAWING_SAYS } from "./needle-words.ts";

const NEAR = { key: "nearEdgeMm", unit: "mm", least: 36, greatest: 60, step: 1 } as const;
const FAR = { key: "farEdgeMm", unit: "mm", least: 38, greatest: 66, step: 1 } as const;
const WIDTH = { key: "widthMm", unit: "mm", least: 14, greatest: 18, step: 0.1 } as const;
const BANDS = ["5-7", "8-10", "11-13", "14-16"] as const;
/** Portal to the nearer end, for this question’s own cases: a larger knee, a longer way (author’s own choice). */
const NEAR_OF = { "5-7": { least: 36, greatest: 44 }, "8-10": { least: 40, greatest: 50 }, "11-13": { least: 44, greatest: 55 }, "14-16": { least: 48, greatest: 60 } } as const;
const DEGREES = 180 / Math.PI;

const angleOf = (givens: Givens): number => zoneAngleDeg({ nearEdgeMm: given(givens, "nearEdgeMm"), farEdgeMm: given(givens, "farEdgeMm"), widthMm: given(givens, "widthMm") });
const angle = (say: Say): string => `${Number((say.answer as Record<string, number>)["angleDeg"] ?? 0).toFixed(1)}°`;

/** 10f: the angle at the portal between the two ends of the zone. */
export const zoneAngle: SumFamily = {
  kind: "sum",
  id: "zone-angle",
  code: "10f",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m10-angle"],
  reads: BANDS.map((band) => `zone-width.${band}@1`),
  sources: BANDS.map((band) => ({ source: "beck-2019", entry: `zone-width.${band}@1` })),
  cautions: ["C3", "C8"],
  givens: [NEAR, FAR, WIDTH],
  asks: [{ id: "angleDeg", unit: "deg", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const band = chance.pick(BANDS);
    const entry = `zone-width.${band}@1`;
    const nearEdgeMm = chance.onGrid({ ...NEAR, ...NEAR_OF[band] });
    const more = 2 + chance.below(5);
    return {
      givens: { nearEdgeMm, farEdgeMm: nearEdgeMm + more, widthMm: zoneWidth(entry).number.mean ?? 0 },
      about: { band: band.replace("-", "–"), side: chance.pick(["left", "right"]) },
      origins: { widthMm: { from: "study", entry } },
      sources: [{ source: "beck-2019", entry }],
    };
  },
  solve: (givens) => ({ angleDeg: angleOf(givens) }),
  slips: [
    { id: "sides-taken-as-equal", gives: ({ givens }) => ({ angleDeg: 2 * DEGREES * Math.atan(given(givens, "widthMm") / (2 * ((given(givens, "nearEdgeMm") + given(givens, "farEdgeMm")) / 2))) }) },
    { id: "right-angle-assumed", gives: ({ givens }) => ({ angleDeg: DEGREES * Math.atan(given(givens, "widthMm") / given(givens, "nearEdgeMm")) }) },
    { id: "radians-left", gives: ({ givens }) => ({ angleDeg: angleOf(givens) / DEGREES }) },
  ],
  words: {
    en: {
      title: "The zone as an angle",
      stems: [
        (say) => [`At the portal you have no ruler, only an angle. In the ${say.about("side")} knee of a child of ${say.about("band")} years the zone lies between the popliteus tendon and the bundle (MRI, full extension). From the portal its two ends are as far away as printed.`],
        (say) => [`The zone of a child of ${say.about("band")} years is published as a width along the junction, full extension. You look in from the portal of a ${say.about("side")} knee, and the two ends are not equally far away.`],
        (say) => [`A width seen from two unequal distances: the zone at ${say.about("band")} years, ${say.about("side")} knee, measured in full extension on MRI.`],
      ],
      question: "Which angle at the portal lies between the two ends of the zone? To the nearest tenth of a degree.",
      givens: { nearEdgeMm: "Portal to the nearer end, in this case", farEdgeMm: "Portal to the farther end, in this case", widthMm: (say) => `Width of the zone along the junction, mean at ${say.about("band")} years` },
      asks: { angleDeg: "Angle" },
      says: { ...DRAWING_SAYS, none: "No such angle" },
      slips: {
        "sides-taken-as-equal": { name: "sides taken as equal", because: () => ["Halving the width works only where both ends are equally far. Here one is farther, and the triangle leans."] },
        "right-angle-assumed": { name: "right angle assumed", because: () => ["Width over distance is a tangent only if the zone stands square to the near side. It does not."] },
        "radians-left": { name: "radians left as they are", because: () => ["That is the angle in radians. A radian is some 57 degrees."] },
      },
      working: (say) => [
        `Three sides are known: ${say.of("nearEdgeMm")}, ${say.of("farEdgeMm")} and ${say.of("widthMm")}.`,
        "Cosine of the angle: (near² + far² − width²) ÷ (2 × near × far)",
        `Angle: ${angle(say)}`,
      ],
      right: (say) => [`${angle(say)} from this portal. From farther away the same zone fills a smaller angle. And it is sideways: no part of it is a depth.`],
      off: () => ["Three sides are given, so the law of cosines gives the angle. No right angle is promised anywhere."],
      inverse: (say, { text }) => [`If the zone were ${text} wide. The mean at this age is ${say.of("widthMm")}.`],
    },
  },
  inverseOf: "widthMm",
};
