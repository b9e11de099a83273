import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerText, answerValue, given, HOSPITALS, isSameNumber, SIDES, withPlaces } from "../m01/common.ts";

const STATIONS = { key: "stations", unit: "pieces", least: 8, greatest: 12, step: 1 } as const;
const EACH = { key: "eachS", unit: "s", least: 20, greatest: 90, step: 5 } as const;
const LEFT = { key: "cuffLeftMin", unit: "min", least: 30, greatest: 80, step: 1 } as const;
const SECONDS = 60;
const HUNDRED = 100;

const round = (givens: Givens): number => given(givens, "stations") * given(givens, "eachS");
const after = (givens: Givens, minutes: number): number => given(givens, "cuffLeftMin") - minutes;
const left = { places: 1, unit: "min" } as const;
const wholeMinutes = (say: Say): string => withPlaces(Math.floor(answerValue(say, "leftMin")), 0, "min");
const exactMinutes = (say: Say): string => answerText(say, "leftMin", left);
const down = (say: Say): string => (isSameNumber(exactMinutes(say), wholeMinutes(say)) ? wholeMinutes(say) : `${exactMinutes(say)}, rounded down to ${wholeMinutes(say)}`);

/** 08c: what the round leaves of the cuff time. */
export const timeBudget: SumFamily = {
  kind: "sum",
  id: "time-budget",
  code: "08c",
  module: "M08",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m08-unseen"],
  reads: [],
  sources: [],
  cautions: ["C15"],
  givens: [STATIONS, EACH, LEFT],
  asks: [{ id: "leftMin", unit: "min", roundTo: 1, rounding: "down", safeSide: "down" }],
  draw: (chance) => ({
    givens: { stations: chance.onGrid(STATIONS), eachS: chance.onGrid(EACH), cuffLeftMin: chance.onGrid(LEFT) },
    about: { side: chance.pick(SIDES), hospital: chance.pick(HOSPITALS) },
    origins: { cuffLeftMin: { from: "local" } },
  }),
  solve: (givens) => ({ leftMin: after(givens, round(givens) / SECONDS) }),
  slips: [
    { id: "seconds-as-hundredths", gives: ({ givens }) => ({ leftMin: after(givens, round(givens) / HUNDRED) }) },
    { id: "round-for-rest", gives: ({ givens }) => ({ leftMin: round(givens) / SECONDS }) },
    { id: "one-station-only", gives: ({ givens }) => ({ leftMin: after(givens, given(givens, "eachS") / SECONDS) }) },
    { id: "whole-minutes-each", gives: ({ givens }) => ({ leftMin: after(givens, given(givens, "stations") * Math.ceil(given(givens, "eachS") / SECONDS)) }) },
  ],
  words: {
    en: {
      title: "What the round leaves",
      stems: [
        (say) => [`The cuff is up on a ${say.about("side")} thigh at ${say.about("hospital")}. You make the whole round first, station by station, then the repair.`],
        (say) => [`A round costs time that a repair needs, and saves time that a missed tear costs. ${say.about("hospital")}, ${say.about("side")} knee, cuff up; the sheet’s alarm leaves the minutes below.`],
        (say) => [`${say.about("hospital")}, ${say.about("side")} knee. Every station gets the same time in this plan, and the alarm is the local sheet’s.`],
      ],
      question: "How many minutes are left for the repair after the round? Whole minutes, rounded down.",
      givens: { stations: "Stations", eachS: "For each station", cuffLeftMin: "Left until the alarm, your hospital’s sheet" },
      asks: { leftMin: "Left for the repair" },
      says: { none: "Nothing is left", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "seconds-as-hundredths": { name: "a hundred seconds to the minute", because: () => ["A minute has sixty seconds. With a hundred the round looks shorter than it is."] },
        "round-for-rest": { name: "the round for what it leaves", because: () => ["That is what the round takes. The question is what it leaves until the alarm."] },
        "one-station-only": { name: "one station only", because: (say) => [`${say.of("eachS")} is one station. The round has ${say.bare("stations")}.`] },
        "whole-minutes-each": { name: "each station rounded up", because: () => ["You rounded every station up to a whole minute. Round once, at the end, and to the side that leaves less."] },
      },
      working: (say) => [
        `Round: ${say.bare("stations")} × ${say.bare("eachS")} = ${say.number(say.value("stations") * say.value("eachS"), 0)} s = ${say.number((say.value("stations") * say.value("eachS")) / SECONDS)} min`,
        `${say.bare("cuffLeftMin")} less that: ${down(say)}`,
      ],
      right: (say) => [`${down(say)}. The round stays whole; if time is short, the plan for the repair is what changes.`],
      off: () => ["Stations times seconds, by sixty, taken from the minutes left."],
      inverse: (say, { text }) => [`If ${text} were left until the alarm. Here it is ${say.of("cuffLeftMin")}.`],
    },
  },
  inverseOf: "cuffLeftMin",
};
