import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerOf, drawCase, given } from "./later-words.ts";

const PER_CENT = 100;
const STEP_KG = 1;
const NEARLY_FULL_PERCENT = 75;
const WEIGHT = { key: "weightKg", unit: "kg", least: 16, greatest: 48, step: 1 } as const;
const RULE = { key: "adultRuleKg", unit: "kg", least: 10, greatest: 25, step: 5 } as const;
const SHARE = { key: "allowedPercent", unit: "%", least: 20, greatest: 50, step: 5 } as const;
/** Weights for plausibility only, from memory; the question states the weight. */
const CHILDREN = [["Asta", "5", 16, 22], ["Linnea", "6", 17, 25], ["Bram", "8", 21, 31], ["Cosima", "10", 26, 38], ["Anton", "12", 32, 48]] as const;

const shareOf = (givens: Givens): number => (PER_CENT * given(givens, "adultRuleKg")) / given(givens, "weightKg");
const limitOf = (givens: Givens): number => (given(givens, "weightKg") * given(givens, "allowedPercent")) / PER_CENT;
/** The adult rule is at most the whole child and at least a kilogram more than the sheet for children allows. */
const isTooMuch = (givens: Givens): boolean => given(givens, "adultRuleKg") <= given(givens, "weightKg") && given(givens, "adultRuleKg") >= limitOf(givens) + STEP_KG;
const share = (say: Say): string => say.number(answerOf(say, "sharePercent"), 0);
const limit = (say: Say): string => say.number(Math.floor(answerOf(say, "limitKg")), 0);
const whoIs = (say: Say): string => `${say.about("child")} is ${say.about("age")}.`;

/** 14b: what a rule in kilograms means for a child, and what the child's own sheet allows. */
export const stepLoad: SumFamily = {
  kind: "sum",
  id: "step-load",
  code: "14b",
  module: "M14",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m14-load"],
  reads: ["load-book.weeks-1-2@1"],
  sources: [{ source: "rehab-book", entry: "load-book.weeks-1-2@1" }],
  cautions: ["C2", "C9", "C16"],
  givens: [WEIGHT, RULE, SHARE],
  asks: [
    { id: "sharePercent", unit: "%", roundTo: 1, rounding: "nearest", safeSide: "up" },
    { id: "limitKg", unit: "kg", roundTo: STEP_KG, rounding: "down", safeSide: "down" },
  ],
  draw: (chance) => {
    for (;;) {
      const [child, age, least, greatest] = chance.pick(CHILDREN);
      const givens = { weightKg: chance.onGrid({ least, greatest, step: 1 }), adultRuleKg: chance.onGrid(RULE), allowedPercent: chance.onGrid(SHARE) };
      if (!isTooMuch(givens)) continue;
      return { givens, about: { ...drawCase(chance), child, age }, origins: { adultRuleKg: { from: "local" }, allowedPercent: { from: "local" } } };
    }
  },
  solve: (givens) => ({ sharePercent: shareOf(givens), limitKg: limitOf(givens) }),
  slips: [
    { id: "adult-kilograms", gives: ({ givens }) => ({ sharePercent: shareOf(givens), limitKg: given(givens, "adultRuleKg") }) },
    { id: "kilograms-as-per-cent", gives: ({ givens }) => ({ sharePercent: given(givens, "adultRuleKg"), limitKg: limitOf(givens) }) },
    { id: "turned-over", gives: ({ givens }) => ({ sharePercent: (PER_CENT * given(givens, "weightKg")) / given(givens, "adultRuleKg"), limitKg: limitOf(givens) }) },
    { id: "share-of-the-rule", gives: ({ givens }) => ({ sharePercent: shareOf(givens), limitKg: (given(givens, "adultRuleKg") * given(givens, "allowedPercent")) / PER_CENT }) },
  ],
  words: {
    en: {
      title: "Kilograms on the leg",
      stems: [
        (say) => [`${whoIs(say)} The discharge letter carries a line for adults: so many kilograms on the ${say.about("side")} leg. The children’s sheet at ${say.about("hospital")} gives a share of the body weight instead.`],
        (say) => [`On the ward a physiotherapist reads the adult rule to ${say.about("child")}, ${say.about("age")}, and puts a scale on the floor. At ${say.about("hospital")} the sheet for children counts in shares of the body weight.`],
        (say) => [`The ${say.about("side")} knee of ${say.about("child")}, ${say.about("age")}, has been repaired. Two rules lie on the desk: kilograms, written for adults, and a share, written for children at ${say.about("hospital")}.`],
      ],
      question: "What share of this child’s weight would the adult rule be, to the nearest per cent? And how many kilograms does the children’s sheet allow, rounded down to a whole kilogram?",
      givens: { weightKg: "Body weight, measured today", adultRuleKg: "Adult rule, on the leg at most", allowedPercent: "Share of body weight, at most, this hospital’s sheet for children" },
      asks: { sharePercent: "Adult rule as a share", limitKg: "Allowed for this child" },
      says: { none: "No load on this leg", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "adult-kilograms": { name: "adult kilograms accepted", because: (say) => [`For ${say.of("weightKg")} of child, ${say.of("adultRuleKg")} are ${share(say)} per cent of the weight${answerOf(say, "sharePercent") >= NEARLY_FULL_PERCENT ? ", nearly full weight" : ""}. The children’s sheet stops at ${say.bare("allowedPercent")} per cent.`] },
        "kilograms-as-per-cent": { name: "kilograms read as per cent", because: (say) => [`${say.bare("adultRuleKg")} kilograms are not ${say.bare("adultRuleKg")} per cent. For a child of ${say.of("weightKg")} they are ${share(say)}, ${answerOf(say, "sharePercent") >= NEARLY_FULL_PERCENT ? "nearly full weight" : "a much larger share"}.`] },
        "turned-over": { name: "division turned over", because: (say) => [`That is the weight over the rule. The share is the rule over the weight: ${say.bare("adultRuleKg")} ÷ ${say.bare("weightKg")}.`] },
        "share-of-the-rule": { name: "share taken of the adult rule", because: (say) => [`The share is one of this child’s weight, not of the adult rule: ${say.bare("allowedPercent")} per cent of ${say.of("weightKg")}.`] },
      },
      working: (say) => [`Adult rule: 100 × ${say.bare("adultRuleKg")} ÷ ${say.bare("weightKg")} = ${share(say)} per cent`, `Children’s sheet: ${say.bare("weightKg")} × ${say.bare("allowedPercent")} ÷ 100 = ${Number(answerOf(say, "limitKg").toFixed(2))} kg, down to ${limit(say)} kg`],
      right: (say) => [`${share(say)} per cent of the weight by the adult rule, and at most ${limit(say)} kg by the children’s sheet. Kilograms do not grow with the child; shares do.`],
      off: (say) => [`Divide the rule by the weight, ${share(say)} per cent, and take the sheet’s share of the weight, ${limit(say)} kg. Both start from ${say.of("weightKg")}.`],
      inverse: () => [],
      turns: (say) => [`The two rules agree only for a child of ${say.number((PER_CENT * say.value("adultRuleKg")) / say.value("allowedPercent"), 0)} kg. Lighter children are loaded too much by the adult rule.`],
    },
  },
};
