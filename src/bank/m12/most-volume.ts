import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { mostVolumeMl } from "../../engine/theatre/most-volume-ml.ts";
import { localAnaesthetic } from "../../facts/local-anaesthetic.ts";
import { answerNumber, dose, DOSE_SAYS, drawPatient, given, isWrittenSafely, plain, sheetOf, strengthGiven, strengthIn, strengthLabels, strengthSpecs, WEIGHT, WEIGHT_LABEL, whoIs } from "./dose-words.ts";

const MG_PER_ML_IN_PERCENT = 10;
const LB_PER_KG = 2.20462;
const LIMIT = { key: "limitMgPerKg", unit: "mg/kg", least: 1, greatest: 10, step: 1 } as const;
const STEP = 0.1;

interface Agent {
  readonly agent: string;
  readonly limit: string;
  /** Strengths of the case's own vials, in per cent. */
  readonly strengths: readonly number[];
}

/** Agents with a limit in whole mg/kg, so that it is printed without a zero behind a point. */
export const AGENTS: readonly Agent[] = [
  { agent: "bupivacaine", limit: "la-limit.teaching-bupivacaine@1", strengths: [0.25, 0.5] },
  { agent: "bupivacaine", limit: "la-limit.australia-bupivacaine@1", strengths: [0.25, 0.5] },
  { agent: "ropivacaine", limit: "la-limit.australia-ropivacaine@1", strengths: [0.2, 0.75, 1] },
  { agent: "lidocaine", limit: "la-limit.teaching-lidocaine@1", strengths: [1, 2] },
  { agent: "lidocaine", limit: "la-limit.australia-lidocaine@1", strengths: [1, 2] },
];
export const AGENT_READS = [...AGENTS.map(({ limit }) => limit)];
export const AGENT_SOURCES = [{ source: "em-page-2023", entry: "la-limit.teaching-bupivacaine@1" }, { source: "au-toxicity", entry: "la-limit.australia-bupivacaine@1" }] as const;
export const limitOf = ({ limit }: Agent): number => localAnaesthetic(limit).number.value as number;

/** Weight, agent and strength whose answer needs no zero behind the point. */
const drawCase = (chance: Chance) => {
  for (;;) {
    const patient = drawPatient(chance);
    const agent = chance.pick(AGENTS);
    const percent = chance.pick(agent.strengths);
    if (isWrittenSafely(mostVolumeMl({ weightKg: patient.weightKg, limitMgPerKg: limitOf(agent), percent }), STEP)) return { patient, agent, percent };
  }
};

const limitMg = (givens: Givens): number => given(givens, "weightKg") * given(givens, "limitMgPerKg");
const most = (givens: Givens): number => mostVolumeMl({ weightKg: given(givens, "weightKg"), limitMgPerKg: given(givens, "limitMgPerKg"), percent: strengthIn(givens, "strength") });
const isOnStep = (value: number): boolean => Math.abs(value / STEP - Math.round(value / STEP)) * 1000 < 1;
const cutDown = (value: number): number => Math.floor(Number((value / STEP).toFixed(3))) / MG_PER_ML_IN_PERCENT;

const mg = (say: Say): string => dose(say.value("weightKg") * say.value("limitMgPerKg"), "mg");
const exact = (say: Say): number => answerNumber(say, "mostMl");
const strength = (say: Say): string => plain((say.value("weightKg") * say.value("limitMgPerKg")) / exact(say));
const percent = (say: Say): string => plain((say.value("weightKg") * say.value("limitMgPerKg")) / exact(say) / MG_PER_ML_IN_PERCENT);
const answer = (say: Say): string => dose(cutDown(exact(say)), "mL");

/** 12c: the greatest volume that a limit allows. */
export const mostVolume: SumFamily = {
  kind: "sum",
  id: "most-volume",
  code: "12c",
  module: "M12",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m12-volume"],
  reads: AGENT_READS,
  sources: AGENT_SOURCES,
  cautions: ["C2", "C4"],
  givens: [WEIGHT, LIMIT, ...strengthSpecs("strength")],
  asks: [{ id: "mostMl", unit: "mL", roundTo: STEP, rounding: "down", safeSide: "down" }],
  draw: (chance) => {
    const { patient, agent, percent: drawnPercent } = drawCase(chance);
    return {
      givens: { weightKg: patient.weightKg, limitMgPerKg: limitOf(agent), ...strengthGiven("strength", drawnPercent) },
      about: { ...patient.about, agent: agent.agent },
      origins: { limitMgPerKg: { from: "local", entry: agent.limit } },
    };
  },
  solve: (givens) => ({ mostMl: most(givens) }),
  slips: [
    { id: "percent-as-strength", gives: ({ givens }) => ({ mostMl: limitMg(givens) / strengthIn(givens, "strength") }) },
    { id: "milligrams-as-millilitres", gives: ({ givens }) => (strengthIn(givens, "strength") === 1 ? null : { mostMl: limitMg(givens) }) },
    { id: "pounds", gives: ({ givens }) => ({ mostMl: most(givens) * LB_PER_KG }) },
    { id: "strength-multiplied", gives: ({ givens }) => ({ mostMl: limitMg(givens) * strengthIn(givens, "strength") * MG_PER_ML_IN_PERCENT }) },
    { id: "rounded-up", gives: ({ givens }) => (isOnStep(most(givens)) ? null : { mostMl: cutDown(most(givens)) + STEP }) },
  ],
  words: {
    en: {
      title: "The most that may be given",
      stems: [
        (say) => [`${whoIs(say)} The portals will be infiltrated with ${say.about("agent")}, and nothing else has been given. ${sheetOf(say)}`],
        (say) => [`You are asked how far the syringe may be filled with ${say.about("agent")} for ${say.about("child")}, ${say.about("age")}. No local anaesthetic has been given before. ${sheetOf(say)}`],
        (say) => [`Before skin, the greatest volume of ${say.about("agent")} is written on the board, so that nobody has to reckon later. ${whoIs(say)} It is the only local anaesthetic of the day. ${sheetOf(say)}`],
      ],
      question: "Beyond which volume must nobody go? Round down to a tenth of a millilitre. It is a limit, not a target.",
      givens: { weightKg: WEIGHT_LABEL, limitMgPerKg: (say) => `Limit of ${say.about("agent")}, this hospital’s sheet`, ...strengthLabels("strength", (say) => `Strength of the ${say.about("agent")} in the vial, mass in volume`) },
      asks: { mostMl: "Limit by volume" },
      says: DOSE_SAYS,
      slips: {
        "percent-as-strength": { name: "per cent read as mg/mL", because: (say) => [`${percent(say)} per cent is ${strength(say)} mg/mL, not ${percent(say)} mg/mL. The volume is ten times too large.`] },
        "milligrams-as-millilitres": { name: "milligrams taken for millilitres", because: (say) => [`${mg(say)} is the limit by mass. Each millilitre holds ${strength(say)} mg, so the volume is another number.`] },
        pounds: { name: "pounds for kilograms", because: (say) => [`That is the limit for ${say.of("weightKg")} turned into pounds. The limit is for each kilogram, and pounds make it more than twice too large.`] },
        "strength-multiplied": { name: "multiplied instead of divided", because: (say) => [`Ask how often ${strength(say)} mg go into ${mg(say)}: that is a division. A stronger solution must give a smaller volume.`] },
        "rounded-up": { name: "rounded up", because: (say) => [`The next tenth lies beyond the limit of ${mg(say)}. A limit is rounded down, however small the step.`] },
      },
      working: (say) => [`Limit by mass: ${say.bare("weightKg")} × ${say.bare("limitMgPerKg")} = ${mg(say)}`, `Strength: ${percent(say)} × 10 = ${strength(say)} mg/mL`, `Limit by volume: ${plain(say.value("weightKg") * say.value("limitMgPerKg"))} ÷ ${strength(say)} = ${plain(exact(say))} mL, down to ${answer(say)}`],
      right: (say) => [`${answer(say)} is where the sheet stops. Plan for less: what is needed at the portals is usually far below.`],
      off: (say) => [`Three steps: ${mg(say)} by weight, ${strength(say)} mg in each millilitre, then one divided by the other.`],
      inverse: () => [],
      turns: (say) => [`Twice the strength halves the volume. At this strength each further kilogram adds ${dose(exact(say) / say.value("weightKg"), "mL")}.`],
    },
  },
};
