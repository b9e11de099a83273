import { zeroEventsUpper } from "../../engine/evidence/zero-events-upper.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerOf, drawCase, given, SUM_SAYS } from "./later-words.ts";

const PER_CENT = 100;
const PATIENTS = { key: "patientsPieces", unit: "pieces", least: 20, greatest: 250, step: 1 } as const;
/** "an injury of a nerve", "a clot in the leg" */
const oneHarm = (say: Say): string => `${say.about("harm").startsWith("c") ? "a" : "an"} ${say.about("harm")}`;
const upper = (givens: Givens): number => PER_CENT * zeroEventsUpper({ total: given(givens, "patientsPieces") }).ruleOfThree;
const answer = (say: Say): string => say.number(answerOf(say, "upperPercent"));

/** 14i: what may still be where nothing was seen. */
export const zeroEvents: SumFamily = {
  kind: "sum",
  id: "zero-events",
  code: "14i",
  module: "M14",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m14-rates"],
  reads: [],
  sources: [],
  cautions: ["C2", "C16"],
  givens: [PATIENTS],
  asks: [{ id: "upperPercent", unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({ givens: { patientsPieces: chance.onGrid(PATIENTS) }, about: { ...drawCase(chance), harm: chance.pick(["injury of an artery", "injury of a nerve", "infection of the joint", "clot in the leg"]) } }),
  solve: (givens) => ({ upperPercent: upper(givens) }),
  slips: [
    { id: "zero-per-cent", gives: () => ({ upperPercent: 0 }) },
    { id: "one-more", gives: ({ givens }) => ({ upperPercent: PER_CENT / given(givens, "patientsPieces") }) },
    { id: "share-for-per-cent", gives: ({ givens }) => ({ upperPercent: upper(givens) / PER_CENT }) },
  ],
  words: {
    en: {
      title: "None so far",
      stems: [
        (say) => [`A unit at ${say.about("hospital")} looks back on its repairs. Nobody had ${oneHarm(say)}.`],
        (say) => [`“It has never happened here,” says a surgeon at ${say.about("hospital")}, and means ${oneHarm(say)}. The number of repairs is below.`],
        (say) => [`An invented series reports no ${say.about("harm")}. Before that becomes “no risk” on a leaflet, you reckon how large the risk may still be.`],
      ],
      question: "How large may the risk still be, by the rule of three? In per cent, to the nearest tenth.",
      givens: { patientsPieces: "Repairs, none with this harm" },
      asks: { upperPercent: "Risk, at most" },
      says: SUM_SAYS,
      slips: {
        "zero-per-cent": { name: "none taken for no risk", because: (say) => [`None of ${say.bare("patientsPieces")} is what was seen. A risk of ${answer(say)} per cent would still leave ${say.bare("patientsPieces")} repairs untouched about one time in twenty.`] },
        "one-more": { name: "one over the number", because: () => ["That would be the rate after one event. Where none was seen, three over the number is the end of the 95 per cent interval."] },
        "share-for-per-cent": { name: "share for per cent", because: () => ["Three over the number is a share. In per cent it is a hundred times as much."] },
      },
      working: (say) => [`Rule of three (Hanley 1983): 3 ÷ ${say.bare("patientsPieces")} = ${say.number(answerOf(say, "upperPercent") / PER_CENT, 4)}`, `In per cent: ${answer(say)}`],
      right: (say) => [`Up to ${answer(say)} per cent. Nothing seen is not nothing there.`],
      off: (say) => [`Three over the number of repairs, in per cent: ${answer(say)}.`],
      inverse: () => [],
      turns: () => ["To bring the end down to one per cent, three hundred repairs without the harm are needed."],
    },
  },
};
