import { wilson } from "../../engine/evidence/wilson.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import { answerText, given, HOSPITALS, PERCENT } from "../m01/common.ts";

const RIGHT = { key: "rightAnswers", unit: "pieces", least: 3, greatest: 39, step: 1 } as const;
const LEARNERS = { key: "learners", unit: "pieces", least: 12, greatest: 40, step: 1 } as const;
const DEVIATE = 1.96;

const counts = (givens: Givens) => ({ events: given(givens, "rightAnswers"), total: given(givens, "learners") });
const solved = (givens: Givens): Solution => {
  const { events, total } = counts(givens);
  if (!(events <= total)) return { says: "none" };
  const { low, high } = wilson({ events, total });
  return { sharePercent: (PERCENT * events) / total, lowPercent: PERCENT * low, highPercent: PERCENT * high };
};
const share = (givens: Givens): number => counts(givens).events / counts(givens).total;
const around = (givens: Givens, half: number): Solution => ({ sharePercent: PERCENT * share(givens), lowPercent: PERCENT * (share(givens) - half), highPercent: PERCENT * (share(givens) + half) });
const whole = { places: 0, unit: "%" } as const;

/** D1, here 15a: how hard an item was, and how sure that is. Items name a family by two digits and a letter. */
export const difficulty: SumFamily = {
  kind: "sum",
  id: "difficulty",
  code: "15a",
  module: "DX",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["dx-item"],
  reads: [],
  sources: [],
  cautions: ["C12"],
  givens: [RIGHT, LEARNERS],
  asks: [
    { id: "sharePercent", unit: "%", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "lowPercent", unit: "%", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "highPercent", unit: "%", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const learners = chance.onGrid(LEARNERS);
    return { givens: { rightAnswers: chance.onGrid({ ...RIGHT, greatest: learners - 1 }), learners }, about: { hospital: chance.pick(HOSPITALS), item: chance.pick(["depth of a stitch", "width of a cuff", "count at the end", "height of a bag"]) } };
  },
  solve: solved,
  slips: [
    { id: "share-as-exact", gives: ({ givens }) => around(givens, 0) },
    { id: "normal-interval", gives: ({ givens }) => around(givens, DEVIATE * Math.sqrt((share(givens) * (1 - share(givens))) / counts(givens).total)) },
    { id: "wrong-ones-counted", gives: ({ givens }) => solved({ ...givens, rightAnswers: counts(givens).total - counts(givens).events }) },
  ],
  words: {
    en: {
      title: "How hard was this item",
      stems: [
        (say) => [`A group at ${say.about("hospital")} answered an item on the ${say.about("item")}, each learner once. The programme lead wants its difficulty, with the 95 % interval by Wilson’s method.`],
        (say) => [`Difficulty is the share of right answers, and a small group knows it only roughly. ${say.about("hospital")}, item on the ${say.about("item")}; 95 % interval by Wilson’s method.`],
        (say) => [`Before an item on the ${say.about("item")} is called easy or hard at ${say.about("hospital")}, put an interval around it: Wilson, 95 %.`],
      ],
      question: "What share answered correctly, and from where to where does the interval reach? In whole per cent.",
      givens: { rightAnswers: "Right answers", learners: "Learners who answered" },
      asks: { sharePercent: "Share right", lowPercent: "Lower end", highPercent: "Upper end" },
      says: { none: "There is no such share", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "share-as-exact": { name: "share taken as exact", because: (say) => [`${say.bare("learners")} learners cannot fix a share to the per cent. Another group would have given another one.`] },
        "normal-interval": { name: "normal interval", because: () => ["Twice the standard error either way leans past the ends in a small group. Wilson’s interval stays inside and is not symmetrical."] },
        "wrong-ones-counted": { name: "wrong answers counted", because: () => ["Difficulty is the share of right answers, odd as the name is: the higher, the easier."] },
      },
      working: (say) => [
        `Share: ${say.bare("rightAnswers")} ÷ ${say.bare("learners")} = ${answerText(say, "sharePercent", whole)}`,
        `Wilson’s 95 % interval: ${answerText(say, "lowPercent", whole)} to ${answerText(say, "highPercent", whole)} (Wilson 1927)`,
      ],
      right: (say) => [`${answerText(say, "sharePercent", whole)}, and anything from ${answerText(say, "lowPercent", whole)} to ${answerText(say, "highPercent", whole)} fits this group. Few decisions survive an interval that wide.`],
      off: () => ["Right answers over all who answered; then Wilson’s interval around it, which is not symmetrical."],
      inverse: () => [],
      turns: () => ["With four times as many learners and the same share, the interval is about half as wide."],
    },
  },
};
