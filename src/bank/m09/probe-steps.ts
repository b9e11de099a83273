import type { Ends, RangeFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { CHILDREN, given, SIDES } from "../m01/common.ts";

const STEPS = { key: "steps", unit: "pieces", least: 2, greatest: 9, step: 1 } as const;
const TIP = { key: "tipMm", unit: "mm", least: 2, greatest: 5, step: 1 } as const;

const about = (givens: Givens, either: number): Ends => ({ from: (given(givens, "steps") - either) * given(givens, "tipMm"), to: (given(givens, "steps") + either) * given(givens, "tipMm") });
const ends = (say: Say): Ends => about({ steps: say.value("steps"), tipMm: say.value("tipMm") }, 1 / 2);

/** 09c: a length that was stepped off with the tip of a probe. */
export const probeSteps: RangeFamily = {
  kind: "range",
  id: "probe-steps",
  code: "09c",
  module: "M09",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m09-length"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [STEPS, TIP],
  unit: "mm",
  roundTo: 0.5,
  draw: (chance) => ({ givens: { steps: chance.onGrid(STEPS), tipMm: chance.onGrid(TIP) }, about: { child: chance.pick(CHILDREN), side: chance.pick(SIDES), meniscus: chance.pick(["medial", "lateral"]) } }),
  solve: (givens) => about(givens, 1 / 2),
  slips: [
    { id: "no-either-way", gives: ({ givens }) => about(givens, 0) },
    { id: "whole-step-either-way", gives: ({ givens }) => about(givens, 1) },
    { id: "only-longer", gives: ({ givens }) => ({ from: about(givens, 0).from, to: about(givens, 1 / 2).to }) },
  ],
  words: {
    en: {
      title: "Stepped off with the probe",
      stems: [
        (say) => [`The tear of the ${say.about("meniscus")} meniscus in ${say.about("child")}’s ${say.about("side")} knee is stepped off with the bent tip of the probe. The count of steps is to the nearest whole one.`],
        (say) => [`A probe is a ruler with one mark. ${say.about("side").charAt(0).toUpperCase()}${say.about("side").slice(1)} knee of ${say.about("child")}, ${say.about("meniscus")} meniscus: the tear is as many tips long as printed, to the nearest whole tip.`],
        (say) => [`You count tips of the probe along the tear, ${say.about("meniscus")} meniscus, ${say.about("side")} knee. ${say.about("child")}’s record wants a length that admits how it was measured.`],
      ],
      question: "Between which two lengths does the tear lie?",
      givens: { steps: "Steps, to the nearest whole one", tipMm: "Tip of the probe" },
      slips: {
        "no-either-way": { name: "one length, no range", because: () => ["Steps were counted whole. What lies between two marks, the probe cannot say."] },
        "whole-step-either-way": { name: "a whole step either way", because: () => ["Counted to the nearest step, it is off by half of one at most."] },
        "only-longer": { name: "only to the longer side", because: () => ["Rounding goes both ways. It may be half a step shorter as well."] },
      },
      working: (say) => [`(${say.bare("steps")} − ½) × ${say.bare("tipMm")} = ${say.number(ends(say).from)} mm`, `(${say.bare("steps")} + ½) × ${say.bare("tipMm")} = ${say.number(ends(say).to)} mm`],
      right: (say) => [`${say.number(ends(say).from)} to ${say.number(ends(say).to)} mm. If your sheet’s limit lies inside, the probe has not decided.`],
      off: () => ["Steps times tip, and half a tip either way."],
      moves: () => ["A shorter tip narrows the range; more steps lengthen both ends and leave the range as wide."],
    },
  },
};
