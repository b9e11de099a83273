import type { Givens } from "../../engine/question/family-head.ts";
import type { Ends, RangeFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { countFact } from "../../facts/count.ts";
import { drawPlace } from "./count-words.ts";

const PIN = "retained.who-range@1";
const CASES = { key: "casesPerYearPieces", unit: "pieces", least: 150, greatest: 1200, step: 10 } as const;
const OFTEN = { key: "oftenOnePieces", unit: "pieces", least: 1000, greatest: 30_000, step: 1000 } as const;
const RARE = { key: "rareOnePieces", unit: "pieces", least: 1000, greatest: 30_000, step: 1000 } as const;

const of = (givens: Givens, key: string): number => givens[key] as number;
const years = (givens: Givens, key: string): number => of(givens, key) / of(givens, "casesPerYearPieces");
const ends = (givens: Givens): Ends => ({ from: years(givens, "oftenOnePieces"), to: years(givens, "rareOnePieces") });
const year = (say: Say, key: string): string => say.number(say.value(key) / say.value("casesPerYearPieces"), 0);

/** 13g: how many years to one thing left behind. */
export const howRare: RangeFamily = {
  kind: "range",
  id: "how-rare",
  code: "13g",
  module: "M13",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m13-rare"],
  reads: [PIN],
  sources: [{ source: "who-retained", entry: PIN }],
  cautions: ["C2", "C5", "C9"],
  givens: [CASES, OFTEN, RARE],
  unit: "pieces",
  roundTo: 1,
  draw: (chance) => {
    const { from = 0, to = 0 } = countFact(PIN).number;
    const origin = { from: "study", entry: PIN } as const;
    return {
      givens: { casesPerYearPieces: chance.onGrid(CASES), oftenOnePieces: from, rareOnePieces: to },
      about: { ...drawPlace(chance), unit: chance.pick(["a day unit", "a children’s department", "one theatre", "a group of four surgeons", "the knee unit of a teaching hospital", "two day units together", "a small hospital by the sea"]) },
      origins: { casesPerYearPieces: { from: "local" }, oftenOnePieces: origin, rareOnePieces: origin },
    };
  },
  solve: ends,
  slips: [
    { id: "one-point", gives: ({ givens }) => { const middle = (ends(givens).from + ends(givens).to) / 2; return { from: middle, to: middle }; } },
    { id: "one-end", gives: ({ givens }) => ({ from: ends(givens).from, to: ends(givens).from }) },
    { id: "turned-over", gives: ({ givens }) => ({ from: 1 / ends(givens).to, to: 1 / ends(givens).from }) },
    { id: "a-month-for-a-year", gives: ({ givens }) => ({ from: ends(givens).from * 12, to: ends(givens).to * 12 }) },
  ],
  words: {
    en: {
      title: "How rare is rare?",
      stems: [
        (say) => [`“In all my years nothing was ever left behind,” says somebody at ${say.about("hospital")}. The operations are those of ${say.about("unit")}. The published rate is for operations of all kinds, not for arthroscopy, and not for children.`],
        (say) => [`What is to be expected of ${say.about("unit")} at ${say.about("hospital")}, if the operations there were like operations of all kinds? No rate for arthroscopy of children was found.`],
        (say) => [`A rate means little until it is turned into years. Take ${say.about("unit")} at ${say.about("hospital")}, and the published rate for operations of all kinds.`],
      ],
      question: "Between how many and how many years would one thing be left behind? Give both ends in whole years.",
      givens: { casesPerYearPieces: "Operations in a year, this unit", oftenOnePieces: "One left behind in, at the more frequent end", rareOnePieces: "One left behind in, at the rarer end" },
      slips: {
        "one-point": { name: "one number for a range", because: (say) => [`The rate itself is a range, so the answer is one: from ${year(say, "oftenOnePieces")} to ${year(say, "rareOnePieces")} years. Give the range.`] },
        "one-end": { name: "only one end", because: () => ["That is the more frequent end. The rarer end belongs to the answer as well."] },
        "turned-over": { name: "division turned over", because: () => ["That is how many things a year. Turn it round: the operations to one thing, divided by the operations of a year."] },
        "a-month-for-a-year": { name: "months for years", because: (say) => [`${say.bare("casesPerYearPieces")} operations are those of a whole year.`] },
      },
      working: (say) => [`More frequent: ${say.bare("oftenOnePieces")} ÷ ${say.bare("casesPerYearPieces")} = ${year(say, "oftenOnePieces")} years`, `Rarer: ${say.bare("rareOnePieces")} ÷ ${say.bare("casesPerYearPieces")} = ${year(say, "rareOnePieces")} years`],
      right: (say) => [`From ${year(say, "oftenOnePieces")} to ${year(say, "rareOnePieces")} years. So rare that nobody sees it coming, which is why the count is made each time.`],
      off: (say) => [`Divide both ends by the operations of a year: ${year(say, "oftenOnePieces")} and ${year(say, "rareOnePieces")} years.`],
      moves: () => ["Twice as many operations halve both ends. The later end stays as many times the earlier one as before: the rate is as uncertain as it was."],
      turns: () => ["A range is right where both of its ends come from the published rate. One number would claim to know more than was published."],
    },
  },
};
