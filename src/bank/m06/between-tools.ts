import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { zoneAngleDeg } from "../../engine/repair/zone-angle-deg.ts";
import { answerText, given, SIDES } from "../m01/common.ts";

const GAP = { key: "portalGapMm", unit: "mm", least: 15, greatest: 50, step: 1 } as const;
const SCOPE = { key: "scopeMm", unit: "mm", least: 30, greatest: 70, step: 1 } as const;
const TOOL = { key: "toolMm", unit: "mm", least: 30, greatest: 70, step: 1 } as const;
const DEGREES = 180 / Math.PI;
/** Sides that differ by less give the same angle, to a tenth, as sides taken as equal. */
const LEAST_DIFFERENCE_MM = 8;
const GREATEST_DIFFERENCE_MM = 15;
/** A slip that is nearer to the answer than this is no mistake that matters. */
const TELLING_DEG = 0.5;

const sides = (givens: Givens) => ({ gap: given(givens, "portalGapMm"), scope: given(givens, "scopeMm"), tool: given(givens, "toolMm") });
const isTriangle = (givens: Givens): boolean => {
  const { gap, scope, tool } = sides(givens);
  return gap > Math.abs(scope - tool) && gap < scope + tool && gap > 0;
};
const angleOf = (givens: Givens): Solution => {
  const { gap, scope, tool } = sides(givens);
  return isTriangle(givens) ? { angleDeg: zoneAngleDeg({ nearEdgeMm: scope, farEdgeMm: tool, widthMm: gap }) } : { says: "none" };
};
/** The angle where both sides are taken as long as their mean. */
const fromHalves = (givens: Givens): number => 2 * DEGREES * Math.asin(sides(givens).gap / (sides(givens).scope + sides(givens).tool));
const steps = ({ least, greatest }: { readonly least: number; readonly greatest: number }): readonly number[] => Array.from({ length: greatest - least + 1 }, (_, at) => least + at);
const toolsBeside = (scopeMm: number): readonly number[] =>
  steps(TOOL).filter((toolMm) => Math.abs(toolMm - scopeMm) >= LEAST_DIFFERENCE_MM && Math.abs(toolMm - scopeMm) <= GREATEST_DIFFERENCE_MM);
const findGaps = (scopeMm: number, toolMm: number): readonly number[] =>
  steps(GAP).filter((portalGapMm) => {
    const givens = { portalGapMm, scopeMm, toolMm };
    return portalGapMm >= Math.abs(scopeMm - toolMm) + 5 && Math.abs(fromHalves(givens) - plain(givens)) >= TELLING_DEG;
  });
const GAPS = new Map<number, readonly number[]>();
/** Looked for once a pair of sides. */
const gapsBetween = (scopeMm: number, toolMm: number): readonly number[] => {
  const pair = scopeMm * (TOOL.greatest + 1) + toolMm;
  const known = GAPS.get(pair) ?? findGaps(scopeMm, toolMm);
  GAPS.set(pair, known);
  return known;
};
const plain = (givens: Givens): number => (angleOf(givens) as Record<string, number>)["angleDeg"] ?? 0;
const tenth = { places: 1, unit: "deg" } as const;
const cosine = (say: Say): number => (say.value("scopeMm") ** 2 + say.value("toolMm") ** 2 - say.value("portalGapMm") ** 2) / (2 * say.value("scopeMm") * say.value("toolMm"));

/** 06a: the angle at the target between scope and instrument. */
export const betweenTools: SumFamily = {
  kind: "sum",
  id: "between-tools",
  code: "06a",
  module: "M06",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m06-angle"],
  reads: [],
  sources: [],
  cautions: ["C6"],
  givens: [GAP, SCOPE, TOOL],
  asks: [{ id: "angleDeg", unit: "deg", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const scopeMm = chance.onGrid(SCOPE);
    const toolMm = chance.pick(toolsBeside(scopeMm));
    const portalGapMm = chance.pick(gapsBetween(scopeMm, toolMm));
    return {
      givens: { portalGapMm, scopeMm, toolMm },
      about: { side: chance.pick(SIDES), target: chance.pick(["posterior horn of the medial meniscus", "body of the lateral meniscus", "posterior horn of the lateral meniscus", "tibial footprint of the anterior cruciate ligament"]) },
    };
  },
  solve: angleOf,
  slips: [
    { id: "halves-of-unequal-sides", gives: ({ givens }) => ({ angleDeg: fromHalves(givens) }) },
    { id: "right-angle-assumed", gives: ({ givens }) => ({ angleDeg: DEGREES * Math.atan(sides(givens).gap / sides(givens).scope) }) },
    { id: "the-other-of-two-sines", gives: ({ givens }) => ({ angleDeg: 180 - plain(givens) }) },
    { id: "radians-left", gives: ({ givens }) => ({ angleDeg: plain(givens) / DEGREES }) },
  ],
  inverseOf: "portalGapMm",
  words: {
    en: {
      title: "Scope and instrument at the target",
      stems: [
        (say) => [`In a model of a ${say.about("side")} knee, scope and instrument come from two portals and meet at the ${say.about("target")}. The three sides of the triangle were measured.`],
        (say) => [`Too narrow, and the instrument hides behind the scope; too wide, and the hands drift apart. Target: ${say.about("target")}, ${say.about("side")} model knee.`],
        (say) => [`Two portals and one target in a ${say.about("side")} model knee: the ${say.about("target")}. No side of the triangle stands square to another.`],
      ],
      question: "What is the angle at the target between scope and instrument? To the nearest tenth of a degree.",
      givens: { portalGapMm: "Between the portals", scopeMm: "Scope portal to target", toolMm: "Instrument portal to target" },
      asks: { angleDeg: "Angle at the target" },
      says: { none: "No such triangle", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "halves-of-unequal-sides": { name: "sides taken as equal", because: (say) => [`Halving the gap works where both sides are equal. Here they are ${say.of("scopeMm")} and ${say.of("toolMm")}.`] },
        "right-angle-assumed": { name: "right angle assumed", because: () => ["Gap over distance is a tangent only where the gap stands square to the scope. Nothing says so."] },
        "the-other-of-two-sines": { name: "the other of two sines", because: () => ["An angle and what it lacks to 180 degrees have the same sine. The cosine tells them apart."] },
        "radians-left": { name: "left in radians", because: () => ["Your calculator answered in radians. One radian is some 57 degrees."] },
      },
      working: (say) => [
        "Three sides are known, so the law of cosines gives the angle opposite the gap.",
        `Cosine: (${say.bare("scopeMm")}² + ${say.bare("toolMm")}² − ${say.bare("portalGapMm")}²) ÷ (2 × ${say.bare("scopeMm")} × ${say.bare("toolMm")}) = ${say.number(cosine(say), 3)}`,
        `Angle: ${answerText(say, "angleDeg", tenth)}`,
      ],
      right: (say) => [`${answerText(say, "angleDeg", tenth)} at the target, in this model. Portals set it before the first instrument goes in; which angle suits the task, your teacher says.`],
      off: () => ["Three sides, no right angle: the law of cosines. The gap between the portals is the side opposite the angle you want."],
      inverse: (say, { text }) => [`If the portals were ${text} apart. Here they are ${say.of("portalGapMm")} apart.`],
    },
  },
};
