import { withUnit } from "../../engine/quantity/format.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { clearanceMm } from "../../engine/repair/clearance-mm.ts";
import { given, LINE_SAYS } from "./aimed-line.ts";
import { AGES, CHILDREN, childIn } from "./needle-words.ts";

const DEPTH = { key: "depthMm", unit: "mm", least: 8, greatest: 20, step: 0.5 } as const;
const FORWARD = { key: "forwardMm", unit: "mm", least: 6, greatest: 26, step: 0.5 } as const;
const ASIDE = { key: "asideMm", unit: "mm", least: 3, greatest: 12, step: 0.5 } as const;
const RADIUS = { key: "structureRadiusMm", unit: "mm", least: 1, greatest: 3, step: 0.1 } as const;
const NEEDLE = { key: "needleRadiusMm", unit: "mm", least: 0.5, greatest: 1, step: 0.1 } as const;

/** Edge-to-edge distance with any depth and radii, so that slips are other calls of the same function. */
const clearance = (givens: Givens, { depthMm = given(givens, "depthMm"), radiusMm = given(givens, "structureRadiusMm"), needleRadiusMm = given(givens, "needleRadiusMm") } = {}): number =>
  clearanceMm({ entry: { xMm: 0, yMm: 0 }, tip: { xMm: depthMm, yMm: 0 }, centre: { xMm: given(givens, "forwardMm"), yMm: given(givens, "asideMm") }, radiusMm, needleRadiusMm });

/** A structure that the needle does not touch: its centre lies farther aside than both radii. */
const drawClear = (chance: Chance): Givens => {
  const structureRadiusMm = chance.onGrid(RADIUS);
  const needleRadiusMm = chance.onGrid(NEEDLE);
  const nearest = Math.ceil(2 * (structureRadiusMm + needleRadiusMm + ROOM_MM)) / 2;
  const asideMm = chance.onGrid({ ...ASIDE, least: Math.max(ASIDE.least, nearest) });
  return { depthMm: chance.onGrid(DEPTH), forwardMm: chance.onGrid(FORWARD), asideMm, structureRadiusMm, needleRadiusMm };
};

const tipOnly = (givens: Givens): number => Math.hypot(given(givens, "forwardMm") - given(givens, "depthMm"), given(givens, "asideMm")) - given(givens, "structureRadiusMm") - given(givens, "needleRadiusMm");
/** True where the structure lies beyond the tip. */
const isPast = (givens: Givens): boolean => given(givens, "forwardMm") > given(givens, "depthMm");
const FAR_MM = 60;
const ROOM_MM = 0.5;
const isBeyond = (say: Say): boolean => say.value("forwardMm") > say.value("depthMm");
const centre = (say: Say): number => (isBeyond(say) ? Math.hypot(say.value("forwardMm") - say.value("depthMm"), say.value("asideMm")) : say.value("asideMm"));
const exact = (say: Say): number => (say.answer as Record<string, number>)["clearMm"] ?? 0;
const answer = (say: Say): string => withUnit(asAsked(exact(say), 0.1, "down"), "mm");
/** With the digits that show why it is rounded. */
const fine = (value: number): string => withUnit(value.toFixed(2).replace(/0$/, ""), "mm");

/** 10g: the closest approach of a needle to a round structure, edge to edge. */
export const closest: SumFamily = {
  kind: "sum",
  id: "closest",
  code: "10g",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m10-closest"],
  reads: [],
  sources: [],
  cautions: ["C2"],
  givens: [DEPTH, FORWARD, ASIDE, RADIUS, NEEDLE],
  asks: [{ id: "clearMm", unit: "mm", roundTo: 0.1, rounding: "down", safeSide: "down" }],
  draw: (chance) => ({
    givens: drawClear(chance),
    about: { child: chance.pick(CHILDREN), age: chance.pick(AGES), structure: chance.pick(["artery", "peroneal nerve", "tibial nerve"]) },
  }),
  solve: (givens) => ({ clearMm: clearance(givens) }),
  slips: [
    { id: "structure-has-no-size", gives: ({ givens }) => ({ clearMm: clearance(givens) + given(givens, "structureRadiusMm") }) },
    { id: "needle-has-no-size", gives: ({ givens }) => ({ clearMm: clearance(givens) + given(givens, "needleRadiusMm") }) },
    { id: "centre-to-centre", gives: ({ givens }) => ({ clearMm: clearance(givens) + given(givens, "structureRadiusMm") + given(givens, "needleRadiusMm") }) },
    { id: "tip-only", gives: ({ givens }) => (isPast(givens) ? null : { clearMm: tipOnly(givens) }) },
    { id: "line-without-end", gives: ({ givens }) => (isPast(givens) ? { clearMm: clearance(givens, { depthMm: FAR_MM }) } : null) },
  ],
  words: {
    en: {
      title: "Closest approach",
      stems: [
        (say) => [`In the model of the knee of ${childIn(say)} the needle runs straight from its entry. The centre of the ${say.about("structure")} lies as far forward along the needle and as far aside of it as printed. Sizes are assumed.`],
        (say) => [`A needle passes the ${say.about("structure")} in the model of ${childIn(say)}. Distances are given from the entry: along the needle and across it. Needle and structure both have a thickness; that of the structure is assumed.`],
        (say) => [`Edge to edge is what counts, not centre to centre. The ${say.about("structure")} in the model of ${childIn(say)}; all sizes are assumed.`],
      ],
      question: "How near does the edge of the needle come to the edge of the structure? Rounded down to a tenth of a millimetre.",
      givens: { depthMm: "Depth of the tip, from the entry", forwardMm: "Centre of the structure, forward along the needle", asideMm: "Centre of the structure, aside of the needle", structureRadiusMm: "Radius of the structure, assumed", needleRadiusMm: "Radius of the needle" },
      asks: { clearMm: "Closest approach" },
      says: { ...LINE_SAYS, none: "There is no closest approach" },
      slips: {
        "structure-has-no-size": { name: "structure taken as a point", because: (say) => [`The ${say.about("structure")} begins ${say.of("structureRadiusMm")} before its centre. Without that you have more room on paper than in the knee.`] },
        "needle-has-no-size": { name: "needle taken as a line", because: (say) => [`You measured from the needle’s middle line. Its edge lies ${say.of("needleRadiusMm")} nearer.`] },
        "centre-to-centre": { name: "centre to centre", because: (say) => [`That is the way between two middles. Both have a thickness: ${say.of("structureRadiusMm")} and ${say.of("needleRadiusMm")} come off.`] },
        "tip-only": { name: "distance of the tip alone", because: (say) => [`The shaft passes nearer than the tip. The ${say.about("structure")} does not ask which part of the needle it met.`] },
        "line-without-end": { name: "line without an end", because: (say) => [`The needle ends at ${say.of("depthMm")}. The nearest point of an endless line lies beyond its tip, where there is no needle.`] },
      },
      working: (say) => [
        isBeyond(say) ? `The centre lies ${say.of("forwardMm")} forward, beyond the tip at ${say.of("depthMm")}: the tip is nearest.` : `The centre lies ${say.of("forwardMm")} forward, beside the needle: the shaft is nearest.`,
        `Centre to needle: ${fine(centre(say))}`,
        `Less both radii: ${fine(centre(say))} − ${say.of("structureRadiusMm")} − ${say.of("needleRadiusMm")} = ${fine(exact(say))}; a clearance is rounded down.`,
      ],
      right: (say) => [isBeyond(say) ? `The tip comes nearest, ${answer(say)} edge to edge.` : `The shaft passes at ${answer(say)}, edge to edge; the tip has gone by.`],
      off: () => ["Ask first whether the structure lies beside the needle or beyond its tip. Then measure centre to needle, and take away both radii."],
      inverse: (say, { text }) => [`If the centre lay ${text} aside. In this model it lies ${say.of("asideMm")} aside.`],
    },
  },
  inverseOf: "asideMm",
};
