import { wilson } from "../../engine/evidence/wilson.ts";
import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { repairResult } from "../../facts/repair-result.ts";
import { answerOf, drawCase, given, SUM_SAYS } from "./later-words.ts";

const PER_CENT = 100;
const DEVIATE = 1.96;
const EVENTS = { key: "eventsPieces", unit: "pieces", least: 1, greatest: 200, step: 1 } as const;
const TOTAL = { key: "totalPieces", unit: "pieces", least: 20, greatest: 800, step: 1 } as const;

/** Published series: what failed of how many. */
const SERIES = [
  { entry: "repair-failed.isolated@1", source: "krych-2008", told: "A series of isolated repairs in children and adolescents counted repairs that failed." },
  { entry: "repair-failed.with-acl@1", source: "krych-2010", told: "A series of repairs beside a ligament reconstruction in children and adolescents counted repairs that failed." },
  { entry: "repair-failed.review@1", source: "tagliero-2020", told: "A review of adolescents counted repairs that failed." },
  { entry: "repair-failed.long@1", source: "nepple-2012", told: "A review of all ages counted failures after five years and more." },
] as const;
const OWN = "A unit looked through its own years and counted one kind of event.";

const shareOf = (givens: Givens): number => given(givens, "eventsPieces") / given(givens, "totalPieces");
const ends = (events: number, total: number): Solution => {
  const { low, high } = wilson({ events, total });
  return { percent: (PER_CENT * events) / total, lowPercent: PER_CENT * low, highPercent: PER_CENT * high };
};
const around = (givens: Givens, errors: number): Solution => {
  const share = shareOf(givens);
  const half = errors * Math.sqrt((share * (1 - share)) / given(givens, "totalPieces"));
  return { percent: PER_CENT * share, lowPercent: PER_CENT * (share - half), highPercent: PER_CENT * (share + half) };
};

/** A published series now and then; else an own count, mostly of something rare. */
const drawn = (chance: Chance): Draw => {
  if (chance.happens(1, 4)) {
    const series = chance.pick(SERIES);
    const { events = 0, total = 0 } = repairResult(series.entry).number;
    const origin = { from: "study", entry: series.entry } as const;
    return { givens: { eventsPieces: events, totalPieces: total }, about: { ...drawCase(chance), series: series.entry }, origins: { eventsPieces: origin, totalPieces: origin } };
  }
  const totalPieces = chance.onGrid(TOTAL);
  const most = Math.min(EVENTS.greatest, chance.happens(1, 2) ? 5 : Math.floor(totalPieces * 0.3));
  return { givens: { eventsPieces: chance.onGrid({ ...EVENTS, greatest: most }), totalPieces }, about: { ...drawCase(chance), series: "own" } };
};

const toldOf = (say: Say): string => SERIES.find(({ entry }) => entry === say.about("series"))?.told ?? OWN;
const printed = (say: Say, id: string): string => say.number(answerOf(say, id), 1);
const error = (say: Say): number => {
  const share = say.value("eventsPieces") / say.value("totalPieces");
  return PER_CENT * (share - DEVIATE * Math.sqrt((share * (1 - share)) / say.value("totalPieces")));
};

/** 14d: a failure rate with its interval. */
export const rateCi: SumFamily = {
  kind: "sum",
  id: "rate-ci",
  code: "14d",
  module: "M14",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m14-rates"],
  reads: SERIES.map(({ entry }) => entry),
  sources: SERIES.map(({ source, entry }) => ({ source, entry })),
  cautions: ["C2", "C16"],
  givens: [EVENTS, TOTAL],
  asks: ["percent", "lowPercent", "highPercent"].map((id) => ({ id, unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" }) as const),
  draw: drawn,
  solve: (givens) => {
    const events = given(givens, "eventsPieces");
    const total = given(givens, "totalPieces");
    return ends(events, total);
  },
  slips: [
    { id: "normal-interval", gives: ({ givens }) => around(givens, DEVIATE) },
    { id: "one-error", gives: ({ givens }) => around(givens, 1) },
    { id: "healed-for-failed", gives: ({ givens }) => ends(given(givens, "totalPieces") - given(givens, "eventsPieces"), given(givens, "totalPieces")) },
  ],
  words: {
    en: {
      title: "A rate and how far it may be off",
      stems: [
        (say) => [toldOf(say), "Before the number is said to a family, it gets its interval."],
        (say) => [`At a meeting at ${say.about("hospital")} somebody reads out a rate as if it were exact. ${toldOf(say)}`],
        (say) => [toldOf(say), `You write one line for the handbook at ${say.about("hospital")}: the rate, and between which ends it may lie.`],
      ],
      question: "What is the rate, and what are the ends of its 95 per cent interval by Wilson’s score method? Each in per cent, to the nearest tenth.",
      givens: { eventsPieces: "Counted", totalPieces: "Of how many" },
      asks: { percent: "Rate", lowPercent: "Lower end", highPercent: "Upper end" },
      says: SUM_SAYS,
      slips: {
        "normal-interval": { name: "plus and minus around the rate", because: (say) => [error(say) <= -0.05 ? `Rate less 1.96 standard errors is ${say.number(error(say), 1)} per cent, and no rate lies below zero. Wilson’s interval never leaves the scale.` : "Plus and minus 1.96 standard errors is even on both sides. A counted rate is not: away from one half the longer side points to the middle."] },
        "one-error": { name: "one standard error", because: () => ["One standard error on both sides holds the truth about two times in three. For 95 per cent it takes nearly two, and Wilson’s form."] },
        "healed-for-failed": { name: "the others counted", because: (say) => [`${say.bare("eventsPieces")} of them ${say.value("eventsPieces") === 1 ? "was" : "were"} counted; you reckoned with the ${say.value("totalPieces") - say.value("eventsPieces")} others.`] },
      },
      working: (say) => [`Rate: 100 × ${say.bare("eventsPieces")} ÷ ${say.bare("totalPieces")} = ${printed(say, "percent")} per cent`, "Wilson 1927: centre (p + z²/2n) ÷ (1 + z²/n), half width z√(p(1−p)/n + z²/4n²) ÷ (1 + z²/n), z = 1.96", `From ${printed(say, "lowPercent")} to ${printed(say, "highPercent")} per cent`],
      right: (say) => [`${printed(say, "percent")} per cent, between ${printed(say, "lowPercent")} and ${printed(say, "highPercent")}. The interval says how much the count can carry.`],
      off: (say) => [`The rate is the count over the total, ${printed(say, "percent")} per cent; its ends are those of Wilson’s formula, from ${printed(say, "lowPercent")} to ${printed(say, "highPercent")}.`],
      inverse: () => [],
      turns: () => ["Four times as many patients make the interval about half as wide. The rate itself is not moved by that."],
    },
  },
};
