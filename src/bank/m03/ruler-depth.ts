import { rulerSizeMm } from "../../engine/optics/ruler-size-mm.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerIn, CHILDREN, given, HOSPITALS, measure } from "./optics-words.ts";
import { drawRuler, RULER_LABELS, THINGS, TIP, TIP_PIXELS, TARGET_PIXELS } from "./ruler.ts";

const DISTANCE = { key: "tipDistanceMm", unit: "mm", least: 10, greatest: 20, step: 0.5 } as const;
const FARTHER = { key: "fartherMm", unit: "mm", least: 1, greatest: 6, step: 0.5 } as const;
const MOST_AT_TIP_MM = 9;

const solved = (givens: Givens): Solution => {
  const [tipMm, tipPx, targetPx, tipDistanceMm, fartherMm] = [given(givens, "tipMm"), given(givens, "tipPx"), given(givens, "targetPx"), given(givens, "tipDistanceMm"), given(givens, "fartherMm")];
  const holds = tipMm > 0 && tipPx > 0 && targetPx > 0 && tipDistanceMm > 0 && fartherMm >= 0;
  return holds ? { sizeMm: rulerSizeMm({ tipMm, tipPx, targetPx, depth: { tipDistanceMm, fartherMm } }) } : { says: "cannot-be-told" };
};
const flat = (givens: Givens): number => (given(givens, "tipMm") * given(givens, "targetPx")) / given(givens, "tipPx");
const factor = (givens: Givens): number => (given(givens, "tipDistanceMm") + given(givens, "fartherMm")) / given(givens, "tipDistanceMm");
const atTip = (say: Say): number => (say.value("tipMm") * say.value("targetPx")) / say.value("tipPx");
const size = (say: Say): string => measure(answerIn(say, "sizeMm"), "mm");

/** 03g: a size read with the probe, where the target lies behind its tip. */
export const rulerDepth: SumFamily = {
  kind: "sum",
  id: "ruler-depth",
  code: "03g",
  module: "M03",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m03-ruler"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [TIP, TIP_PIXELS, TARGET_PIXELS, DISTANCE, FARTHER],
  asks: [{ id: "sizeMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const { tipMm, tipPx, targetPx } = drawRuler(chance, MOST_AT_TIP_MM);
    return {
      givens: { tipMm, tipPx, targetPx, tipDistanceMm: chance.onGrid(DISTANCE), fartherMm: chance.onGrid(FARTHER) },
      about: { child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS), thing: chance.pick(THINGS) },
      origins: { tipMm: { from: "local" } },
    };
  },
  solve: solved,
  slips: [
    { id: "not-corrected", gives: ({ givens }) => ({ sizeMm: flat(givens) }) },
    { id: "corrected-the-wrong-way", gives: ({ givens }) => ({ sizeMm: flat(givens) / factor(givens) }) },
    { id: "depth-added", gives: ({ givens }) => ({ sizeMm: flat(givens) + given(givens, "fartherMm") }) },
    { id: "only-the-extra", gives: ({ givens }) => ({ sizeMm: flat(givens) * (factor(givens) - 1) }) },
  ],
  inverseOf: "targetPx",
  words: {
    en: {
      title: "The probe as a ruler, in depth",
      stems: [
        (say) => [`The tip of the probe floats in front of ${say.about("thing")} in the knee of ${say.about("child")}; the target lies farther from the scope. Both were measured on a still picture, near its middle and square to the view.`],
        (say) => [`You could not bring the probe down to ${say.about("thing")} in the knee of ${say.about("child")}. Its tip stands nearer to the scope, by as much as printed; both lie square to the view.`],
        (say) => [`On a still picture from the knee of ${say.about("child")}, tip and target do not lie in one plane: ${say.about("thing")} is farther away. Distances count from where the view opens.`],
      ],
      question: "How long is the target really? To the nearest tenth of a millimetre.",
      givens: { tipMm: RULER_LABELS.tipMm, tipPx: RULER_LABELS.tipPx, targetPx: RULER_LABELS.targetPx, tipDistanceMm: "Scope to the tip of the probe", fartherMm: "From the tip on to the target, away from the scope" },
      asks: { sizeMm: "Length" },
      says: { none: "It has no length", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "not-corrected": { name: "not corrected for depth", because: (say) => [`Farther things look smaller: without the correction you under-read. ${measure(atTip(say), "mm")} would be right at the tip.`] },
        "corrected-the-wrong-way": { name: "corrected the wrong way", because: () => ["What lies farther away is larger than it looks. The correction must make it longer."] },
        "depth-added": { name: "depth added to the length", because: (say) => [`${say.of("fartherMm")} run away from you, the length runs across. They are not added; the distances stand in a ratio.`] },
        "only-the-extra": { name: "only what is added", because: () => ["That is by how much the length grows. The question asks for the whole of it."] },
      },
      working: (say) => [
        `At the tip: ${say.bare("tipMm")} × ${say.bare("targetPx")} ÷ ${say.bare("tipPx")} = ${measure(atTip(say), "mm", 2)}`,
        `Farther away: × (${say.bare("tipDistanceMm")} + ${say.bare("fartherMm")}) ÷ ${say.bare("tipDistanceMm")} = ${size(say)}`,
      ],
      right: (say) => [`${size(say)}, where the bare ruler would have said ${measure(atTip(say), "mm")}. Lay the tip against the target and the correction is gone.`],
      off: () => ["First the size as if it lay at the tip, then times the ratio of the two distances."],
      inverse: (say, { text }) => [`If it covered ${text.trim()} pixels. It covers ${say.bare("targetPx")}.`],
    },
  },
};
