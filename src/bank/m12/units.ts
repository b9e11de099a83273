import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { infusionMlPerHour } from "../../engine/theatre/infusion-ml-per-hour.ts";
import { answerNumber, dose, DOSE_SAYS, drawPatient, given, isWrittenSafely, plain, WEIGHT, WEIGHT_LABEL, whoIs } from "./dose-words.ts";

const STEP = 0.1;
const MIN_PER_H = 60;
const MICROGRAMS_PER_MG = 1000;
const RATE = { key: "doseMicrograms", unit: "micrograms", least: 2, greatest: 20, step: 1 } as const;
const STRENGTH = { key: "strengthMgPerMl", unit: "mg/mL", least: 1, greatest: 10, step: 1 } as const;

const rate = (givens: Givens): number =>
  infusionMlPerHour({ weightKg: given(givens, "weightKg"), microgramPerKgPerMin: given(givens, "doseMicrograms"), mgPerMl: given(givens, "strengthMgPerMl") });

/** A rate that can be set on a pump, with a last digit that is not 0. */
const drawCase = (chance: Chance) => {
  for (;;) {
    const { about, weightKg } = drawPatient(chance);
    const givens = { weightKg, doseMicrograms: chance.onGrid(RATE), strengthMgPerMl: chance.pick([1, 2, 4, 5, 10]) };
    const tenths = rate(givens) / STEP;
    if (tenths < 300 && Math.abs(tenths - Math.round(tenths)) * 1000 < 1 && isWrittenSafely(Math.round(tenths) * STEP, STEP)) return { about, givens };
  }
};

const perMin = (say: Say): number => say.value("weightKg") * say.value("doseMicrograms");
const answer = (say: Say): string => dose(answerNumber(say, "volumeMl"), "mL");

/** 12j: from micrograms by weight and minute to millilitres in an hour. */
export const doseUnits: SumFamily = {
  kind: "sum",
  id: "units",
  code: "12j",
  module: "M12",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m12-errors"],
  reads: [],
  sources: [],
  cautions: ["C2", "C4"],
  givens: [WEIGHT, RATE, STRENGTH],
  asks: [{ id: "volumeMl", unit: "mL", roundTo: STEP, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const { about, givens } = drawCase(chance);
    return { givens, about, origins: { doseMicrograms: { from: "local" }, strengthMgPerMl: { from: "local" } } };
  },
  solve: (givens) => ({ volumeMl: rate(givens) }),
  slips: [
    { id: "micrograms-as-milligrams", gives: ({ givens }) => ({ volumeMl: rate(givens) * MICROGRAMS_PER_MG }) },
    { id: "minutes-as-hours", gives: ({ givens }) => ({ volumeMl: rate(givens) / MIN_PER_H }) },
    { id: "strength-left-out", gives: ({ givens }) => (given(givens, "strengthMgPerMl") === 1 ? null : { volumeMl: rate(givens) * given(givens, "strengthMgPerMl") }) },
    { id: "weight-left-out", gives: ({ givens }) => ({ volumeMl: rate(givens) / given(givens, "weightKg") }) },
  ],
  words: {
    en: {
      title: "Three units in one step",
      stems: [
        (say) => [`A pump runs beside ${say.about("child")}, ${say.about("age")}. The sheet at ${say.about("hospital")} gives the dose for each kilogram and minute, the syringe is marked in mg/mL, and the pump wants mL in an hour.`],
        (say) => [`${whoIs(say)} Somebody at ${say.about("hospital")} has set the pump, and you are the second person who reckons. The two of you do it apart and then compare.`],
        (say) => [`In recovery at ${say.about("hospital")} the pump of ${say.about("child")}, ${say.about("age")}, is taken over. You reckon the rate again before you sign for it.`],
      ],
      question: "What volume must the pump give in one hour? To the nearest tenth of a millilitre.",
      givens: { weightKg: WEIGHT_LABEL, doseMicrograms: "Dose for each kilogram and minute, this hospital’s sheet", strengthMgPerMl: "Strength in the syringe, this hospital’s sheet" },
      asks: { volumeMl: "Volume in one hour" },
      says: DOSE_SAYS,
      slips: {
        "micrograms-as-milligrams": { name: "micrograms taken for milligrams", because: () => ["A milligram is a thousand micrograms. The rate is a thousand-fold too large."] },
        "minutes-as-hours": { name: "minutes taken for hours", because: () => ["The dose is for each minute and the pump counts hours: sixty times as much."] },
        "strength-left-out": { name: "milligrams taken for millilitres", because: (say) => [`These are the milligrams of one hour. Each millilitre holds ${say.bare("strengthMgPerMl")} of them.`] },
        "weight-left-out": { name: "weight left out", because: (say) => [`That is the rate for one kilogram. ${say.about("child")} has ${say.bare("weightKg")} of them.`] },
      },
      working: (say) => [`For the child and minute: ${say.bare("weightKg")} × ${say.bare("doseMicrograms")} = ${dose(perMin(say), "micrograms")}`, `In an hour: ${plain(perMin(say))} × 60 ÷ 1000 = ${dose((perMin(say) * MIN_PER_H) / MICROGRAMS_PER_MG, "mg")}`, `In millilitres: ${plain((perMin(say) * MIN_PER_H) / MICROGRAMS_PER_MG)} ÷ ${say.bare("strengthMgPerMl")} = ${answer(say)}`],
      right: (say) => [`${answer(say)} in one hour. Weight, minutes, milligrams, millilitres: one step for each.`],
      off: () => ["Change one unit at a time and write each line down: by weight, by the hour, in milligrams, in millilitres."],
      inverse: () => [],
      turns: (say) => [`A syringe of twice the strength halves the rate. At this strength one microgram more for each kilogram and minute adds ${plain(answerNumber(say, "volumeMl") / say.value("doseMicrograms"))} mL in an hour.`],
    },
  },
};
