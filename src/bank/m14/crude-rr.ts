import { riskMeasures } from "../../engine/evidence/risk-measures.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { answerOf, drawCase, given, SUM_SAYS } from "./later-words.ts";

const PER_CENT = 100;
const MOST_SHARE = 0.4;
const pieces = { unit: "pieces", step: 1 } as const;
const EVENTS = { key: "eventsPieces", least: 5, greatest: 120, ...pieces };
const TOTAL = { key: "totalPieces", least: 80, greatest: 600, ...pieces };
const OTHER_EVENTS = { key: "otherEventsPieces", least: 5, greatest: 120, ...pieces };
const OTHER_TOTAL = { key: "otherTotalPieces", least: 80, greatest: 600, ...pieces };

interface Arms {
  readonly events: number;
  readonly total: number;
  readonly otherEvents: number;
  readonly otherTotal: number;
}
const armsOf = (givens: Givens): Arms => ({ events: given(givens, "eventsPieces"), total: given(givens, "totalPieces"), otherEvents: given(givens, "otherEventsPieces"), otherTotal: given(givens, "otherTotalPieces") });
const swapped = ({ events, total, otherEvents, otherTotal }: Arms): Arms => ({ events: otherEvents, total: otherTotal, otherEvents: events, otherTotal: total });
const measured = (arms: Arms): { readonly ratioTimes: number; readonly differencePoints: number; readonly oneInPieces: number } => {
  const { ratio, difference, oneIn } = riskMeasures(arms);
  return { ratioTimes: ratio ?? 0, differencePoints: PER_CENT * difference, oneInPieces: oneIn ?? 0 };
};

/** The first group does worse by a difference that can be told, and no more than three times. */
const drawArms = (chance: Chance): Givens => {
  for (;;) {
    const totalPieces = chance.onGrid(TOTAL);
    const otherTotalPieces = chance.onGrid(OTHER_TOTAL);
    const eventsPieces = chance.onGrid({ ...EVENTS, greatest: Math.min(EVENTS.greatest, Math.floor(totalPieces * MOST_SHARE)) });
    const otherEventsPieces = chance.onGrid({ ...OTHER_EVENTS, greatest: Math.min(OTHER_EVENTS.greatest, Math.floor(otherTotalPieces * MOST_SHARE)) });
    const givens = { eventsPieces, totalPieces, otherEventsPieces, otherTotalPieces };
    const { ratio, difference } = riskMeasures(armsOf(givens));
    if (ratio !== null && ratio >= 1.2 && ratio <= 3 && difference > 0.02 && difference < 0.3) return givens;
  }
};

const roundedDown = (givens: Givens): Solution | null => {
  const exact = measured(armsOf(givens));
  return Number.isInteger(exact.oneInPieces) ? null : { ...exact, oneInPieces: Math.floor(exact.oneInPieces) };
};
const oddsForRisk = (givens: Givens): Solution => ({ ...measured(armsOf(givens)), ratioTimes: riskMeasures(armsOf(givens)).oddsRatio ?? 0 });
const relative = (givens: Givens): Solution => {
  const exact = measured(armsOf(givens));
  return { ...exact, differencePoints: PER_CENT * (exact.ratioTimes - 1) };
};

const share = (say: Say, events: string, total: string): string => say.number((PER_CENT * say.value(events)) / say.value(total), 2);
const ratio = (say: Say): string => asAsked(answerOf(say, "ratioTimes"), 0.01, "nearest");
const difference = (say: Say): string => asAsked(answerOf(say, "differencePoints"), 0.1, "nearest");
/** Two decimals, or four where two of them would hide why it is rounded up. */
const oneInExact = (say: Say): string => { const exact = answerOf(say, "oneInPieces"); return say.number(exact, Math.ceil(Number(exact.toFixed(2))) === Math.ceil(exact) ? 2 : 4); };
const exactDifference = (say: Say): string => say.number(answerOf(say, "differencePoints"), 4);
const oneIn = (say: Say): string => say.number(Math.ceil(answerOf(say, "oneInPieces")), 0);
const first = (say: Say): string => say.about("first");
const GROUPS = [["removal of the tissue", "repair"], ["the older technique", "the newer one"], ["late operation", "early operation"], ["free movement", "bracing"]] as const;

/** 14f: risk ratio, difference and one in how many. */
export const crudeRr: SumFamily = {
  kind: "sum",
  id: "crude-rr",
  code: "14f",
  module: "M14",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m14-rates"],
  reads: [],
  sources: [],
  cautions: ["C2", "C16"],
  givens: [EVENTS, TOTAL, OTHER_EVENTS, OTHER_TOTAL],
  asks: [
    { id: "ratioTimes", unit: "times", roundTo: 0.01, rounding: "nearest", safeSide: "none" },
    { id: "differencePoints", unit: "points", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
    { id: "oneInPieces", unit: "pieces", roundTo: 1, rounding: "up", safeSide: "none" },
  ],
  draw: (chance) => {
    const [one, other] = chance.pick(GROUPS);
    return { givens: drawArms(chance), about: { ...drawCase(chance), first: one, other } };
  },
  solve: (givens) => ({ ...measured(armsOf(givens)) }),
  slips: [
    { id: "arms-exchanged", gives: ({ givens }) => { const { ratioTimes, differencePoints, oneInPieces } = measured(swapped(armsOf(givens))); return { ratioTimes, differencePoints, oneInPieces }; } },
    { id: "rounded-down", gives: ({ givens }) => roundedDown(givens) },
    { id: "odds-for-risk", gives: ({ givens }) => oddsForRisk(givens) },
    { id: "relative-for-absolute", gives: ({ givens }) => relative(givens) },
  ],
  words: {
    en: {
      title: "Twice as often, or one in how many?",
      stems: [
        (say) => [`An invented series compares ${say.about("first")} with ${say.about("other")}. Further operations were counted in both groups, and nothing was adjusted for.`],
        (say) => [`At ${say.about("hospital")} two groups of the past are set beside each other: ${say.about("first")}, and ${say.about("other")}. The numbers are invented. Further operations were counted, and nothing was adjusted for.`],
        (say) => [`“Much better,” says a slide about ${say.about("other")}. You take the counts, invented for this question, and say it in three numbers. Nothing was adjusted for.`],
      ],
      question: "For the first group against the other: what is the risk ratio to the nearest hundredth, the difference to the nearest tenth of a point, and one further operation in how many, rounded up?",
      givens: {
        eventsPieces: (say) => `Further operations, ${say.about("first")}`,
        totalPieces: (say) => `Patients, ${say.about("first")}`,
        otherEventsPieces: (say) => `Further operations, ${say.about("other")}`,
        otherTotalPieces: (say) => `Patients, ${say.about("other")}`,
      },
      asks: { ratioTimes: "Risk ratio", differencePoints: "Difference", oneInPieces: "One in" },
      says: SUM_SAYS,
      slips: {
        "arms-exchanged": { name: "groups exchanged", because: (say) => [`The question sets ${first(say)} against ${say.about("other")}. Exchanged, a harm reads as a gain.`] },
        "rounded-down": { name: "rounded down", because: (say) => [`The sum gives ${oneInExact(say)} patients; rounded down it promises more than was counted.`] },
        "odds-for-risk": { name: "odds ratio for risk ratio", because: (say) => [`You divided events by those without. The risk is events over all, and its ratio is ${ratio(say)}.`] },
        "relative-for-absolute": { name: "relative for absolute", because: (say) => [`That is how much larger one is than the other. The difference is in points of per cent: ${difference(say)}.`] },
      },
      working: (say) => [`Risks: 100 × ${say.bare("eventsPieces")} ÷ ${say.bare("totalPieces")} = ${share(say, "eventsPieces", "totalPieces")} and 100 × ${say.bare("otherEventsPieces")} ÷ ${say.bare("otherTotalPieces")} = ${share(say, "otherEventsPieces", "otherTotalPieces")} per cent`, `Ratio ${ratio(say)}; difference ${exactDifference(say)} points, to the nearest tenth ${difference(say)}`, `One in: 100 ÷ ${exactDifference(say)} = ${oneInExact(say)}, rounded up: ${oneIn(say)}`],
      right: (say) => [`${ratio(say)} times, ${difference(say)} points, one in ${oneIn(say)}. Groups that were not adjusted may differ in more than the treatment.`],
      off: (say) => [`First both risks, events over all in each group; then ratio, difference, and one over the difference, up to ${oneIn(say)}.`],
      inverse: () => [],
      turns: () => ["The same ratio may stand for one in ten or one in a thousand. Only the difference says how many."],
    },
  },
};
