import { withUnit } from "../../engine/quantity/format.ts";
import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import { once } from "../../engine/question/once.ts";
import type { Say } from "../../engine/question/say.ts";
import { type Chance, gridSize, gridValue } from "../../engine/random/chance.ts";
import { mostVolumeMl } from "../../engine/theatre/most-volume-ml.ts";
import { sharedLimit } from "../../engine/theatre/shared-limit.ts";
import { atStart, dose, DOSE_SAYS, drawPatient, given, isWrittenSafely, plain, sheetOf, strengthGiven, strengthIn, strengthLabels, strengthSpecs, WEIGHT, WEIGHT_LABEL, whoIs } from "./dose-words.ts";
import { AGENT_READS, AGENT_SOURCES, AGENTS, limitOf } from "./most-volume.ts";

const MG_PER_ML_IN_PERCENT = 10;
const STEP = 0.1;
const HALF = 0.5;
const PER_CENT = 100;
const GIVEN = { key: "givenMl", unit: "mL", least: 1, greatest: 40, step: 1 } as const;
const FIRST_LIMIT = { key: "firstLimitMgPerKg", unit: "mg/kg", least: 1, greatest: 10, step: 1 } as const;
const NEXT_LIMIT = { key: "nextLimitMgPerKg", unit: "mg/kg", least: 1, greatest: 10, step: 1 } as const;
const PLACES = ["by the anaesthetist as a block", "in the emergency department, before the list", "on the ward, two hours ago"] as const;

const shared = once((givens) => sharedLimit({
  weightKg: given(givens, "weightKg"),
  given: [{ volumeMl: given(givens, "givenMl"), percent: strengthIn(givens, "first"), limitMgPerKg: given(givens, "firstLimitMgPerKg") }],
  next: { percent: strengthIn(givens, "next"), limitMgPerKg: given(givens, "nextLimitMgPerKg") },
}));
const wholeOf = (givens: Givens, prefix: "first" | "next"): number =>
  mostVolumeMl({ weightKg: given(givens, "weightKg"), limitMgPerKg: given(givens, `${prefix}LimitMgPerKg`), percent: strengthIn(givens, prefix) });
const firstMg = (givens: Givens): number => given(givens, "givenMl") * strengthIn(givens, "first") * MG_PER_ML_IN_PERCENT;
const byMilligrams = (givens: Givens): number => wholeOf(givens, "next") - firstMg(givens) / (strengthIn(givens, "next") * MG_PER_ML_IN_PERCENT);
const positive = (leftMl: number): Solution | null => (leftMl > STEP ? { leftMl } : null);

/** What was given first: mostly a part of its limit, now and then all of it. */
const drawGiven = (chance: Chance, wholeMl: number): number => {
  const top = Math.max(GIVEN.least, Math.min(GIVEN.greatest, chance.happens(1, 6) ? Math.ceil(wholeMl) : Math.floor(wholeMl * 0.8)));
  const grid = { ...GIVEN, greatest: top };
  return chance.happens(1, 6) ? top : gridValue(grid, chance.below(gridSize(grid)));
};

const drawGivens = (chance: Chance, weightKg: number) => {
  const first = chance.pick(AGENTS);
  const next = chance.pick(AGENTS.filter(({ agent }) => agent !== first.agent));
  const base = { weightKg, ...strengthGiven("first", chance.pick(first.strengths)), firstLimitMgPerKg: limitOf(first), ...strengthGiven("next", chance.pick(next.strengths)), nextLimitMgPerKg: limitOf(next) };
  return { first, next, givens: { ...base, givenMl: drawGiven(chance, wholeOf(base, "first")) } };
};

const drawn = (chance: Chance): Draw => {
  for (;;) {
    const { about, weightKg } = drawPatient(chance);
    const { first, next, givens } = drawGivens(chance, weightKg);
    const { leftMl, usedShare } = shared(givens);
    if (usedShare < 1 && (leftMl < STEP || !isWrittenSafely(leftMl, STEP))) continue;
    return {
      givens,
      about: { ...about, first: first.agent, next: next.agent, place: chance.pick(PLACES) },
      origins: { firstLimitMgPerKg: { from: "local", entry: first.limit }, nextLimitMgPerKg: { from: "local", entry: next.limit } },
    };
  }
};

const of = (say: Say): Givens => say.draw.givens;
const isUsedUp = (say: Say): boolean => "says" in say.answer;
const usedPercent = (say: Say): string => plain(Math.round(shared(of(say)).usedShare * PER_CENT * MG_PER_ML_IN_PERCENT) / MG_PER_ML_IN_PERCENT);
const whole = (say: Say, prefix: "first" | "next"): string => dose(wholeOf(of(say), prefix), "mL");
const sumOf = (say: Say, prefix: "first" | "next"): string =>
  `${say.bare("weightKg")} × ${say.bare(`${prefix}LimitMgPerKg`)} ÷ ${plain(strengthIn(of(say), prefix) * MG_PER_ML_IN_PERCENT)}`;
const left = (say: Say): string => dose(Math.floor(Number((shared(of(say)).leftMl / STEP).toFixed(3))) / MG_PER_ML_IN_PERCENT, "mL");

/** 12d: what a first agent leaves of a second one. */
export const twoAgents: SumFamily = {
  kind: "sum",
  id: "two-agents",
  code: "12d",
  module: "M12",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m12-volume"],
  reads: AGENT_READS,
  sources: AGENT_SOURCES,
  cautions: ["C2", "C4"],
  givens: [WEIGHT, GIVEN, ...strengthSpecs("first"), FIRST_LIMIT, ...strengthSpecs("next"), NEXT_LIMIT],
  asks: [{ id: "leftMl", unit: "mL", roundTo: STEP, rounding: "down", safeSide: "down" }],
  draw: drawn,
  solve: (givens) => {
    const { usedShare, leftMl } = shared(givens);
    return usedShare < 1 && leftMl >= STEP ? { leftMl } : { says: "none" };
  },
  slips: [
    { id: "two-full-limits", gives: ({ givens }) => ({ leftMl: wholeOf(givens, "next") }) },
    { id: "millilitres-subtracted", gives: ({ givens }) => positive(wholeOf(givens, "next") - given(givens, "givenMl")) },
    { id: "milligrams-subtracted", gives: ({ givens }) => positive(byMilligrams(givens)) },
    { id: "half-each", gives: ({ givens }) => ({ leftMl: wholeOf(givens, "next") * HALF }) },
  ],
  words: {
    en: {
      title: "Two agents, one child",
      stems: [
        (say) => [`${whoIs(say)} ${atStart(say.about("first"))} has been given ${say.about("place")}; now somebody asks for ${say.about("next")} at the portals. Labels advise against following one with the other: ask the anaesthetist first. ${sheetOf(say)}`],
        (say) => [`The chart of ${say.about("child")}, ${say.about("age")}, says that ${say.about("first")} was given ${say.about("place")}. The surgeon would like ${say.about("next")} as well. Labels advise against mixing; the sum below comes before that talk and does not replace it. ${sheetOf(say)}`],
        (say) => [`Two people, two syringes, one child: ${say.about("child")}, ${say.about("age")}. ${atStart(say.about("first"))} came first, ${say.about("place")}. Before ${say.about("next")} is opened you reckon what is left at most, then you ask. Labels advise against mixing. ${sheetOf(say)}`],
      ],
      question: "How much of the second agent do the limits leave at most, if the shares of both add up to one whole? Round down to a tenth of a millilitre, or say that none may be given.",
      givens: {
        weightKg: WEIGHT_LABEL,
        givenMl: (say) => `Volume of ${say.about("first")} given already`,
        ...strengthLabels("first", (say) => `Strength of that ${say.about("first")}`),
        firstLimitMgPerKg: (say) => `Limit of ${say.about("first")}, this hospital’s sheet`,
        ...strengthLabels("next", (say) => `Strength of the ${say.about("next")} asked for`),
        nextLimitMgPerKg: (say) => `Limit of ${say.about("next")}, this hospital’s sheet`,
      },
      asks: { leftMl: "Left of the second agent" },
      says: DOSE_SAYS,
      slips: {
        "two-full-limits": { name: "two full limits", because: (say) => [`${whole(say, "next")} would be the limit if nothing had been given. The limits share one child, and ${usedPercent(say)} per cent is used.`] },
        "millilitres-subtracted": { name: "millilitres taken from millilitres", because: (say) => [`A millilitre of ${say.about("first")} is not a millilitre of ${say.about("next")}: strengths and limits differ. Take shares of the limit, not volumes.`] },
        "milligrams-subtracted": { name: "milligrams taken from milligrams", because: (say) => [`A milligram of ${say.about("first")} does not count as much as one of ${say.about("next")}. Each is a share of its own limit, and the shares add up.`] },
        "half-each": { name: "half for each", because: (say) => [`Half of the limit is left only where half has been used. Here it is ${usedPercent(say)} per cent.`] },
      },
      working: (say) => [
        `Whole limit of ${say.about("first")}: ${sumOf(say, "first")} = ${whole(say, "first")}; given ${say.of("givenMl")}, which is ${usedPercent(say)} per cent`,
        `Whole limit of ${say.about("next")}: ${sumOf(say, "next")} = ${whole(say, "next")}`,
        isUsedUp(say) ? "Nothing is left of the one whole: no second agent." : `What is left: ${left(say)}. That the shares add up to one whole is a cautious rule, common practice, no source.`,
      ],
      right: (say) => isUsedUp(say) ? [`${say.of("givenMl")} of ${say.about("first")} have used ${usedPercent(say)} per cent of what one child may have. Nothing is left, and saying so is the answer.`] : [`${left(say)} at most, and only after the anaesthetist agrees. The limits share one child.`],
      off: (say) => isUsedUp(say) ? [`${say.of("givenMl")} of ${say.about("first")} are ${usedPercent(say)} per cent of its limit. Nothing is left for a second agent.`] : [`First the share that is used, ${usedPercent(say)} per cent; what is left of one whole is then taken of ${whole(say, "next")}.`],
      inverse: () => [],
      turns: (say) => [`None is the answer from ${whole(say, "first")} of ${say.about("first")} on. Below that every millilitre given takes ${withUnit(String(Number((wholeOf(of(say), "next") / wholeOf(of(say), "first")).toPrecision(2))), "mL")} of ${say.about("next")}.`],
    },
  },
};
