import { withUnit } from "../../engine/quantity/format.ts";
import { sumOnGrid } from "../../engine/quantity/grid.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { isSameNumber } from "../m01/common.ts";
import { AIMED_LINE_READS, drawAimedLine, drawEntry, ENTRY, FREE_EDGE, given, JUNCTION, leastOf, LINE_GIVENS, LINE_SAYS, lineOf, NEED, NEED_UNKNOWN, whoseDistance } from "./aimed-line.ts";

const shown = (say: Say): string => say.number(sumOnGrid(say.value("entryToJunctionMm"), say.value("throughCapsuleMm")));

const setting = (say: Say): string => withUnit(asAsked((say.answer as Readonly<Record<string, number>>)["leastMm"] ?? 0, 0.5, "up"), "mm");
const rounded = (say: Say): string => (isSameNumber(shown(say), setting(say)) ? setting(say) : `${shown(say)} mm, rounded up to ${setting(say)}`);

/** 10b: the least setting that carries the anchor through the capsule, rounded up. */
export const leastDepth: SumFamily = {
  kind: "sum",
  id: "least-depth",
  code: "10b",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m10-least"],
  reads: [...AIMED_LINE_READS, "through-capsule.adult@1", "through-capsule.child@1"],
  sources: [{ source: "mcculloch-2016", entry: "through-capsule.adult@1" }],
  cautions: ["C3", "C8", "C9"],
  givens: [ENTRY, NEED, JUNCTION, FREE_EDGE],
  asks: [{ id: "leastMm", unit: "mm", roundTo: 0.5, rounding: "up", safeSide: "up" }],
  draw: (chance) => {
    const line = drawAimedLine(chance, ["mean", "scan"]);
    const givens = { entryToJunctionMm: drawEntry(chance, line), throughCapsuleMm: chance.onGrid(NEED), ...line.givens };
    return { ...line, givens, origins: { ...line.origins, throughCapsuleMm: { from: "local" } } };
  },
  solve: (givens) => ({ leastMm: leastOf(givens) }),
  slips: [
    { id: "entry-left-out", gives: ({ givens }) => ({ leastMm: given(givens, "throughCapsuleMm") }) },
    { id: "capsule-left-out", gives: ({ givens }) => ({ leastMm: given(givens, "entryToJunctionMm") }) },
    { id: "stopped-at-the-bundle", gives: ({ givens }) => ({ leastMm: sumOnGrid(given(givens, "entryToJunctionMm"), given(givens, "junctionToBundleMm")) }) },
    {
      id: "rounded-down",
      gives: ({ givens }) => {
        const least = leastOf(givens);
        const down = Math.floor(least * 2) / 2;
        return down === least ? null : { leastMm: down };
      },
    },
  ],
  inverseOf: "throughCapsuleMm",
  words: {
    en: {
      title: "Least depth",
      stems: [
        (say) => [`${say.about("child")} is ${say.about("age")}. ${lineOf(say)} ${whoseDistance(say)}`, NEED_UNKNOWN],
        (say) => [NEED_UNKNOWN, `${say.about("child")} is ${say.about("age")}. ${lineOf(say)} ${whoseDistance(say)}`],
        (say) => [`You plan one stitch for ${say.about("child")}, ${say.about("age")}. ${lineOf(say)} ${whoseDistance(say)}`, NEED_UNKNOWN],
      ],
      question: "What is the least depth from the entry, rounded up to half a millimetre?",
      givens: LINE_GIVENS,
      asks: { leastMm: "Least depth" },
      says: LINE_SAYS,
      slips: {
        "entry-left-out": { name: "entry left out", because: (say) => [`The depth is read from where the needle enters. It must first walk the ${say.of("entryToJunctionMm")} to the junction; only then does the capsule begin.`] },
        "capsule-left-out": { name: "capsule left out", because: () => ["At the junction the tip is still in front of the capsule. The anchor opens inside the joint and holds nothing."] },
        "stopped-at-the-bundle": { name: "bundle taken for the capsule", because: (say) => [`${say.of("junctionToBundleMm")} is the way to the bundle. It says how far you may go, not how far you must.`] },
        "rounded-down": { name: "rounded down", because: () => ["A least depth is a need. Rounded down it is no longer met, and the anchor may stay in the capsule."] },
      },
      working: (say) => ["From the entry to the junction, then through the capsule.", `${say.bare("entryToJunctionMm")} + ${say.bare("throughCapsuleMm")} = ${shown(say)} mm; a need is rounded up.`],
      right: (say) => [`First the way to the junction, then the way through the capsule: ${rounded(say)}. Whether the line allows so much is another question.`],
      off: () => ["Walk along the needle: from the entry to the junction, from the junction through the capsule. Nothing else belongs to a least depth."],
      inverse: (say, { text }) => [`If the capsule needed ${text} beyond the junction. Your teacher’s figure here is ${say.of("throughCapsuleMm")}.`],
    },
  },
};
