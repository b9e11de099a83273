import { bagMinutes } from "../../engine/fluid/bag-minutes.ts";
import { bagsForCase } from "../../engine/fluid/bags-for-case.ts";
import { ownLimit } from "../../engine/kit/local-list.ts";
import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { LOCAL_LIST } from "../../facts/local-list.ts";
import { AGES, answerIn, CHILDREN, childOf, given, HOSPITALS, measure } from "./fluid-words.ts";

const BAG = { key: "bagMl", unit: "mL", least: 1000, greatest: 3000, step: 1000 } as const;
const RESERVE = { key: "reserveMl", unit: "mL", least: 100, greatest: 300, step: 50 } as const;
const FLOW = { key: "flowMlPerMin", unit: "mL/min", least: 40, greatest: 150, step: 5 } as const;
const CASE = { key: "caseMin", unit: "min", least: 30, greatest: 120, step: 5 } as const;

/** More than this through a child’s knee would be another question. */
const MOST_FLUID_ML = 9000;

const supply = (givens: Givens, reserveMl = given(givens, "reserveMl")) => ({ bagMl: given(givens, "bagMl"), reserveMl, flowMlPerMin: given(givens, "flowMlPerMin"), caseMin: given(givens, "caseMin") });
const solved = (givens: Givens, reserveMl = given(givens, "reserveMl")): Record<"lastsMin" | "bags", number> => ({ lastsMin: bagMinutes(supply(givens, reserveMl)), bags: bagsForCase(supply(givens, reserveMl)) });

const roundedDown = (givens: Givens): Solution | null => {
  const right = solved(givens);
  const isWhole = Number.isInteger((given(givens, "flowMlPerMin") * given(givens, "caseMin")) / (given(givens, "bagMl") - given(givens, "reserveMl")));
  return isWhole || right.bags < 2 ? null : { ...right, bags: right.bags - 1 };
};

const usable = (say: Say): string => say.number(sumOnGrid(say.value("bagMl"), -say.value("reserveMl")), 0);
const runs = (say: Say): string => say.number(say.value("flowMlPerMin") * say.value("caseMin"), 0);
const lasts = (say: Say): string => measure(Math.floor(answerIn(say, "lastsMin")), "min");
const bags = (say: Say): string => say.number(answerIn(say, "bags"), 0);
/** One bag that outlasts the case is never changed. */
const changeWords = (say: Say): string => (answerIn(say, "lastsMin") >= say.value("caseMin") ? `A bag lasts ${lasts(say)} and the fluid runs for ${say.of("caseMin")}` : `Change after ${lasts(say)}`);
const bagWords = (say: Say): string => (answerIn(say, "bags") === 1 ? "one bag is enough" : `${bags(say)} bags are needed`);

/** 07f: how long a bag lasts down to its reserve, and how many the case needs. */
export const bagLife: SumFamily = {
  kind: "sum",
  id: "bag-life",
  code: "07f",
  module: "M07",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m07-bag"],
  reads: [],
  sources: [],
  cautions: ["C15"],
  givens: [BAG, RESERVE, FLOW, CASE],
  asks: [
    { id: "lastsMin", unit: "min", roundTo: 1, rounding: "down", safeSide: "down" },
    { id: "bags", unit: "pieces", roundTo: 1, rounding: "up", safeSide: "up" },
  ],
  draw: (chance, local = LOCAL_LIST) => {
    const hospital = chance.pick(HOSPITALS);
    const flowMlPerMin = chance.onGrid(FLOW);
    const longest = CASE.step * Math.floor(MOST_FLUID_ML / flowMlPerMin / CASE.step);
    return {
      givens: { bagMl: chance.onGrid(BAG), reserveMl: ownLimit(local, hospital, "bag-reserve") ?? chance.onGrid(RESERVE), flowMlPerMin, caseMin: chance.onGrid({ ...CASE, greatest: Math.min(CASE.greatest, longest) }) },
      about: { child: chance.pick(CHILDREN), age: chance.pick(AGES), hospital },
      origins: { reserveMl: { from: "local" } },
      local: local.hash,
    };
  },
  solve: (givens) => solved(givens),
  slips: [
    { id: "reserve-forgotten", gives: ({ givens }) => solved(givens, 0) },
    { id: "bags-rounded-down", gives: ({ givens }) => roundedDown(givens) },
    { id: "life-of-the-whole-case", gives: ({ givens }) => ({ ...solved(givens), lastsMin: given(givens, "caseMin") }) },
    { id: "minutes-rounded-up", gives: ({ givens }) => { const right = solved(givens); return Number.isInteger(right.lastsMin) ? null : { ...right, lastsMin: Math.ceil(right.lastsMin) }; } },
  ],
  words: {
    en: {
      title: "How long a bag lasts",
      stems: [
        (say) => [`For the knee of ${childOf(say)} the flow has settled. The sheet of ${say.about("hospital")} hospital says: change each bag while a reserve is left, so that no air runs into the line.`],
        (say) => [`You set out bags for ${childOf(say)}. At ${say.about("hospital")} hospital a bag is changed when it is down to the reserve on the sheet; the flow is taken as steady.`],
        (say) => [`The circulating practitioner asks when the first bag must be changed and how many to bring for ${childOf(say)}. The reserve stands on the sheet of ${say.about("hospital")} hospital.`],
      ],
      question: "How many whole minutes does a bag last, rounded down, and how many bags does the case need, rounded up?",
      givens: { bagMl: "Volume of a full bag", reserveMl: (say) => `Reserve at which it is changed, sheet of ${say.about("hospital")} hospital`, flowMlPerMin: "Steady flow", caseMin: "Time that it runs, in all" },
      asks: { lastsMin: "A bag lasts", bags: "Bags for the case" },
      says: { none: "No bag is needed", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "reserve-forgotten": { name: "reserve forgotten", because: (say) => [`Each bag comes down with ${say.of("reserveMl")} still in it. Only ${usable(say)} mL run; counted to the last drop, air follows.`] },
        "bags-rounded-down": { name: "bags rounded down", because: (say) => [`The case takes ${runs(say)} mL. With one bag less it runs dry before the end, so bags are rounded up.`] },
        "life-of-the-whole-case": { name: "one bag for the whole case", because: (say) => [`${say.of("caseMin")} is how long the fluid runs, not how long a bag lasts. At ${say.of("flowMlPerMin")} a bag gives ${usable(say)} mL.`] },
        "minutes-rounded-up": { name: "minutes rounded up", because: () => ["A bag that is said to last longer than it does is found empty. A time that you rely on is rounded down."] },
      },
      working: (say) => [
        `A bag gives ${say.bare("bagMl")} − ${say.bare("reserveMl")} = ${usable(say)} mL`,
        `${usable(say)} ÷ ${say.bare("flowMlPerMin")} = ${answerIn(say, "lastsMin").toFixed(2)}, rounded down: ${lasts(say)}`,
        `The case takes ${say.bare("flowMlPerMin")} × ${say.bare("caseMin")} = ${runs(say)} mL; ÷ ${usable(say)} and rounded up: ${bags(say)}`,
      ],
      right: (say) => [`${changeWords(say)}; ${bagWords(say)}. The minutes are rounded down and the bags up, because both must hold.`],
      off: (say) => [`Take the reserve off the bag first: ${usable(say)} mL run. Then divide by the flow for the minutes, and divide what the case takes by it for the bags.`],
      inverse: () => [],
      turns: (say) => [`The number of bags changes where what the case takes is a whole number of ${usable(say)} mL: at that flow and time the last bag is just used up.`],
    },
  },
};
