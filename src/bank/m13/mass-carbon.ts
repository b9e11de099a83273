import type { Givens } from "../../engine/question/family-head.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { carbon } from "../../facts/carbon.ts";
import { drawPlace } from "./count-words.ts";

const CLINICAL_PIN = "carbon-waste.clinical@1";
const INFECTIOUS_PIN = "carbon-waste.infectious@1";
const KG_PER_T = 1000;
const LIGHT = { key: "clinicalKg", unit: "kg", least: 0.5, greatest: 6, step: 0.1 } as const;
const INFECTIOUS = { key: "infectiousKg", unit: "kg", least: 0.3, greatest: 4, step: 0.1 } as const;
const LIGHT_FACTOR = { key: "clinicalPerTonneKg", unit: "kg", least: 100, greatest: 1000, step: 1 } as const;
const INFECTIOUS_FACTOR = { key: "infectiousPerTonneKg", unit: "kg", least: 100, greatest: 1000, step: 1 } as const;

const of = (givens: Givens, key: string): number => givens[key] as number;
const burned = (givens: Givens, light: number, infectious: number): number => (of(givens, "clinicalKg") * light + of(givens, "infectiousKg") * infectious) / KG_PER_T;
const total = (givens: Givens): number => burned(givens, of(givens, "clinicalPerTonneKg"), of(givens, "infectiousPerTonneKg"));
const answer = (say: Say): string => asAsked((say.answer as Readonly<Record<string, number>>)["carbonKg"] ?? 0, 0.01, "nearest");
const piece = (say: Say, mass: string, factor: string): string => say.number((say.value(mass) * say.value(factor)) / KG_PER_T, 3);

/** 13e: what burning two kinds of waste weighs in carbon. */
export const massCarbon: SumFamily = {
  kind: "sum",
  id: "mass-carbon",
  code: "13e",
  module: "M13",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m13-cost"],
  reads: [CLINICAL_PIN, INFECTIOUS_PIN],
  sources: [{ source: "pearson-2024", entry: CLINICAL_PIN }, { source: "pearson-2024", entry: INFECTIOUS_PIN }],
  cautions: ["C2"],
  givens: [LIGHT, LIGHT_FACTOR, INFECTIOUS, INFECTIOUS_FACTOR],
  asks: [{ id: "carbonKg", unit: "kg", roundTo: 0.01, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({
    givens: {
      clinicalKg: chance.onGrid(LIGHT),
      clinicalPerTonneKg: carbon(CLINICAL_PIN).number.value as number,
      infectiousKg: chance.onGrid(INFECTIOUS),
      infectiousPerTonneKg: carbon(INFECTIOUS_PIN).number.value as number,
    },
    about: drawPlace(chance),
    origins: { clinicalPerTonneKg: { from: "study", entry: CLINICAL_PIN }, infectiousPerTonneKg: { from: "study", entry: INFECTIOUS_PIN } },
  }),
  solve: (givens) => ({ carbonKg: total(givens) }),
  slips: [
    { id: "tonnes-as-kilograms", gives: ({ givens }) => ({ carbonKg: total(givens) * KG_PER_T }) },
    { id: "streams-exchanged", gives: ({ givens }) => ({ carbonKg: burned(givens, of(givens, "infectiousPerTonneKg"), of(givens, "clinicalPerTonneKg")) }) },
    { id: "all-as-infectious", gives: ({ givens }) => ({ carbonKg: burned(givens, of(givens, "infectiousPerTonneKg"), of(givens, "infectiousPerTonneKg")) }) },
    { id: "all-as-clinical", gives: ({ givens }) => ({ carbonKg: burned(givens, of(givens, "clinicalPerTonneKg"), of(givens, "clinicalPerTonneKg")) }) },
    { id: "one-stream-only", gives: ({ givens }) => ({ carbonKg: burned(givens, 0, of(givens, "infectiousPerTonneKg")) }) },
    { id: "infectious-forgotten", gives: ({ givens }) => ({ carbonKg: burned(givens, of(givens, "clinicalPerTonneKg"), 0) }) },
  ],
  words: {
    en: {
      title: "What two bags weigh in carbon",
      stems: [
        (say) => [`After a case at ${say.about("hospital")} two bags are weighed: one infectious, one not. The factors below were published for burning theatre waste, for a tonne each.`],
        (say) => [`A theatre at ${say.about("hospital")} wants to know what the waste of one case weighs in carbon, both bags together. Only the burning is counted, by the published factors below.`],
        (say) => [`Somebody at ${say.about("hospital")} claims that one bag more hardly matters. You weigh both bags and reckon with the published factors for burning.`],
      ],
      question: "How many kilograms of CO₂ equivalent does burning both bags make? To the nearest hundredth.",
      givens: {
        clinicalKg: "Waste, not infectious",
        clinicalPerTonneKg: "CO₂ equivalent of burning one tonne of it",
        infectiousKg: "Infectious waste",
        infectiousPerTonneKg: "CO₂ equivalent of burning one tonne of that",
      },
      asks: { carbonKg: "CO₂ equivalent" },
      says: { none: "No carbon from burning", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "tonnes-as-kilograms": { name: "tonnes taken for kilograms", because: () => ["The factors are for a tonne. For kilograms they are a thousand times smaller."] },
        "streams-exchanged": { name: "factors exchanged", because: () => ["The larger factor belongs to the infectious bag."] },
        "all-as-infectious": { name: "everything as infectious", because: () => ["Only what is infectious carries the larger factor. Sorting is what makes the difference."] },
        "all-as-clinical": { name: "nothing as infectious", because: () => ["The infectious bag carries a factor of its own, and it is the larger one."] },
        "infectious-forgotten": { name: "infectious bag forgotten", because: () => ["Both bags are burned. The infectious one is the heavier of the two in carbon, kilogram for kilogram."] },
        "one-stream-only": { name: "one bag forgotten", because: () => ["Both bags are burned. The one that is not infectious counts as well."] },
      },
      working: (say) => [`Not infectious: ${say.bare("clinicalKg")} × ${say.bare("clinicalPerTonneKg")} ÷ 1000 = ${piece(say, "clinicalKg", "clinicalPerTonneKg")} kg`, `Infectious: ${say.bare("infectiousKg")} × ${say.bare("infectiousPerTonneKg")} ÷ 1000 = ${piece(say, "infectiousKg", "infectiousPerTonneKg")} kg`, `Together ${answer(say)} kg`],
      right: (say) => [`${answer(say)} kg for burning both. Making and carrying the things is not in this number.`],
      off: (say) => [`Each bag by its own factor, divided by a thousand, then added: ${answer(say)} kg.`],
      inverse: () => [],
      turns: (say) => [`A kilogram moved from the infectious bag to the other saves ${say.number((say.value("infectiousPerTonneKg") - say.value("clinicalPerTonneKg")) / KG_PER_T, 2)} kg, if it may go there.`],
    },
  },
};
