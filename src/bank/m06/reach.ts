import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerValue, given, isSaid, SIDES, withPlaces } from "../m01/common.ts";

const WORKING = { key: "workingMm", unit: "mm", least: 70, greatest: 140, step: 5 } as const;
const TISSUE = { key: "softTissueMm", unit: "mm", least: 8, greatest: 40, step: 1 } as const;
const PATH = { key: "pathMm", unit: "mm", least: 40, greatest: 85, step: 1 } as const;

/** Soft tissue that goes with a build, for plausibility only: no published thickness was found. */
const TISSUE_OF = { slim: { least: 8, greatest: 15 }, tall: { least: 12, greatest: 24 }, sturdy: { least: 18, greatest: 40 } } as const;

const spare = (givens: Givens): number => sumOnGrid(given(givens, "workingMm"), -given(givens, "softTissueMm"), -given(givens, "pathMm"));
const spareOf = (givens: Givens): Solution => (spare(givens) < 0 ? { says: "none" } : { spareMm: spare(givens) });
const above = (spareMm: number): Solution | null => (spareMm < 0 ? null : { spareMm });
const spareHere = (say: Say): number => spare({ workingMm: say.value("workingMm"), softTissueMm: say.value("softTissueMm"), pathMm: say.value("pathMm") });

/** "1 mm is", "17 mm are". */
const inMm = (value: number): string => `${withPlaces(value, 0, "mm")} ${value === 1 ? "is" : "are"}`;

/** 06b: how much of an instrument is left outside when its tip is at the target. */
export const reach: SumFamily = {
  kind: "sum",
  id: "reach",
  code: "06b",
  module: "M06",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m06-angle"],
  reads: [],
  sources: [],
  cautions: ["C6"],
  givens: [WORKING, TISSUE, PATH],
  asks: [{ id: "spareMm", unit: "mm", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const build = chance.pick(Object.keys(TISSUE_OF) as readonly (keyof typeof TISSUE_OF)[]);
    return {
      givens: { workingMm: chance.onGrid(WORKING), softTissueMm: chance.onGrid({ ...TISSUE, ...TISSUE_OF[build] }), pathMm: chance.onGrid(PATH) },
      about: { side: chance.pick(SIDES), tool: chance.pick(["hook probe", "grasper", "small scope", "suture retriever"]), build },
    };
  },
  solve: spareOf,
  slips: [
    { id: "tissue-left-out", gives: ({ givens }) => above(sumOnGrid(given(givens, "workingMm"), -given(givens, "pathMm"))) },
    { id: "tissue-added", gives: ({ givens }) => above(sumOnGrid(given(givens, "workingMm"), given(givens, "softTissueMm"), -given(givens, "pathMm"))) },
    { id: "less-than-nothing", gives: ({ givens }) => (spare(givens) < 0 ? { spareMm: spare(givens) } : null) },
    { id: "sign-dropped", gives: ({ givens }) => (spare(givens) < 0 ? { spareMm: -spare(givens) } : null) },
  ],
  words: {
    en: {
      title: "Does it reach",
      stems: [
        (say) => [`A ${say.about("tool")} goes through the skin and soft tissue of a ${say.about("build")} adolescent and then along the planned path in the ${say.about("side")} model knee.`],
        (say) => [`Small instruments are short. Before you ask for this ${say.about("tool")}, work out what is left outside when its tip is at the target: ${say.about("build")} adolescent, ${say.about("side")} knee, lengths from the plan.`],
        (say) => [`The plan for a ${say.about("side")} knee, drawn for a ${say.about("build")} adolescent, names a ${say.about("tool")} and the way it has to go.`],
      ],
      question: "How much working length is left outside the skin at the target, or does it not reach? In whole millimetres.",
      givens: { workingMm: "Working length", softTissueMm: "Skin to joint, at the portal", pathMm: "Portal to target, inside the joint" },
      asks: { spareMm: "Left outside" },
      says: { none: "It does not reach", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "tissue-left-out": { name: "soft tissue left out", because: (say) => [`${say.of("softTissueMm")} of the instrument are used up before it is in the joint.`] },
        "tissue-added": { name: "soft tissue added", because: () => ["Tissue takes length away. Added, it makes the instrument longer than it is."] },
        "less-than-nothing": { name: "less than nothing left", because: () => ["The sum is right, and what it says is that the instrument does not reach. Nothing below nothing stays outside: give that answer."] },
        "sign-dropped": { name: "sign dropped", because: (say) => [`The plan needs more than there is: ${inMm(-spareHere(say))} missing, not left.`] },
      },
      working: (say) => [
        `${say.of("workingMm")} − ${say.of("softTissueMm")} − ${say.of("pathMm")} = ${withPlaces(spareHere(say), 0, "mm")}`,
        isSaid(say) ? "Below nothing: it does not reach." : "What is left stays in the hand.",
      ],
      right: (say) => isSaid(say) ? ["It does not reach. Another portal or a longer instrument, and better now than with the skin open."] : [`${inMm(answerValue(say, "spareMm"))} left. Swelling takes some of it during the operation.`],
      off: () => ["Take both ways from the working length: through the tissue and through the joint."],
      inverse: () => [],
      turns: (say) => [`It just reaches with a working length of ${withPlaces(say.value("softTissueMm") + say.value("pathMm"), 0, "mm")}.`],
    },
  },
};
