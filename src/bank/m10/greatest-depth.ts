import { withUnit } from "../../engine/quantity/format.ts";
import { sumOnGrid } from "../../engine/quantity/grid.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { isSameNumber } from "../m01/common.ts";
import { AIMED_LINE_READS, drawAimedLine, drawEntry, ENTRY, FREE_EDGE, given, greatestOf, JUNCTION, LINE_GIVENS, LINE_SAYS, LINE_SOURCES, lineOf, MARGIN, meanForLow, whoseLimit } from "./aimed-line.ts";

const deepest = (say: Say): string => say.number(sumOnGrid(say.value("entryToJunctionMm"), say.value("junctionToBundleMm"), -say.value("marginMm")));
const setting = (say: Say): string => withUnit(asAsked((say.answer as Readonly<Record<string, number>>)["greatestMm"] ?? 0, 0.5, "down"), "mm");
const rounded = (say: Say): string => (isSameNumber(deepest(say), setting(say)) ? setting(say) : `${deepest(say)} mm, rounded down to ${setting(say)}`);
const sumText = (say: Say, key: string): string => `${say.bare("entryToJunctionMm")} + ${say.bare(key)} − ${say.bare("marginMm")}`;
const doubled = (say: Say): string => say.number(sumOnGrid(say.value("entryToJunctionMm"), say.value("freeEdgeToBundleMm"), -say.value("marginMm")));

const LEAST_STEP_MM = 0.5;

/** The next setting above a limit that is not itself a setting. */
const roundedUp = (greatestMm: number): number | null => {
  const up = Math.ceil(greatestMm / LEAST_STEP_MM) * LEAST_STEP_MM;
  return greatestMm > 0 && up !== greatestMm ? up : null;
};

/** 10c: the greatest setting that keeps the margin to the bundle, rounded down. */
export const greatestDepth: SumFamily = {
  kind: "sum",
  id: "greatest-depth",
  code: "10c",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m10-greatest"],
  reads: AIMED_LINE_READS,
  sources: LINE_SOURCES,
  cautions: ["C3", "C8"],
  givens: [ENTRY, JUNCTION, FREE_EDGE, MARGIN],
  asks: [{ id: "greatestMm", unit: "mm", roundTo: 0.5, rounding: "down", safeSide: "down" }],
  draw: (chance) => {
    const line = drawAimedLine(chance, ["mean", "low", "scan"]);
    return { ...line, givens: { entryToJunctionMm: drawEntry(chance, line), ...line.givens, marginMm: chance.onGrid(MARGIN) } };
  },
  solve: (givens) => {
    const greatestMm = greatestOf(givens, "junctionToBundleMm");
    return greatestMm > 0 ? { greatestMm } : { says: "none" };
  },
  slips: [
    { id: "width-twice", gives: ({ givens }) => ({ greatestMm: greatestOf(givens, "freeEdgeToBundleMm") }) },
    { id: "margin-left-out", gives: ({ givens }) => ({ greatestMm: sumOnGrid(given(givens, "entryToJunctionMm"), given(givens, "junctionToBundleMm")) }) },
    { id: "margin-added", gives: ({ givens }) => ({ greatestMm: sumOnGrid(given(givens, "entryToJunctionMm"), given(givens, "junctionToBundleMm"), given(givens, "marginMm")) }) },
    { id: "mean-for-low-bound", gives: (draw) => { const mean = meanForLow(draw); return mean === null ? null : { greatestMm: mean }; } },
    { id: "rounded-up", gives: ({ givens }) => { const up = roundedUp(greatestOf(givens, "junctionToBundleMm")); return up === null ? null : { greatestMm: up }; } },
    { id: "entry-left-out", gives: ({ givens }) => { const rest = sumOnGrid(given(givens, "junctionToBundleMm"), -given(givens, "marginMm")); return rest >= LEAST_STEP_MM ? { greatestMm: rest } : null; } },
  ],
  inverseOf: "junctionToBundleMm",
  words: {
    en: {
      title: "Greatest depth",
      stems: [
        (say) => [`${say.about("child")} is ${say.about("age")}. ${lineOf(say)} ${whoseLimit(say)}`],
        (say) => [`The stop is set before the needle leaves the tray. ${say.about("child")} is ${say.about("age")}. ${lineOf(say)} ${whoseLimit(say)}`],
        (say) => [`You set the depth for ${say.about("child")}, ${say.about("age")}. ${lineOf(say)} ${whoseLimit(say)}`],
      ],
      question: "What is the greatest depth from the entry, rounded down to half a millimetre?",
      givens: LINE_GIVENS,
      asks: { greatestMm: "Greatest depth" },
      says: LINE_SAYS,
      slips: {
        "width-twice": { name: "width counted twice", because: (say) => [`Right arithmetic, wrong distance. ${say.of("freeEdgeToBundleMm")} starts at the free edge, so it already holds the width of the meniscus. You started at the entry and added that width again.`, `${sumText(say, "freeEdgeToBundleMm")} = ${doubled(say)} mm: the tip would stand past the near edge of the bundle.`] },
        "margin-left-out": { name: "margin left out", because: (say) => [`That depth puts the tip on the bundle itself. The margin of ${say.of("marginMm")} is what a bulging capsule, a bent needle and a wrong reading may use up.`] },
        "margin-added": { name: "margin added", because: () => ["A margin in front of a vessel is taken away from the depth. Added, it is a margin behind the near wall."] },
        "mean-for-low-bound": { name: "mean taken for the low bound", because: (say) => [`The stem asks for the low bound, ${say.of("junctionToBundleMm")}. About half of the children lie nearer than the mean.`] },
        "rounded-up": { name: "rounded up", because: () => ["A limit is rounded down. Rounded up, the tip goes farther than the margin allows."] },
        "entry-left-out": { name: "entry left out", because: (say) => [`The stop is read from the entry. The ${say.of("entryToJunctionMm")} to the junction belong to the depth.`] },
      },
      working: (say) => ["To the junction, on to the bundle, and back by the margin.", `${sumText(say, "junctionToBundleMm")} = ${deepest(say)} mm; a limit is rounded down.`],
      right: (say) => [`To the junction, on to the bundle, back by the margin: ${rounded(say)}. The width of the meniscus does not come into it.`],
      off: () => ["Walk along the needle: to the junction, on to the bundle, then come back by the margin."],
      inverse: (say, { text }) => [`If the bundle lay ${text} behind the junction. In this question it lies ${say.of("junctionToBundleMm")} behind it.`],
    },
  },
};
