import { score0To100 } from "../../engine/evidence/score-0-to-100.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerOf, childOf, drawCase, given } from "./later-words.ts";

const PER_CENT = 100;
const pieces = { unit: "points", step: 1 } as const;
const RAW = { key: "rawPoints", least: 10, greatest: 95, ...pieces };
const LEAST = { key: "leastPoints", least: 5, greatest: 20, ...pieces };
const GREATEST = { key: "greatestPoints", least: 60, greatest: 110, ...pieces };

const score = (givens: Givens): number => score0To100({ rawPoints: given(givens, "rawPoints"), leastPoints: given(givens, "leastPoints"), greatestPoints: given(givens, "greatestPoints") });
const answer = (say: Say): string => say.number(answerOf(say, "scorePoints"));
const span = (say: Say): number => say.value("greatestPoints") - say.value("leastPoints");

/** 14h: a raw sum on the scale from 0 to 100. */
export const score100: SumFamily = {
  kind: "sum",
  id: "score-100",
  code: "14h",
  module: "M14",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m14-score"],
  reads: [],
  sources: [],
  cautions: ["C2", "C16"],
  givens: [RAW, LEAST, GREATEST],
  asks: [{ id: "scorePoints", unit: "points", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const leastPoints = chance.onGrid(LEAST);
    const greatestPoints = chance.onGrid(GREATEST);
    return { givens: { rawPoints: chance.onGrid({ ...RAW, least: leastPoints + 5, greatest: Math.min(RAW.greatest, greatestPoints - 3) }), leastPoints, greatestPoints }, about: drawCase(chance) };
  },
  solve: (givens) => ({ scorePoints: score(givens) }),
  slips: [
    { id: "least-forgotten", gives: ({ givens }) => ({ scorePoints: (PER_CENT * given(givens, "rawPoints")) / given(givens, "greatestPoints") }) },
    { id: "half-corrected", gives: ({ givens }) => ({ scorePoints: (PER_CENT * (given(givens, "rawPoints") - given(givens, "leastPoints"))) / given(givens, "greatestPoints") }) },
    { id: "from-the-top", gives: ({ givens }) => ({ scorePoints: PER_CENT - score(givens) }) },
  ],
  words: {
    en: {
      title: "On a scale from 0 to 100",
      stems: [
        (say) => [`${childOf(say)}, has filled in a knee score. Every item gives at least one point, so even the worst sheet does not add up to nothing.`],
        (say) => [`At ${say.about("hospital")} two scores are to be compared, so both are put on the same scale. This is the sheet of ${childOf(say)}.`],
        (say) => [`A raw sum stands on the sheet of ${childOf(say)}. To mean anything beside other sheets it has to run from 0 for the worst to 100 for the best.`],
      ],
      question: "What is the score from 0 to 100, to the nearest tenth? High is good in this instrument.",
      givens: { rawPoints: "Sum of the items", leastPoints: "Least possible sum", greatestPoints: "Greatest possible sum" },
      asks: { scorePoints: "Score" },
      says: { none: "No such score", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "least-forgotten": { name: "least sum forgotten", because: (say) => [`Sum over greatest would begin at ${say.number((PER_CENT * say.value("leastPoints")) / say.value("greatestPoints"))} and not at 0. Take ${say.bare("leastPoints")} from both.`] },
        "half-corrected": { name: "taken off above only", because: (say) => [`The span from worst to best is ${say.number(span(say), 0)}, not ${say.bare("greatestPoints")}. The best sheet would not reach 100.`] },
        "from-the-top": { name: "counted from the top", because: () => ["High is good here. That is how much is missing from the best."] },
      },
      working: (say) => [`Above the least: ${say.bare("rawPoints")} − ${say.bare("leastPoints")} = ${say.number(say.value("rawPoints") - say.value("leastPoints"), 0)}`, `Span: ${say.bare("greatestPoints")} − ${say.bare("leastPoints")} = ${say.number(span(say), 0)}`, `100 × ${say.number(say.value("rawPoints") - say.value("leastPoints"), 0)} ÷ ${say.number(span(say), 0)} = ${answer(say)}`],
      right: (say) => [`${answer(say)}. The least sum is taken off above and below, so the worst is 0 and the best is 100.`],
      off: (say) => [`Take the least sum from the raw sum and from the greatest, then divide: ${answer(say)}.`],
      inverse: () => [],
      turns: () => ["Sum over greatest is right only where the least possible sum is 0."],
    },
  },
};
