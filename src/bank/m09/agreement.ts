import { cohenKappa } from "../../engine/evidence/cohen-kappa.ts";
import { printed, withUnit } from "../../engine/quantity/format.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { tear } from "../../facts/tear.ts";
import { answerText, answerValue, given, HOSPITALS, PERCENT } from "../m01/common.ts";

const CELL = { unit: "pieces", step: 1 } as const;
const KEYS = ["bothYes", "firstOnly", "secondOnly", "bothNo"] as const;
const RANGES = { bothYes: { least: 8, greatest: 30 }, firstOnly: { least: 1, greatest: 12 }, secondOnly: { least: 1, greatest: 12 }, bothNo: { least: 8, greatest: 30 } } as const;
const PIN = "readers-agree.rim-width@1";

const cells = (givens: Givens): readonly [number, number, number, number] => [given(givens, "bothYes"), given(givens, "firstOnly"), given(givens, "secondOnly"), given(givens, "bothNo")];
const shares = (givens: Givens): { readonly observed: number; readonly chance: number } => {
  const [yes, first, second, no] = cells(givens);
  const total = yes + first + second + no;
  return { observed: (yes + no) / total, chance: ((yes + first) * (yes + second) + (second + no) * (first + no)) / total ** 2 };
};
const solved = (givens: Givens): Solution => {
  const [yes, first, second, no] = cells(givens);
  if (![yes, first, second, no].every((count) => Number.isInteger(count) && count >= 0)) return { agreedPercent: PERCENT * shares(givens).observed, kappa: Number.NaN };
  return { agreedPercent: PERCENT * shares(givens).observed, kappa: cohenKappa([[yes, first], [second, no]]) };
};
const withKappa = (givens: Givens, kappa: number): Solution => ({ agreedPercent: PERCENT * shares(givens).observed, kappa });

const kappaText = (say: Say): string => printed(asAsked(answerValue(say, "kappa"), 0.01, "nearest"));

/** 09h: how well two readers agree, beyond chance. */
export const agreement: SumFamily = {
  kind: "sum",
  id: "agreement",
  code: "09h",
  module: "M09",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m09-agree"],
  reads: [PIN],
  sources: [{ source: "anderson-2011", entry: PIN }],
  cautions: ["C9"],
  givens: KEYS.map((key) => ({ key, ...CELL, ...RANGES[key] })),
  asks: [
    { id: "agreedPercent", unit: "%", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "kappa", unit: "pieces", roundTo: 0.01, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => ({ givens: Object.fromEntries(KEYS.map((key) => [key, chance.onGrid({ ...RANGES[key], step: 1 })])), about: { hospital: chance.pick(HOSPITALS), what: chance.pick(["a tear in the outer third", "a loose rim", "a radial part of the tear", "a tear that reaches both faces"]) } }),
  solve: solved,
  slips: [
    { id: "agreement-for-kappa", gives: ({ givens }) => withKappa(givens, shares(givens).observed) },
    { id: "not-divided", gives: ({ givens }) => withKappa(givens, shares(givens).observed - shares(givens).chance) },
    { id: "chance-for-kappa", gives: ({ givens }) => withKappa(givens, shares(givens).chance) },
    { id: "chance-taken-as-half", gives: ({ givens }) => withKappa(givens, 2 * shares(givens).observed - 1) },
  ],
  words: {
    en: {
      title: "Two readers",
      stems: [
        (say) => [`Two surgeons at ${say.about("hospital")} watch the same films, apart from each other, and note for each: ${say.about("what")}, yes or no. The films are invented.`],
        (say) => [`Two who guess agree now and then as well. At ${say.about("hospital")} two readers judged the same invented films: ${say.about("what")}, yes or no.`],
        (say) => [`Is it the knee or the reader? Invented films, ${say.about("hospital")}, two readers, one question: ${say.about("what")}.`],
      ],
      question: "In what share of the films do they agree (whole per cent), and what is Cohen’s kappa (two decimals)?",
      givens: { bothYes: "Both say yes", firstOnly: "Only the first says yes", secondOnly: "Only the second says yes", bothNo: "Both say no" },
      asks: { agreedPercent: "Agreement", kappa: "Kappa" },
      says: { none: "They never agree", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "agreement-for-kappa": { name: "agreement taken for kappa", because: () => ["Some of that agreement is luck. Kappa takes away what chance alone would give."] },
        "not-divided": { name: "not set against what was possible", because: () => ["Agreement beyond chance is divided by what was left beyond chance. Otherwise a perfect pair could not reach one."] },
        "chance-for-kappa": { name: "chance taken for kappa", because: () => ["That is what two guessers with these habits would agree on. Kappa is what goes beyond it."] },
        "chance-taken-as-half": { name: "chance taken as a half", because: () => ["Chance is a half only where both say yes half of the time. Here their habits give another share."] },
      },
      working: (say) => {
        const givens = { bothYes: say.value("bothYes"), firstOnly: say.value("firstOnly"), secondOnly: say.value("secondOnly"), bothNo: say.value("bothNo") };
        const [yes, first, second, no] = cells(givens);
        const { observed, chance } = shares(givens);
        const all = yes + first + second + no;
        return [
          `Agreement: (${say.bare("bothYes")} + ${say.bare("bothNo")}) ÷ ${all} = ${say.number(observed, 3)}`,
          `By chance, from the two readers’ own totals: (${yes + first} × ${yes + second} + ${second + no} × ${first + no}) ÷ (${all} × ${all}) = ${say.number(chance, 3)}`,
          `Kappa: (${say.number(observed, 3)} − ${say.number(chance, 3)}) ÷ (1 − ${say.number(chance, 3)}) = ${kappaText(say)} (Cohen 1960)`,
        ];
      },
      right: (say) => [`${answerText(say, "agreedPercent", { places: 0, unit: "%" })} agreement, kappa ${kappaText(say)}. For the width of the rim surgeons agreed in ${withUnit(tear(PIN).value.value ?? "", "%")} of readings of adult films: measuring the rim is the least agreed item.`],
      off: () => ["Agreement is the two agreeing cells over all. Chance comes from each reader’s own totals, and kappa is what goes beyond it, over what was left beyond it."],
      inverse: () => [],
      turns: () => ["The same agreement gives a lower kappa where nearly all films show the same answer."],
    },
  },
};
