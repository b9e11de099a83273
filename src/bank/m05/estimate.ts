import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { occlusionEstimateMmHg } from "../../engine/theatre/occlusion-estimate-mm-hg.ts";
import { cuff } from "../../facts/cuff.ts";
import { answerIn, given, HOSPITALS, measure } from "./theatre-words.ts";

const CONSTANT = "cuff-estimate.constant@1";
const SYSTOLIC = { key: "systolicMmHg", unit: "mmHg", least: 90, greatest: 150, step: 1 } as const;
const GIRTH = { key: "girthCm", unit: "cm", least: 36, greatest: 62, step: 1 } as const;
const SPLIT = { key: "splitCm", unit: "cm", least: 45, greatest: 55, step: 5 } as const;
const BELOW = { key: "belowCoefficient", unit: "pieces", least: 0.76, greatest: 0.86, step: 0.01 } as const;
const FROM = { key: "fromCoefficient", unit: "pieces", least: 0.7, greatest: 0.8, step: 0.01 } as const;
const PERSONS = ["Mr Aldous, 34", "Ms Brandt, 41", "Mr Castell, 29", "Ms Dahl, 52", "Mr Ebner, 47", "Ms Farrow, 38"] as const;

const added = (): number => cuff(CONSTANT).number.value ?? 0;
const isBelow = (givens: Givens): boolean => given(givens, "girthCm") < given(givens, "splitCm");
const coefficient = (givens: Givens): number => given(givens, isBelow(givens) ? "belowCoefficient" : "fromCoefficient");
const beside = (givens: Givens): number => given(givens, isBelow(givens) ? "fromCoefficient" : "belowCoefficient");
const estimateOf = (givens: Givens, tissueCoefficient = coefficient(givens)): number => {
  const systolicMmHg = given(givens, "systolicMmHg");
  return systolicMmHg > 0 && tissueCoefficient > 0 && tissueCoefficient <= 1 ? occlusionEstimateMmHg({ systolicMmHg, tissueCoefficient }) : Number.NaN;
};
const row = (say: Say): string => say.bare(say.value("girthCm") < say.value("splitCm") ? "belowCoefficient" : "fromCoefficient");
const answer = (say: Say): string => measure(answerIn(say, "estimateMmHg"), "mmHg");

/** 05c: an occlusion pressure estimated by a formula for adults. */
export const estimate: SumFamily = {
  kind: "sum",
  id: "estimate",
  code: "05c",
  module: "M05",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m05-pressure"],
  reads: [CONSTANT],
  sources: [{ source: "tuncali-2006", entry: CONSTANT }],
  cautions: ["C9", "C15"],
  givens: [SYSTOLIC, GIRTH, SPLIT, BELOW, FROM],
  asks: [{ id: "estimateMmHg", unit: "mmHg", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const fromCoefficient = chance.onGrid(FROM);
    const belowCoefficient = Math.max(BELOW.least, Number((fromCoefficient + chance.onGrid({ least: 0.04, greatest: 0.06, step: 0.01 })).toFixed(2)));
    return {
      givens: { systolicMmHg: chance.onGrid(SYSTOLIC), girthCm: chance.onGrid(GIRTH), splitCm: chance.onGrid(SPLIT), belowCoefficient, fromCoefficient },
      about: { person: chance.pick(PERSONS), hospital: chance.pick(HOSPITALS) },
      origins: { splitCm: { from: "local" }, belowCoefficient: { from: "local" }, fromCoefficient: { from: "local" } },
    };
  },
  solve: (givens) => ({ estimateMmHg: estimateOf(givens) }),
  slips: [
    { id: "multiplied", gives: ({ givens }) => ({ estimateMmHg: (given(givens, "systolicMmHg") + added()) * coefficient(givens) }) },
    { id: "constant-left-out", gives: ({ givens }) => ({ estimateMmHg: given(givens, "systolicMmHg") / coefficient(givens) }) },
    { id: "constant-added-last", gives: ({ givens }) => ({ estimateMmHg: given(givens, "systolicMmHg") / coefficient(givens) + added() }) },
    { id: "row-beside", gives: ({ givens }) => ({ estimateMmHg: estimateOf(givens, beside(givens)) }) },
  ],
  inverseOf: "systolicMmHg",
  words: {
    en: {
      title: "An estimate for adults",
      stems: [
        (say) => [`${say.about("person")}, an adult, lies on the table before the children. The occlusion pressure cannot be measured today, and ${say.about("hospital")} hospital uses the published estimate: (systolic pressure + ${added()}) ÷ tissue coefficient. The coefficients are from the sheet of that hospital.`],
        (say) => [`On the adult list of ${say.about("hospital")} hospital the sheet has two rows of tissue coefficients. For ${say.about("person")}, you estimate the occlusion pressure by (systolic pressure + ${added()}) ÷ coefficient.`],
        (say) => [`${say.about("person")}: an adult thigh. The formula was worked out on adults: systolic pressure and ${added()} more, divided by the tissue coefficient. The two rows are those of ${say.about("hospital")} hospital.`],
      ],
      question: "What occlusion pressure does the formula estimate? To the nearest mmHg.",
      givens: {
        systolicMmHg: "Systolic blood pressure",
        girthCm: "Girth of the thigh",
        splitCm: "Girth at which the table changes its row, local sheet",
        belowCoefficient: "Coefficient below that girth, local sheet",
        fromCoefficient: "Coefficient from that girth on, local sheet",
      },
      asks: { estimateMmHg: "Estimate" },
      says: { none: "No estimate exists", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        multiplied: { name: "multiplied", because: () => ["The tissue takes some of the pressure, so the cuff needs more than the artery has. A coefficient below 1 must divide."] },
        "constant-left-out": { name: "constant left out", because: () => [`The formula adds ${added()} to the systolic pressure before it divides.`] },
        "constant-added-last": { name: "constant added last", because: () => [`The ${added()} stand inside the bracket: added first, then divided with the rest.`] },
        "row-beside": { name: "the row beside", because: (say) => [`The girth is ${say.of("girthCm")}, and the table changes at ${say.of("splitCm")}. The coefficient of this row is ${row(say)}.`] },
      },
      working: (say) => [`Row for ${say.of("girthCm")}: ${row(say)}`, `(${say.bare("systolicMmHg")} + ${added()}) ÷ ${row(say)} = ${answer(say)}`],
      right: (say) => [`${answer(say)} as an estimate for an adult. It was worked out on adults and not checked in children: for a child it is no limit and no replacement for a measured pressure.`],
      off: () => ["Find the row by the girth, add the constant to the systolic pressure, divide. It is an adult formula, never a child’s limit."],
      inverse: (say, { text }) => [`If the systolic pressure were ${text}. It is ${say.of("systolicMmHg")}.`],
    },
  },
};
