import { sparesNeeded } from "../../engine/kit/spares-needed.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerValue, counted, given, HOSPITALS, PERCENT, withPlaces } from "../m01/common.ts";

const CASES = { key: "cases", unit: "pieces", least: 4, greatest: 30, step: 1 } as const;
const FAILS = { key: "failPercent", unit: "%", least: 1, greatest: 10, step: 1 } as const;
const LEVEL = { key: "levelPercent", unit: "%", least: 90, greatest: 99, step: 1 } as const;

const at = (givens: Givens) => ({ cases: given(givens, "cases"), failureShare: given(givens, "failPercent") / PERCENT, level: given(givens, "levelPercent") / PERCENT });
const solved = (givens: Givens): Solution => {
  const { cases, failureShare, level } = at(givens);
  if (!(Number.isInteger(cases) && cases > 0 && failureShare >= 0 && failureShare <= 0.5 && level > 0 && level <= 0.995)) return { says: "none" };
  return { spares: sparesNeeded({ cases, failureShare, level }).spares };
};
const expected = (givens: Givens): number => at(givens).cases * at(givens).failureShare;
/** Chance that a number of spares does not suffice, summed term by term. */
const shortWith = (givens: Givens, spares: number): number => {
  const { cases, failureShare } = at(givens);
  let term = (1 - failureShare) ** cases;
  let enough = term;
  for (let failed = 1; failed <= spares; failed += 1) {
    term *= (failureShare * (cases + failed - 1)) / failed;
    enough += term;
  }
  return Math.max(0, 1 - enough);
};
const shown = (say: Say): Givens => ({ cases: say.value("cases"), failPercent: say.value("failPercent"), levelPercent: say.value("levelPercent") });
const short = (say: Say, spares: number): string => withPlaces(PERCENT * shortWith(shown(say), spares), 1, "%");

/** 04f: how many spare packs keep a list from running short, at a service level. */
export const spares: SumFamily = {
  kind: "sum",
  id: "spares",
  code: "04f",
  module: "M04",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m04-spares"],
  reads: [],
  sources: [],
  cautions: ["C7"],
  givens: [CASES, FAILS, LEVEL],
  asks: [{ id: "spares", unit: "pieces", roundTo: 1, rounding: "up", safeSide: "up" }],
  draw: (chance) => ({
    givens: { cases: chance.onGrid(CASES), failPercent: chance.onGrid(FAILS), levelPercent: chance.pick([90, 95, 98, 99]) },
    about: { hospital: chance.pick(HOSPITALS), pack: chance.pick(["scope packs", "stitch devices", "tubing sets"]) },
    origins: { failPercent: { from: "local" }, levelPercent: { from: "local" } },
  }),
  solve: solved,
  slips: [
    { id: "mean-rounded-up", gives: ({ givens }) => ({ spares: Math.ceil(Number(expected(givens).toFixed(6))) }) },
    { id: "level-taken-for-failures", gives: ({ givens }) => ({ spares: Math.ceil(Number((at(givens).cases * (1 - at(givens).level)).toFixed(6))) }) },
    { id: "one-for-each", gives: ({ givens }) => ({ spares: at(givens).cases }) },
    { id: "none-as-it-is-rare", gives: () => ({ spares: 0 }) },
  ],
  words: {
    en: {
      title: "How many spares",
      stems: [
        (say) => [`A week of lists at ${say.about("hospital")} needs ${say.about("pack")}, one for each case. Each fails or is dropped with the chance below, independently. The store wants enough of them with the service level below.`],
        (say) => [`${say.about("hospital")} plans ${say.about("pack")}: one a case, some of which fail. Failures are independent of each other; a spare may fail too.`],
        (say) => [`A mean is met half of the time; a service level says how often enough is enough. ${say.about("hospital")}, ${say.about("pack")}, one good one a case, failures independent, spares included.`],
      ],
      question: "How many spares are needed at least, so that there are enough good ones as often as the service level says? A whole number.",
      givens: { cases: "Cases", failPercent: (say) => `Fails or is dropped, figure of ${say.about("hospital")} hospital`, levelPercent: (say) => `Service level, figure of ${say.about("hospital")} hospital` },
      asks: { spares: "Spares" },
      says: { none: "No number of spares suffices", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "mean-rounded-up": { name: "mean rounded up", because: (say) => {
            const rounded = Math.ceil(Number(expected(shown(say)).toFixed(6)));
            if (rounded > answerValue(say, "spares")) return ["That is the mean number of failures, rounded up. Here it is more than the level asks for."];
            return [`That is the mean number of failures, rounded up. With so many spares the list still runs short with a chance of ${short(say, rounded)}, and the level allows ${withPlaces(PERCENT - say.value("levelPercent"), 0, "%")}.`];
          } },
        "level-taken-for-failures": { name: "level taken for failures", because: () => ["You took what is missing from the service level as the share that fails. How often one fails is another number."] },
        "one-for-each": { name: "one spare for each", because: () => ["Enough, and many times too many. Each has a use-by date and ends as waste."] },
        "none-as-it-is-rare": { name: "none, as it is rare", because: (say) => [`Rare for one, not for a list: without spares it runs short with a chance of ${short(say, 0)}.`] },
      },
      working: (say) => {
        const right = answerValue(say, "spares");
        return [
          `With ${counted(right - 1, "spare")} the list runs short with a chance of ${short(say, right - 1)}, with ${right} it is ${short(say, right)}.`,
          `Allowed are ${withPlaces(PERCENT - say.value("levelPercent"), 0, "%")}: ${right}.`,
        ];
      },
      right: (say) => [`${answerValue(say, "spares")}. With them the list runs short with a chance of ${short(say, answerValue(say, "spares"))}.`],
      off: () => ["Ask for each number of spares how likely it is that more fail than there are spares. The first that meets the level is the answer."],
      inverse: () => [],
      turns: () => ["A higher level or a longer list needs more, and one more goes a long way."],
    },
  },
};
