import { compareOnGrid, sumOnGrid } from "../../engine/quantity/grid.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { gridSize, gridValue } from "../../engine/random/chance.ts";
import { AIMED_LINE_READS, drawAimedLine, drawEntry, ENTRY, FREE_EDGE, given, greatestOf, JUNCTION, leastOf, LINE_GIVENS, LINE_SAYS, LINE_SOURCES, lineOf, MARGIN, meanForLow, NEED, NEED_UNKNOWN, whoseLimit } from "./aimed-line.ts";

/** Touching is a window of one depth; the comparison is made on the grid, not in doubles. */
const windowOf = (givens: Givens): Solution => {
  const leastMm = leastOf(givens);
  const greatestMm = greatestOf(givens);
  return compareOnGrid(leastMm, greatestMm) <= 0 ? { leastMm, greatestMm } : { says: "none" };
};

const givensOf = (say: Say): Givens => Object.fromEntries(["entryToJunctionMm", "junctionToBundleMm", "freeEdgeToBundleMm", "marginMm", "throughCapsuleMm"].map((key) => [key, say.value(key)]));
const least = (say: Say): string => say.number(leastOf(givensOf(say)));
const greatest = (say: Say): string => say.number(greatestOf(givensOf(say)));
const missing = (say: Say): string => say.number(sumOnGrid(leastOf(givensOf(say)), -greatestOf(givensOf(say))));
const room = (say: Say): string => say.number(sumOnGrid(say.value("junctionToBundleMm"), -say.value("marginMm")));
const wanted = (say: Say): string => say.number(sumOnGrid(say.value("throughCapsuleMm"), say.value("marginMm")));
/** One depth alone is left where the two ends touch. */
const isSingle = (say: Say): boolean => compareOnGrid(leastOf(givensOf(say)), greatestOf(givensOf(say))) === 0;
/** True where the margin leaves nothing behind the junction, whatever the capsule needs. */
const hasNoRoom = (say: Say): boolean => compareOnGrid(say.value("junctionToBundleMm"), say.value("marginMm")) <= 0;
const opensAt = (say: Say): string => (hasNoRoom(say) ? `A window opens only where the bundle lies at least ${wanted(say)} mm behind the junction: here the margin alone takes all there is.` : `A window opens where the capsule needs at most ${room(say)} mm beyond the junction, or where the bundle lies at least ${wanted(say)} mm behind it.`);
const open = (say: Say): string => (isSingle(say) ? "The two ends touch: this one depth meets both needs." : "The least does not exceed the greatest, so every depth between them meets both needs.");
const isEmpty = (say: Say): boolean => typeof say.answer["says"] === "string";

/** Needs that leave a window, just touch, or leave none: each kind comes often enough to be met. */
const drawNeed = (chance: Chance, room: number): number => {
  const atRoom = Math.round((room - NEED.least) / NEED.step);
  const size = gridSize(NEED);
  const kind = chance.below(20);
  if (atRoom < 0 || atRoom >= size) return chance.onGrid(NEED);
  if (kind < 3) return gridValue(NEED, atRoom);
  if (kind < 13) return gridValue(NEED, chance.below(atRoom + 1));
  return gridValue(NEED, atRoom + chance.below(size - atRoom));
};

const onlyWhereEmpty = (givens: Givens, solution: Solution): Solution | null => (typeof windowOf(givens)["says"] === "string" ? solution : null);

/** 10d: least and greatest depth on one line, or no depth at all. */
export const depthWindow: SumFamily = {
  kind: "sum",
  id: "window",
  code: "10d",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m10-window", "m10-reject"],
  reads: [...AIMED_LINE_READS, "through-capsule.adult@1", "through-capsule.child@1"],
  sources: [...LINE_SOURCES, { source: "mcculloch-2016", entry: "through-capsule.adult@1" }],
  cautions: ["C3", "C8", "C9"],
  givens: [ENTRY, NEED, JUNCTION, FREE_EDGE, MARGIN],
  asks: [
    { id: "leastMm", unit: "mm", roundTo: 0.1, rounding: "up", safeSide: "up" },
    { id: "greatestMm", unit: "mm", roundTo: 0.1, rounding: "down", safeSide: "down" },
  ],
  draw: (chance) => {
    const line = drawAimedLine(chance, ["mean", "low", "scan", "scan", "scan", "scan"]);
    const marginMm = chance.onGrid(MARGIN);
    const throughCapsuleMm = drawNeed(chance, sumOnGrid(line.givens["junctionToBundleMm"] as number, -marginMm));
    const givens = { entryToJunctionMm: drawEntry(chance, line), throughCapsuleMm, ...line.givens, marginMm };
    return { ...line, givens, origins: { ...line.origins, throughCapsuleMm: { from: "local" } } };
  },
  solve: windowOf,
  slips: [
    { id: "width-twice", gives: ({ givens }) => ({ leastMm: leastOf(givens), greatestMm: greatestOf(givens, "freeEdgeToBundleMm") }) },
    { id: "margin-left-out", gives: ({ givens }) => ({ leastMm: leastOf(givens), greatestMm: sumOnGrid(greatestOf(givens), given(givens, "marginMm")) }) },
    { id: "capsule-left-out", gives: ({ givens }) => (given(givens, "entryToJunctionMm") > greatestOf(givens) ? null : { leastMm: given(givens, "entryToJunctionMm"), greatestMm: greatestOf(givens) }) },
    { id: "mean-for-low-bound", gives: (draw) => { const mean = meanForLow(draw); return mean === null ? null : { leastMm: leastOf(draw.givens), greatestMm: mean }; } },
    { id: "middle-of-nothing", gives: ({ givens }) => { const middle = sumOnGrid(leastOf(givens), greatestOf(givens)) / 2; return onlyWhereEmpty(givens, { leastMm: middle, greatestMm: middle }); } },
    { id: "written-backwards", gives: ({ givens }) => onlyWhereEmpty(givens, { leastMm: leastOf(givens), greatestMm: greatestOf(givens) }) },
  ],
  words: {
    en: {
      title: "The window on one line",
      stems: [
        (say) => [`${say.about("child")} is ${say.about("age")}. ${lineOf(say)} ${whoseLimit(say)}`, NEED_UNKNOWN],
        (say) => [`Before the list you work out one stitch for ${say.about("child")}, ${say.about("age")}. ${lineOf(say)} ${whoseLimit(say)}`, NEED_UNKNOWN],
        (say) => [NEED_UNKNOWN, `${say.about("child")} is ${say.about("age")}. ${lineOf(say)} ${whoseLimit(say)}`],
      ],
      question: "Which depths from the entry are left on this line? Give the least and the greatest to a tenth of a millimetre, or say that there is none.",
      givens: LINE_GIVENS,
      asks: { leastMm: "Least depth", greatestMm: "Greatest depth" },
      says: LINE_SAYS,
      slips: {
        "width-twice": { name: "width counted twice", because: (say) => [`The greatest depth was built on ${say.of("freeEdgeToBundleMm")}, which starts at the free edge and already holds the meniscus. From the entry only ${say.of("junctionToBundleMm")} remain behind the junction.`] },
        "margin-left-out": { name: "margin left out", because: (say) => [`The greatest depth runs up to the bundle itself. Keep the ${say.of("marginMm")} that the plan asks for.`] },
        "capsule-left-out": { name: "capsule left out", because: () => ["The least depth ends at the junction, in front of the capsule. The anchor opens inside the joint."] },
        "mean-for-low-bound": { name: "mean taken for the low bound", because: (say) => [`The stem asks for the low bound, ${say.of("junctionToBundleMm")}. About half of the children lie nearer than the mean.`] },
        "middle-of-nothing": { name: "middle of an empty window", because: (say) => [`The line needs ${least(say)} mm and has ${greatest(say)} mm. The middle of the two neither passes the capsule nor keeps the margin.`] },
        "written-backwards": { name: "a window that ends before it begins", because: (say) => [`The sums are right: at least ${least(say)}, at most ${greatest(say)} mm. But the least is larger than the greatest, so no depth meets both. That is an answer: none on this line.`] },
      },
      working: (say) => [
        `Least: ${say.bare("entryToJunctionMm")} + ${say.bare("throughCapsuleMm")} = ${least(say)} mm`,
        `Greatest: ${say.bare("entryToJunctionMm")} + ${say.bare("junctionToBundleMm")} − ${say.bare("marginMm")} = ${greatest(say)} mm`,
        isEmpty(say) ? `The least is ${missing(say)} mm larger than the greatest: no depth on this line. Change the line, the portal, the knee position or the technique, for example inside-out with a posterior retractor. Never shorten the needle.` : open(say),
      ],
      right: (say) => isEmpty(say) ? [`The line needs at least ${least(say)} mm and has at most ${greatest(say)} mm: ${missing(say)} mm are missing. Change the line, the portal, the knee position or the technique; never shorten the needle.`] : [isSingle(say) ? `At ${least(say)} mm, and nowhere else, both needs are just met: the anchor is behind the capsule and the margin is kept.` : `From ${least(say)} to ${greatest(say)} mm both needs are met: the anchor is behind the capsule and the margin is kept.`],
      off: (say) => isEmpty(say) ? [`Set the two ends beside each other: the line needs ${least(say)} mm and has ${greatest(say)} mm. No depth meets both. Change the line, the portal, the knee position or the technique; never shorten the needle.`] : [`There is a window here: the need ends at ${least(say)} mm, the limit stands at ${greatest(say)} mm.`],
      inverse: () => [],
      turns: (say) => [
        isEmpty(say)
          ? `${opensAt(say)} Moving the entry opens nothing: it shifts both ends alike.`
          : `The window closes where the capsule needs more than ${room(say)} mm beyond the junction, or where the bundle lies less than ${wanted(say)} mm behind it. Then, and only then, none is the answer.`,
      ],
    },
  },
};
