import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { localAnaesthetic } from "../../facts/local-anaesthetic.ts";
import { answerNumber, dose, DOSE_SAYS, given, HOSPITALS, plain } from "./dose-words.ts";
import { AGENT_READS, AGENT_SOURCES, AGENTS, limitOf } from "./most-volume.ts";

const CUT_PIN = "la-cut.infant@1";
const PER_CENT = 100;
const CUT_UNTIL_MONTHS = 6;
const MONTHS = { key: "ageMonthsPieces", unit: "pieces", least: 1, greatest: 11, step: 1 } as const;
const WEIGHT_TENTHS = { key: "weightKg", unit: "kg", least: 3.5, greatest: 11.9, step: 0.1 } as const;
const LIMIT = { key: "limitMgPerKg", unit: "mg/kg", least: 1, greatest: 10, step: 1 } as const;
const CUT = { key: "cutPercent", unit: "%", least: 10, greatest: 50, step: 5 } as const;

const isCut = (givens: Givens): boolean => given(givens, "ageMonthsPieces") < CUT_UNTIL_MONTHS;
const whole = (givens: Givens): number => given(givens, "weightKg") * given(givens, "limitMgPerKg");
const left = (givens: Givens): number => 1 - given(givens, "cutPercent") / PER_CENT;

/** Weights that fit the month, for plausibility only, from memory; a tenth that is not 0 stands at the end. */
const drawWeight = (chance: Chance, months: number): number => {
  for (;;) {
    const least = 4 + months * 0.4;
    const weightKg = chance.onGrid({ least: Math.round(least * 10) / 10, greatest: Math.round((least + 2) * 10) / 10, step: 0.1 });
    if (Math.round(weightKg * 10) % 10 !== 0) return weightKg;
  }
};

const drawn = (chance: Chance): Draw => {
  const agent = chance.pick(AGENTS);
  const ageMonthsPieces = chance.onGrid(MONTHS);
  return {
    givens: { ageMonthsPieces, weightKg: drawWeight(chance, ageMonthsPieces), limitMgPerKg: limitOf(agent), cutPercent: localAnaesthetic(CUT_PIN).number.value as number },
    about: { child: chance.pick(["Asta", "Bram", "Cosima", "Piet", "Linnea"]), hospital: chance.pick(HOSPITALS), agent: agent.agent },
    origins: { limitMgPerKg: { from: "local", entry: agent.limit }, cutPercent: { from: "local", entry: CUT_PIN } },
  };
};

const answer = (say: Say): string => dose(Math.floor(Number(answerNumber(say, "limitMg").toFixed(6))), "mg");
const wholeMg = (say: Say): number => say.value("weightKg") * say.value("limitMgPerKg");
const cutHere = (say: Say): boolean => say.value("ageMonthsPieces") < CUT_UNTIL_MONTHS;
const leftPercent = (say: Say): number => PER_CENT - say.value("cutPercent");

/** 12g: the lower limit of an infant. */
export const infant: SumFamily = {
  kind: "sum",
  id: "infant",
  code: "12g",
  module: "M12",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m12-dose"],
  reads: [...AGENT_READS, CUT_PIN],
  sources: [{ source: "aap-sedation", entry: CUT_PIN }, ...AGENT_SOURCES],
  cautions: ["C2", "C4"],
  givens: [MONTHS, WEIGHT_TENTHS, LIMIT, CUT],
  asks: [{ id: "limitMg", unit: "mg", roundTo: 1, rounding: "down", safeSide: "none" }],
  draw: drawn,
  solve: (givens) => {
    const share = left(givens);
    return { limitMg: whole(givens) * (isCut(givens) ? share : 1) };
  },
  slips: [
    { id: "not-cut", gives: ({ givens }) => (isCut(givens) ? { limitMg: whole(givens) } : null) },
    { id: "cut-in-whole-years", gives: ({ givens }) => (isCut(givens) ? null : { limitMg: whole(givens) * left(givens) }) },
    { id: "only-the-cut", gives: ({ givens }) => ({ limitMg: whole(givens) * (1 - left(givens)) }) },
    { id: "weight-cut-too", gives: ({ givens }) => (isCut(givens) ? { limitMg: whole(givens) * left(givens) ** 2 } : null) },
  ],
  words: {
    en: {
      title: "Under six months",
      stems: [
        (say) => [`${say.about("child")} has an infected knee that is washed out. The sheet at ${say.about("hospital")} lowers the limit of ${say.about("agent")} for infants under six months.`],
        (say) => [`The knee of ${say.about("child")}, an infant, is to be washed out. Before ${say.about("agent")} is drawn up at ${say.about("hospital")}, somebody asks for the limit in milligrams. The sheet lowers it under six months of age.`],
        (say) => [`An infant at ${say.about("hospital")}: ${say.about("child")}, with the age and weight below. Under six months the sheet cuts the limit of ${say.about("agent")}, whatever the weight.`],
      ],
      question: "Which limit counts for this infant? In milligrams, rounded down to a whole one.",
      givens: { ageMonthsPieces: "Age in months, completed", weightKg: "Body weight, measured today", limitMgPerKg: (say) => `Limit of ${say.about("agent")}, this hospital’s sheet`, cutPercent: "Lowered under six months by, the same sheet" },
      asks: { limitMg: "Limit for this infant" },
      says: DOSE_SAYS,
      slips: {
        "not-cut": { name: "not lowered", because: (say) => [`Under six months the limit is lowered, and this child is under it. ${dose(wholeMg(say), "mg")} is the limit of an older child of this weight.`] },
        "cut-in-whole-years": { name: "age in whole years", because: (say) => [`In completed years the child is 0, but the sheet asks for months: ${say.bare("ageMonthsPieces")} is not under six. A limit that is too low may leave pain.`] },
        "only-the-cut": { name: "the cut taken for the rest", because: (say) => [`Lowered by ${say.bare("cutPercent")} per cent leaves ${leftPercent(say)} per cent. You took the part that is cut away.`] },
        "weight-cut-too": { name: "cut twice", because: () => ["The limit is lowered once. The weight has been measured and stays what it is."] },
      },
      working: (say) => [`By weight: ${say.bare("weightKg")} × ${say.bare("limitMgPerKg")} = ${dose(wholeMg(say), "mg")}`, cutHere(say) ? `Under six months: ${leftPercent(say)} per cent of it, ${plain(answerNumber(say, "limitMg"))} mg` : "Six months or more: not lowered", `Down to ${answer(say)}`],
      right: (say) => [cutHere(say) ? `${answer(say)}. The cut goes by age, and it is made once.` : `${answer(say)}. At ${say.bare("ageMonthsPieces")} months nothing is cut.`],
      off: (say) => [`Weight times limit is ${dose(wholeMg(say), "mg")}; then ask whether the age in months is under six.`],
      inverse: () => [],
      turns: (say) => [`At six months the limit steps from ${leftPercent(say)} to 100 per cent. Nothing about the weight decides that.`],
    },
  },
};
