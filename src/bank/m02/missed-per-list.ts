import { expectedMisses } from "../../engine/evidence/expected-misses.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import { type Givens, isSays, type Solution } from "../../engine/question/family-head.ts";
import { answerText, answerValue, given, HOSPITALS, PERCENT } from "../m01/common.ts";

const SCANS = { key: "scans", unit: "pieces", least: 8, greatest: 60, step: 1 } as const;
const BASE = { key: "basePercent", unit: "%", least: 10, greatest: 50, step: 5 } as const;
const SENSITIVITY = { key: "sensitivityPercent", unit: "%", least: 60, greatest: 90, step: 1 } as const;

/** Fewer would round to nought missed, more to a chance of a hundred per cent. */
const MISSED = { least: 0.2, greatest: 4 } as const;

const at = (givens: Givens) => ({ patients: given(givens, "scans"), baseRate: given(givens, "basePercent") / PERCENT, sensitivity: given(givens, "sensitivityPercent") / PERCENT });
const solved = (givens: Givens, baseRate = at(givens).baseRate): Solution => {
  const { patients, sensitivity } = at(givens);
  if (!(patients >= 1 && baseRate >= 0 && baseRate <= 1 && sensitivity >= 0 && sensitivity <= 1)) return { says: "none" };
  const { expected, anyShare } = expectedMisses({ patients, baseRate, sensitivity });
  return { missed: expected, anyPercent: PERCENT * anyShare };
};
const mean = (givens: Givens): number => at(givens).patients * at(givens).baseRate * (1 - at(givens).sensitivity);

const noneMissed = (givens: Givens): Solution | null => {
  const solution = solved(givens);
  return isSays(solution) ? null : { ...solution, anyPercent: PERCENT - (solution["anyPercent"] ?? 0) };
};

/** 02f: tears that a list of scans misses, and how likely is at least one. */
export const missedPerList: SumFamily = {
  kind: "sum",
  id: "missed-per-list",
  code: "02f",
  module: "M02",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m02-list"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [SCANS, BASE, SENSITIVITY],
  asks: [
    { id: "missed", unit: "pieces", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
    { id: "anyPercent", unit: "%", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const [basePercent, sensitivityPercent] = [chance.onGrid(BASE), chance.onGrid(SENSITIVITY)];
    const ofOneChild = (basePercent / PERCENT) * (1 - sensitivityPercent / PERCENT);
    const scans = { ...SCANS, least: Math.max(SCANS.least, Math.ceil(MISSED.least / ofOneChild)), greatest: Math.min(SCANS.greatest, Math.floor(MISSED.greatest / ofOneChild)) };
    return { givens: { scans: chance.onGrid(scans), basePercent, sensitivityPercent }, about: { hospital: chance.pick(HOSPITALS), span: chance.pick(["a month", "a season", "a school holiday"]) } };
  },
  solve: (givens) => solved(givens),
  slips: [
    { id: "base-rate-left-out", gives: ({ givens }) => solved(givens, 1) },
    { id: "mean-as-a-chance", gives: ({ givens }) => ({ missed: mean(givens), anyPercent: PERCENT * mean(givens) }) },
    { id: "none-for-one", gives: ({ givens }) => noneMissed(givens) },
    { id: "one-child-only", gives: ({ givens }) => ({ missed: mean(givens), anyPercent: (PERCENT * mean(givens)) / at(givens).patients }) },
  ],
  words: {
    en: {
      title: "Missed in a list",
      stems: [
        (say) => [`In ${say.about("span")} ${say.about("hospital")} scans the children below. Some have a tear, and the scan finds the share that its sensitivity says, independently from child to child.`],
        (say) => [`${say.about("span").charAt(0).toUpperCase()}${say.about("span").slice(1)} of scans at ${say.about("hospital")}. Nobody knows beforehand whose tear will be missed, but how many on average can be worked out.`],
        (say) => [`One scan misses a tear now and then; the longer the list, the likelier that one is missed. ${say.about("hospital")}, ${say.about("span")}, one knee for each child.`],
      ],
      question: "How many tears are missed on average (one decimal), and how likely is at least one (whole per cent)?",
      givens: { scans: "Children scanned", basePercent: "Share with a tear", sensitivityPercent: "Sensitivity of the scan" },
      asks: { missed: "Missed on average", anyPercent: "At least one missed" },
      says: { none: "None is missed", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "base-rate-left-out": { name: "base rate left out", because: (say) => [`Only ${say.of("basePercent")} of the children have a tear. What is not torn cannot be missed.`] },
        "mean-as-a-chance": { name: "mean read as a chance", because: () => ["A mean number may pass one; a chance may not. At least one is what is left when none is missed in every child."] },
        "none-for-one": { name: "chance of none", because: () => ["That is the chance that none is missed. At least one is what is left of a hundred."] },
        "one-child-only": { name: "chance of one child", because: () => ["That is the chance that one child has a tear and it is missed. Over the list it grows."] },
      },
      working: (say) => [
        `Missed of one child: ${say.bare("basePercent")} % × (100 − ${say.bare("sensitivityPercent")}) % = ${say.number((say.value("basePercent") * (PERCENT - say.value("sensitivityPercent"))) / PERCENT, 2)} %`,
        `Times ${say.bare("scans")}: ${say.number(answerValue(say, "missed"), 2)}`,
        `At least one: 100 % less the chance that none is missed in all ${say.bare("scans")}: ${answerText(say, "anyPercent", { places: 0, unit: "%" })}`,
      ],
      right: (say) => [`${say.number(answerValue(say, "missed"))} on average, and at least one with a chance of ${answerText(say, "anyPercent", { places: 0, unit: "%" })}. So a knee that still locks is looked at again, whatever the scan said.`],
      off: () => ["First the share that is missed in one child: torn and not found. Then times the list for the mean, and the rest of none for at least one."],
      inverse: () => [],
      turns: () => ["A longer list misses more on average; the chance of at least one only creeps towards a hundred."],
    },
  },
};
