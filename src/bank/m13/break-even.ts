import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { sumOnGrid } from "../../engine/quantity/grid.ts";
import { drawPlace } from "./count-words.ts";

const pieces = { unit: "pieces" } as const;
const CAPITAL = { key: "capitalPieces", ...pieces, least: 4000, greatest: 30_000, step: 500 };
const SINGLE = { key: "singlePieces", ...pieces, least: 150, greatest: 600, step: 10 };
const REPROCESS = { key: "reprocessPieces", ...pieces, least: 60, greatest: 320, step: 10 };
const REPAIR = { key: "repairPieces", ...pieces, least: 20, greatest: 200, step: 10 };

const of = (givens: Givens, key: string): number => givens[key] as number;
const saved = (givens: Givens): number => sumOnGrid(of(givens, "singlePieces"), -of(givens, "reprocessPieces"), -of(givens, "repairPieces"));
const cases = (givens: Givens, divisor: number): Solution | null => (divisor > 0 ? { casesPieces: of(givens, "capitalPieces") / divisor } : null);
const isNever = (say: Say): boolean => "says" in say.answer;
const savedOf = (say: Say): number => say.value("singlePieces") - say.value("reprocessPieces") - say.value("repairPieces");
const answer = (say: Say): string => say.number(Math.ceil((say.answer as Readonly<Record<string, number>>)["casesPieces"] ?? 0), 0);

const quotient = (say: Say): string => {
  const cases = say.value("capitalPieces") / savedOf(say);
  return Number.isInteger(cases) ? answer(say) : `${say.number(cases, 2)}, rounded up: ${answer(say)}`;
};

/** 13f: from how many cases on a reusable set costs less. */
export const breakEven: SumFamily = {
  kind: "sum",
  id: "break-even",
  code: "13f",
  module: "M13",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m13-cost"],
  reads: [],
  sources: [],
  cautions: ["C2", "C7"],
  givens: [CAPITAL, SINGLE, REPROCESS, REPAIR],
  asks: [{ id: "casesPieces", unit: "pieces", roundTo: 1, rounding: "up", safeSide: "none" }],
  draw: (chance) => {
    const local = { from: "local" } as const;
    return {
      givens: { capitalPieces: chance.onGrid(CAPITAL), singlePieces: chance.onGrid(SINGLE), reprocessPieces: chance.onGrid(REPROCESS), repairPieces: chance.onGrid(REPAIR) },
      about: drawPlace(chance),
      origins: { capitalPieces: local, singlePieces: local, reprocessPieces: local, repairPieces: local },
    };
  },
  solve: (givens) => {
    const capital = of(givens, "capitalPieces");
    const perCase = saved(givens);
    return perCase > 0 ? { casesPieces: capital / perCase } : { says: "none" };
  },
  slips: [
    { id: "divided-by-the-price", gives: ({ givens }) => cases(givens, of(givens, "singlePieces")) },
    { id: "repair-forgotten", gives: ({ givens }) => cases(givens, of(givens, "singlePieces") - of(givens, "reprocessPieces")) },
    { id: "reprocessing-forgotten", gives: ({ givens }) => cases(givens, of(givens, "singlePieces") - of(givens, "repairPieces")) },
    { id: "sign-lost", gives: ({ givens }) => (saved(givens) < 0 ? cases(givens, -saved(givens)) : null) },
  ],
  words: {
    en: {
      title: "From which case on does it pay?",
      stems: [
        (say) => [`A reusable set is offered to ${say.about("hospital")}. Until now a single-use set is opened for each case. All sums are in whole coins of the hospital’s own money.`],
        (say) => [`You prepare a decision at ${say.about("hospital")}: buy a set that is reprocessed, or go on opening one for each case. Figures of the hospital, in whole coins of its money.`],
        (say) => [`“It has paid for itself in no time,” says a letter to ${say.about("hospital")}. You reckon it again with the hospital’s own figures, in whole coins of its money.`],
      ],
      question: "From how many cases on does the reusable set cost no more than single-use ones? Round up to a whole case, or say that it never does.",
      givens: { capitalPieces: "Price of the reusable set, once", singlePieces: "Price of a single-use set, each case", reprocessPieces: "Reprocessing, each case", repairPieces: "Repair and loss, each case on average" },
      asks: { casesPieces: "Cases" },
      says: { none: "It never does", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "divided-by-the-price": { name: "divided by the price", because: (say) => [`Each case saves the price of a single-use set and costs reprocessing and repair. What remains is ${say.number(savedOf(say), 0)}, not ${say.bare("singlePieces")}.`] },
        "repair-forgotten": { name: "repair forgotten", because: (say) => [`Reusable things break. ${say.bare("repairPieces")} a case has to come off as well.`] },
        "reprocessing-forgotten": { name: "reprocessing forgotten", because: (say) => [`Cleaning and sterilising cost ${say.bare("reprocessPieces")} each time, and that is what makes the difference small.`] },
        "sign-lost": { name: "a loss reckoned as a saving", because: (say) => [`Each case costs ${say.number(-savedOf(say), 0)} more than it saves. The sum never comes back, however many cases there are.`] },
      },
      working: (say) => isNever(say)
        ? [`Saved by each case: ${say.bare("singlePieces")} − ${say.bare("reprocessPieces")} − ${say.bare("repairPieces")} = ${say.number(savedOf(say), 0)}`, "Nothing is saved, so the price never comes back."]
        : [`Saved by each case: ${say.bare("singlePieces")} − ${say.bare("reprocessPieces")} − ${say.bare("repairPieces")} = ${say.number(savedOf(say), 0)}`, `${say.bare("capitalPieces")} ÷ ${say.number(savedOf(say), 0)} = ${quotient(say)}`],
      right: (say) => [isNever(say) ? "Where reprocessing and repair cost as much as a new set or more, no number of cases brings the price back." : `From ${answer(say)} cases on. Money is one reason among several; it says nothing about what is better for the child.`],
      off: (say) => [isNever(say) ? "Look at what each case saves before dividing: here it saves nothing." : `Divide the price by what each case really saves, ${say.number(savedOf(say), 0)}.`],
      inverse: () => [],
      turns: (say) => [`It never pays where reprocessing and repair together reach ${say.bare("singlePieces")}.`],
    },
  },
};
