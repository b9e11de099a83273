import { detectableChange } from "../../engine/evidence/detectable-change.ts";
import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { scoreFact } from "../../facts/score.ts";
import { answerOf, childOf, drawCase, given } from "./later-words.ts";

const SEM_PIN = "score-sem.child-knee@1";
const DEVIATE = 1.96;
const SCALE_END = 100;
const SEM = { key: "semPoints", unit: "points", least: 4, greatest: 12, step: 0.1 } as const;
const PATIENTS = { key: "patientsPieces", unit: "pieces", least: 1, greatest: 40, step: 1 } as const;
const BEFORE = { key: "beforePoints", unit: "points", least: 40, greatest: 88, step: 1 } as const;
const IMPORTANT = { key: "importantPoints", unit: "points", least: 6, greatest: 20, step: 1 } as const;
const ACCEPTABLE = { key: "acceptablePoints", unit: "points", least: 60, greatest: 85, step: 1 } as const;

const sdc = (givens: Givens): number => detectableChange({ semPoints: given(givens, "semPoints"), patients: given(givens, "patientsPieces") });

/** The score afterwards that is beyond error, important, and acceptable, given what counts as beyond error. */
const leastAfter = (givens: Givens, beyondError: number): number => {
  const change = Math.max(beyondError, given(givens, "importantPoints"));
  return Math.max(sumOnGrid(given(givens, "beforePoints"), change), given(givens, "acceptablePoints"));
};

const solved = (givens: Givens): Solution => {
  const detectablePoints = sdc(givens);
  const leastAfterPoints = leastAfter(givens, detectablePoints);
  return leastAfterPoints > SCALE_END ? { says: "none" } : { detectablePoints, leastAfterPoints };
};
/** A slip in the error carries on into the score that is wanted. */
const withError = (givens: Givens, detectablePoints: number): Solution => ({ detectablePoints, leastAfterPoints: leastAfter(givens, detectablePoints) });
/** The rounded change added, where that makes another score. */
const roundedEarly = (givens: Givens): Solution | null => {
  const early = leastAfter(givens, Number(asAsked(sdc(givens), 0.1, "nearest")));
  const isOther = asAsked(early, 0.1, "up") !== asAsked(leastAfter(givens, sdc(givens)), 0.1, "up");
  return isOther && !isNone(givens) ? { detectablePoints: sdc(givens), leastAfterPoints: early } : null;
};
const isNone = (givens: Givens): boolean => "says" in solved(givens);
const isGroup = (givens: Givens): boolean => given(givens, "patientsPieces") > 1;

const onlyImportant = ({ givens }: Draw): Solution | null =>
  given(givens, "importantPoints") < sdc(givens) ? { detectablePoints: sdc(givens), leastAfterPoints: leastAfter(givens, 0) } : null;

const KEYS = ["semPoints", "patientsPieces", "beforePoints", "importantPoints", "acceptablePoints"];
const of = (say: Say): Givens => Object.fromEntries(KEYS.map((key) => [key, say.value(key)]));
const detectable = (say: Say): string => say.number(sdc(of(say)));
const exact = (say: Say): string => say.number(sdc(of(say)), 3);
const after = (say: Say): string => asAsked(answerOf(say, "leastAfterPoints"), 0.1, "up");
const isEmpty = (say: Say): boolean => "says" in say.answer;
const whose = (say: Say): string => (isGroup(of(say)) ? `the mean of ${say.bare("patientsPieces")} children` : "one child");
const reached = (say: Say): string => asAsked(leastAfter(of(say), sdc(of(say))), 0.1, "up");

/** 14g: which score afterwards would be more than error, and enough. */
export const realChange: SumFamily = {
  kind: "sum",
  id: "real-change",
  code: "14g",
  module: "M14",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m14-score"],
  reads: [SEM_PIN],
  sources: [{ source: "pedi-ikdc-2019", entry: SEM_PIN }],
  cautions: ["C2", "C16"],
  givens: [SEM, PATIENTS, BEFORE, IMPORTANT, ACCEPTABLE],
  asks: [
    { id: "detectablePoints", unit: "points", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
    { id: "leastAfterPoints", unit: "points", roundTo: 0.1, rounding: "up", safeSide: "none" },
  ],
  draw: (chance) => {
    const isStudy = chance.happens(1, 3);
    const semPoints = isStudy ? (scoreFact(SEM_PIN).number.value as number) : chance.onGrid(SEM);
    const patientsPieces = chance.happens(1, 2) ? 1 : chance.onGrid({ ...PATIENTS, least: 9 });
    const givens = { semPoints, patientsPieces, beforePoints: chance.onGrid(BEFORE), importantPoints: chance.onGrid(IMPORTANT), acceptablePoints: chance.onGrid(ACCEPTABLE) };
    const local = { from: "local" } as const;
    return { givens, about: drawCase(chance), origins: { ...(isStudy ? { semPoints: { from: "study", entry: SEM_PIN } } as const : { semPoints: local }), importantPoints: local, acceptablePoints: local } };
  },
  solve: solved,
  slips: [
    { id: "error-of-one-score", gives: ({ givens }) => withError(givens, given(givens, "semPoints") / Math.sqrt(given(givens, "patientsPieces"))) },
    { id: "rounded-too-early", gives: ({ givens }) => roundedEarly(givens) },
    { id: "root-two-left-out", gives: ({ givens }) => withError(givens, sdc(givens) / Math.SQRT2) },
    { id: "group-as-one-child", gives: ({ givens }) => (isGroup(givens) ? withError(givens, DEVIATE * Math.SQRT2 * given(givens, "semPoints")) : null) },
    { id: "ruler-coarser-than-goal", gives: (draw) => onlyImportant(draw) },
    { id: "beyond-the-scale", gives: ({ givens }) => (isNone(givens) ? withError(givens, sdc(givens)) : null) },
  ],
  words: {
    en: {
      title: "Is it better, or is it the ruler?",
      stems: [
        (say) => [`A knee score for children runs from 0 to 100. It is filled in again one year after the operation, for ${whose(say)}. All figures below belong to the same instrument and age group.`],
        (say) => [`At ${say.about("hospital")} ${isGroup(of(say)) ? `the mean score of ${say.bare("patientsPieces")} children` : `the score of ${childOf(say)},`} before the operation lies on the desk. The scale ends at 100. What would have to be read in a year, so that it is more than error, matters, and is enough?`],
        (say) => [`Before the second sheet is opened you write down what you would believe. The score runs from 0 to 100, and it is about ${whose(say)}. The figures below were all found with this instrument in this age group.`],
      ],
      question: "Which change is just beyond error, to the nearest tenth? And which score afterwards, rounded up to a tenth, would be beyond error, important and acceptable at once? Say if no score of the scale can be all three.",
      givens: {
        semPoints: "Standard error of measurement of one score",
        patientsPieces: "Children whose mean is compared",
        beforePoints: "Score before",
        importantPoints: "Smallest change that patients call important, your unit’s figure",
        acceptablePoints: "Score from which patients call their state acceptable, your unit’s figure",
      },
      asks: { detectablePoints: "Change just beyond error", leastAfterPoints: "Score needed afterwards" },
      says: { none: "No score of this scale", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "error-of-one-score": { name: "error of one score", because: () => ["A standard error says how much one reading wobbles. A change has two readings, and 95 per cent takes 1.96 of them: 1.96 × √2 × the standard error."] },
        "rounded-too-early": { name: "rounded before the sum", because: (say) => [`${detectable(say)} is ${exact(say)} rounded. Added with all its digits it takes a little more to be beyond error: round once, at the end.`] },
        "root-two-left-out": { name: "√2 left out", because: (say) => [`Two sheets wobble, before and after, so their errors combine: ${detectable(say)} points and not ${say.number(sdc(of(say)) / Math.SQRT2)}.`] },
        "group-as-one-child": { name: "a group taken for one child", because: (say) => [`The mean of ${say.bare("patientsPieces")} children wobbles less than one of them: divide by the root of ${say.bare("patientsPieces")}.`] },
        "ruler-coarser-than-goal": { name: "the ruler is coarser than the goal", because: (say) => [`${say.of("importantPoints")} may be important, but only ${detectable(say)} points are beyond error. The ruler is coarser than the goal, so the larger of the two counts.`] },
        "beyond-the-scale": { name: "a score beyond the scale", because: (say) => [`${reached(say)} would be needed, and the scale ends at 100. On this instrument no score can show it.`] },
      },
      working: (say) => [
        `Beyond error: 1.96 × √2 × ${say.bare("semPoints")}${isGroup(of(say)) ? ` ÷ √${say.bare("patientsPieces")}` : ""} = ${exact(say)}, so ${detectable(say)} points (de Vet 2006)`,
        `The larger of ${exact(say)} and ${say.bare("importantPoints")}, added to ${say.bare("beforePoints")}; and at least ${say.bare("acceptablePoints")}`,
        isEmpty(say) ? `That would be ${reached(say)}, beyond the end of the scale: no score of this scale.` : `Score needed: ${say.number(leastAfter(of(say), sdc(of(say))), 3)}, rounded up to ${after(say)}`,
      ],
      right: (say) => isEmpty(say) ? [`From ${say.bare("beforePoints")} a change of ${detectable(say)} points does not fit below 100. Saying so is the answer: the ruler ends before the proof.`] : [`${detectable(say)} points are beyond error, and ${after(say)} is the first score that is beyond error, important and acceptable.`],
      off: (say) => isEmpty(say) ? [`Beyond error are ${detectable(say)} points. Added to ${say.bare("beforePoints")} that leaves the scale.`] : [`First the error of a change, ${detectable(say)} points. Then the largest of three demands decides.`],
      inverse: () => [],
      turns: (say) => [`One child needs ${say.number(DEVIATE * Math.SQRT2 * say.value("semPoints"))} points to be beyond error. Which of the three demands decides depends on the score before: the higher it stands, the less the acceptable state matters.`],
    },
  },
};
