import { rulerSizeMm } from "../../engine/optics/ruler-size-mm.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerIn, CHILDREN, given, HOSPITALS, measure } from "./optics-words.ts";
import { drawRuler, RULER_LABELS, SHAFT, THINGS, TIP, TIP_PIXELS, TARGET_PIXELS } from "./ruler.ts";

const MOST_MM = 14;

const solved = (givens: Givens): Solution => {
  const [tipMm, tipPx, targetPx] = [given(givens, "tipMm"), given(givens, "tipPx"), given(givens, "targetPx")];
  return tipMm > 0 && tipPx > 0 && targetPx > 0 ? { sizeMm: rulerSizeMm({ tipMm, tipPx, targetPx }) } : { says: "cannot-be-told" };
};
const ratio = (givens: Givens): number => given(givens, "targetPx") / given(givens, "tipPx");
const size = (say: Say): string => measure(answerIn(say, "sizeMm"), "mm");

/** 03f: a size read off the picture, with the tip of the probe as the ruler. */
export const probeRuler: SumFamily = {
  kind: "sum",
  id: "probe-ruler",
  code: "03f",
  module: "M03",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m03-ruler"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [TIP, SHAFT, TIP_PIXELS, TARGET_PIXELS],
  asks: [{ id: "sizeMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({
    givens: drawRuler(chance, MOST_MM),
    about: { child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS), thing: chance.pick(THINGS) },
    origins: { tipMm: { from: "local" }, shaftMm: { from: "local" } },
  }),
  solve: solved,
  slips: [
    { id: "ratio-upside-down", gives: ({ givens }) => ({ sizeMm: given(givens, "tipMm") / ratio(givens) }) },
    { id: "shaft-for-the-tip", gives: ({ givens }) => ({ sizeMm: given(givens, "shaftMm") * ratio(givens) }) },
    { id: "ratio-for-millimetres", gives: ({ givens }) => ({ sizeMm: ratio(givens) }) },
  ],
  inverseOf: "targetPx",
  words: {
    en: {
      title: "The probe as a ruler",
      stems: [
        (say) => [`In the knee of ${say.about("child")} the tip of the probe lies right beside ${say.about("thing")}, at the same distance from the scope and near the middle of the picture. Both were measured on a still picture.`],
        (say) => [`You measure ${say.about("thing")} in the knee of ${say.about("child")} on a still picture. The bent tip of the probe touches it, so both are equally far away.`],
        (say) => [`“How long is it really?” On a still picture from the knee of ${say.about("child")}, the tip of the probe lies against ${say.about("thing")}, square to the view like it.`],
      ],
      question: "How long is it? To the nearest tenth of a millimetre.",
      givens: RULER_LABELS,
      asks: { sizeMm: "Length" },
      says: { none: "It has no length", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "ratio-upside-down": { name: "ratio upside down", because: (say) => [`${say.bare("targetPx")} pixels against ${say.bare("tipPx")}: what covers more of the picture at the same distance is longer than the tip, and what covers less is shorter.`] },
        "shaft-for-the-tip": { name: "shaft taken for the tip", because: (say) => [`The ${say.bare("tipPx")} pixels were counted along the tip, so ${say.of("tipMm")} belong to them. ${say.of("shaftMm")} is how thick the shaft is.`] },
        "ratio-for-millimetres": { name: "ratio read as millimetres", because: (say) => [`That is how many tips long it is. Each tip has ${say.of("tipMm")}.`] },
      },
      working: (say) => [`${say.bare("targetPx")} ÷ ${say.bare("tipPx")} = ${(say.value("targetPx") / say.value("tipPx")).toFixed(3)} tips`, `× ${say.bare("tipMm")} = ${size(say)}`],
      right: (say) => [`${size(say)}. It holds because tip and target are equally far away; a target farther off would be larger than it looks.`],
      off: () => ["So many tips long, and each tip so many millimetres."],
      inverse: (say, { text }) => [`If it covered ${text.trim()} pixels. It covers ${say.bare("targetPx")}.`],
    },
  },
};
