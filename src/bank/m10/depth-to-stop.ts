import { compareOnGrid, sumOnGrid } from "../../engine/quantity/grid.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { ChainFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { stopSettingMm } from "../../engine/repair/stop-setting-mm.ts";
import { isSameNumber } from "../m01/common.ts";
import { AIMED_LINE_READS, drawAimedLine, drawEntry, ENTRY, FREE_EDGE, given, greatestOf, JUNCTION, leastOf, LINE_GIVENS, LINE_SAYS, LINE_SOURCES, lineOf, MARGIN, meanForLow, NEED, NEED_UNKNOWN, whoseLimit } from "./aimed-line.ts";

const STOPS_EVERY_MM = 2;
const FIRST_STOPS = ["4", "5"] as const;
const STOPS = 9;

const stopsOf = (about: Readonly<Record<string, string>>): readonly number[] => Array.from({ length: STOPS }, (_, index) => Number(about["firstStop"] ?? FIRST_STOPS[0]) + index * STOPS_EVERY_MM);

/** Only a limit and a need that were both found, and in this order, leave a window. */
const windowOf = (givens: Givens): { readonly leastMm: number; readonly greatestMm: number } | null => {
  const { leastMm, greatestMm } = givens;
  if (leastMm === undefined || greatestMm === undefined || leastMm <= 0) return null;
  return compareOnGrid(leastMm, greatestMm) <= 0 ? { leastMm, greatestMm } : null;
};

const greatest = (givens: Givens): Solution => {
  const greatestMm = greatestOf(givens, "junctionToBundleMm");
  return greatestMm > 0 ? { greatestMm } : { says: "none" };
};
/** The need is only a depth to work with where it lies in front of the limit that was found. */
const least = (givens: Givens): Solution => {
  const leastMm = leastOf(givens);
  return givens["greatestMm"] !== undefined && compareOnGrid(leastMm, givens["greatestMm"]) <= 0 ? { leastMm } : { says: "none" };
};
const stop = (givens: Givens, about: Readonly<Record<string, string>>): Solution => {
  const stopMm = stopSettingMm(windowOf(givens), stopsOf(about));
  return stopMm === null ? { says: "none" } : { stopMm };
};

const caseOf = (say: Say): Givens => Object.fromEntries(["entryToJunctionMm", "junctionToBundleMm", "marginMm", "throughCapsuleMm"].map((key) => [key, say.value(key)]));
const limitOf = (say: Say): number => Number(asAsked(greatestOf(caseOf(say), "junctionToBundleMm"), 0.5, "down"));
const limitText = (say: Say): string => {
  const exact = `${say.number(greatestOf(caseOf(say), "junctionToBundleMm"))} mm`;
  const setting = `${say.number(limitOf(say))} mm`;
  return isSameNumber(exact, setting) ? setting : `${exact}, rounded down to ${setting}`;
};
const needOf = (say: Say): number => leastOf(caseOf(say));
const isOpen = (say: Say): boolean => compareOnGrid(needOf(say), limitOf(say)) <= 0;
const stopFor = (say: Say): number | null => stopSettingMm(windowOf({ leastMm: needOf(say), greatestMm: limitOf(say) }), stopsOf({ firstStop: say.about("firstStop") }));
const list = (say: Say): string => stopsOf({ firstStop: say.about("firstStop") }).join(", ");

const working = (say: Say): readonly string[] => {
  const fit = stopFor(say);
  return [
    `Limit: ${say.bare("entryToJunctionMm")} + ${say.bare("junctionToBundleMm")} − ${say.bare("marginMm")} = ${limitText(say)}`,
    `Need: ${say.bare("entryToJunctionMm")} + ${say.bare("throughCapsuleMm")} = ${say.number(needOf(say))} mm`,
    isOpen(say) ? `Stops from ${say.number(needOf(say))} to ${say.number(limitOf(say))} mm: ${fit === null ? "none" : `the smallest is ${fit} mm`}.` : `The need is ${say.number(sumOnGrid(needOf(say), -limitOf(say)))} mm larger than the limit: no depth, and no stop. Change the line, the portal, the knee position or the technique. Never shorten the needle.`,
  ];
};

/** 10q: limit, need and stop as one chain; a later step is marked on what was found before. */
export const depthToStop: ChainFamily = {
  kind: "chain",
  id: "depth-to-stop",
  code: "10q",
  module: "M10",
  version: 1,
  firstWave: false,
  unsafe: true,
  objectives: ["m10-window"],
  reads: AIMED_LINE_READS,
  sources: LINE_SOURCES,
  cautions: ["C2", "C3", "C8"],
  givens: [ENTRY, JUNCTION, FREE_EDGE, MARGIN, NEED],
  draw: (chance) => {
    const line = drawAimedLine(chance, ["mean", "low", "scan", "scan", "scan"]);
    const givens = { entryToJunctionMm: drawEntry(chance, line), ...line.givens, marginMm: chance.onGrid(MARGIN) };
    const room = sumOnGrid(given(givens, "junctionToBundleMm"), -givens.marginMm);
    const throughCapsuleMm = room > NEED.least && chance.happens(3, 4) ? chance.onGrid({ ...NEED, greatest: room }) : chance.onGrid(NEED);
    return { ...line, origins: { ...line.origins, throughCapsuleMm: { from: "local" } }, givens: { ...givens, throughCapsuleMm }, about: { ...line.about, firstStop: chance.pick(FIRST_STOPS) } };
  },
  steps: [
    { id: "limit", asks: [{ id: "greatestMm", unit: "mm", roundTo: 0.5, rounding: "down", safeSide: "down" }], solve: greatest },
    { id: "need", asks: [{ id: "leastMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "up" }], solve: least },
    { id: "stop", asks: [{ id: "stopMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }], solve: stop, isUnsafe: ({ givens }, { stopMm = 0 }) => windowOf(givens) === null || compareOnGrid(stopMm, given(givens, "leastMm")) < 0 || compareOnGrid(stopMm, given(givens, "greatestMm")) > 0 },
  ],
  slips: [
    { id: "chain-width-twice", step: "limit", gives: ({ givens }) => ({ greatestMm: greatestOf(givens, "freeEdgeToBundleMm") }) },
    { id: "chain-margin-left-out", step: "limit", gives: ({ givens }) => ({ greatestMm: sumOnGrid(given(givens, "entryToJunctionMm"), given(givens, "junctionToBundleMm")) }) },
    { id: "chain-mean-for-low-bound", step: "limit", gives: (draw) => { const mean = meanForLow(draw); return mean === null ? null : { greatestMm: mean }; } },
    { id: "chain-entry-left-out", step: "need", gives: ({ givens }) => (typeof least(givens)["says"] === "string" ? null : { leastMm: given(givens, "throughCapsuleMm") }) },
    { id: "chain-need-all-the-same", step: "need", gives: ({ givens }) => (typeof least(givens)["says"] === "string" ? { leastMm: leastOf(givens) } : null) },
    { id: "chain-largest-stop", step: "stop", gives: ({ givens, about }) => { const fit = stopsOf(about).filter((one) => windowOf(givens) !== null && one >= given(givens, "leastMm") && one <= given(givens, "greatestMm")); return fit.length > 1 ? { stopMm: fit.at(-1) as number } : null; } },
  ],
  words: {
    en: {
      title: "From limit to stop",
      stems: [
        (say) => [`${say.about("child")} is ${say.about("age")}. ${lineOf(say)} ${whoseLimit(say)}`, `The needle can be stopped at ${list(say)} millimetres.`, NEED_UNKNOWN],
        (say) => [`All three at once, as at the table, for ${say.about("child")}, ${say.about("age")}. ${lineOf(say)} ${whoseLimit(say)}`, `Stops of this needle: ${list(say)} millimetres.`, NEED_UNKNOWN],
        (say) => [`The scrub nurse asks which stop. ${say.about("child")} is ${say.about("age")}. ${lineOf(say)} ${whoseLimit(say)}`, `The needle in her hand stops at ${list(say)} millimetres and nowhere else.`, NEED_UNKNOWN],
      ],
      question: "Find the limit, then the need, then the stop. Each step goes on from what you found.",
      givens: LINE_GIVENS,
      steps: {
        limit: { question: "The greatest depth from the entry, rounded down to half a millimetre?", asks: { greatestMm: "Greatest depth" }, says: LINE_SAYS },
        need: { question: "The least depth from the entry, if it still fits below your limit?", asks: { leastMm: "Least depth" }, says: LINE_SAYS },
        stop: { question: "Which stop do you name?", asks: { stopMm: "Stop" }, says: { ...LINE_SAYS, none: "No stop in this window" } },
      },
      slips: {
        "chain-width-twice": { name: "width counted twice", because: (say) => [`The free edge lies in front of the entry: ${say.of("freeEdgeToBundleMm")} already holds the width of the meniscus. The limit that came of it lies behind the near wall, and everything after it was built on that.`] },
        "chain-margin-left-out": { name: "margin left out", because: (say) => [`Your limit stands on the bundle itself. The margin of ${say.of("marginMm")} was never taken off, and no later step gives it back.`] },
        "chain-mean-for-low-bound": { name: "mean taken for the low bound", because: (say) => [`The stem asks for the low bound, ${say.of("junctionToBundleMm")}. About half of the children lie nearer than the mean, and the later steps inherit the difference.`] },
        "chain-entry-left-out": { name: "entry left out of the need", because: (say) => [`Depth is read from the entry. The ${say.of("entryToJunctionMm")} to the junction come first; without them the anchor stays in the meniscus.`] },
        "chain-need-all-the-same": { name: "a need that does not fit, kept", because: () => ["The need lies behind your own limit. There the chain ends: no depth, and so no stop. Going on as if there were one is how a needle ends up too deep."] },
        "chain-largest-stop": { name: "largest stop that fits", because: () => ["It lies in your window, and so does a smaller one. The smaller keeps more of the margin and holds just as well."] },
      },
      working,
      right: (say) => [isOpen(say) ? `Limit ${say.number(limitOf(say))} mm, need ${say.number(needOf(say))} mm, ${stopFor(say) === null ? "and no stop between them: none is the answer" : `and ${stopFor(say) ?? ""} mm is the smallest stop between them`}.` : "The need lies behind the limit, so there is no stop to name. Saying so is the answer."],
      off: (say) => [`Each step was marked on the one before it. For this line the limit is ${say.number(limitOf(say))} mm and the need ${say.number(needOf(say))} mm; the stop lies between them or there is none.`],
      moves: () => ["Limit and need both move with the entry, millimetre for millimetre. The bundle’s distance and the margin move the limit alone; the capsule’s need moves the need alone."],
      turns: (say) => [isOpen(say) ? "As soon as the need is larger than the limit there is nothing to set, whatever stops the needle has." : "A stop could be named where the capsule needs less, or the bundle lies farther behind the junction. A shorter needle changes neither."],
    },
  },
};
