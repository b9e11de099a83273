import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { AIMED_LINE_READS, drawAimedLine, FREE_EDGE, given, JUNCTION, LINE_GIVENS, LINE_SAYS, LINE_SOURCES, lineOf, whoseDistance } from "./aimed-line.ts";

const widthOf = (say: Say): string => say.number(sumOnGrid(say.value("freeEdgeToBundleMm"), -say.value("junctionToBundleMm")));

/** 10a: the width of the meniscus along the needle, from two distances to the same bundle. */
export const pathWidth: SumFamily = {
  kind: "sum",
  id: "path-width",
  code: "10a",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m10-least"],
  reads: AIMED_LINE_READS,
  sources: LINE_SOURCES,
  cautions: ["C3", "C8"],
  givens: [FREE_EDGE, JUNCTION],
  asks: [{ id: "widthMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => drawAimedLine(chance, ["mean", "scan", "scan"]),
  solve: (givens) => ({ widthMm: sumOnGrid(given(givens, "freeEdgeToBundleMm"), -given(givens, "junctionToBundleMm")) }),
  slips: [
    { id: "sum", gives: ({ givens }) => ({ widthMm: sumOnGrid(given(givens, "freeEdgeToBundleMm"), given(givens, "junctionToBundleMm")) }) },
    { id: "free-edge-alone", gives: ({ givens }) => ({ widthMm: given(givens, "freeEdgeToBundleMm") }) },
    { id: "half-way", gives: ({ givens }) => ({ widthMm: sumOnGrid(given(givens, "freeEdgeToBundleMm"), -given(givens, "junctionToBundleMm")) / 2 }) },
  ],
  inverseOf: "freeEdgeToBundleMm",
  words: {
    en: {
      title: "Width along the path",
      stems: [
        (say) => [`${say.about("child")} is ${say.about("age")}. ${lineOf(say)} ${whoseDistance(say)}`],
        (say) => [`Before a needle moves, one sum about ${say.about("child")}, ${say.about("age")}. ${lineOf(say)} ${whoseDistance(say)}`],
        (say) => [`${say.about("child")}, ${say.about("age")}, is on Monday’s list. ${lineOf(say)} ${whoseDistance(say)}`],
      ],
      question: "How wide is the meniscus along this path, to the nearest tenth of a millimetre?",
      givens: LINE_GIVENS,
      asks: { widthMm: "Width along the path" },
      says: { ...LINE_SAYS, none: "No width on this path" },
      slips: {
        sum: { name: "added instead of taken away", because: (say) => [`Both distances end at the same bundle. The longer one already holds the shorter one, so their sum, ${say.bare("freeEdgeToBundleMm")} + ${say.bare("junctionToBundleMm")}, counts the way from the junction twice.`] },
        "free-edge-alone": { name: "distance taken for a width", because: (say) => [`${say.of("freeEdgeToBundleMm")} runs on past the meniscus to the bundle. The last ${say.of("junctionToBundleMm")} of it lie behind the junction.`] },
        "half-way": { name: "stopped at the middle", because: () => ["That is the way from the free edge to the middle of the meniscus. The path crosses both halves."] },
      },
      working: (say) => ["The bundle is the same end for both distances, so it drops out.", `${say.bare("freeEdgeToBundleMm")} − ${say.bare("junctionToBundleMm")} = ${widthOf(say)} mm`],
      right: (say) => [`The two distances end at one bundle; what is left between their starting points is meniscus, ${widthOf(say)} mm of it on this path.`],
      off: () => ["Start from the picture: two distances with one end in common. What lies between their two beginnings is the width."],
      inverse: (say, { text }) => [`If the free edge lay ${text} from the bundle and the junction stayed at ${say.of("junctionToBundleMm")}.`],
    },
  },
};
