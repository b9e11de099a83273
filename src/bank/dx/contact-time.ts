import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import { answerText, given, HOSPITALS } from "../m01/common.ts";

const WORDS = { key: "words", unit: "pieces", least: 1500, greatest: 6000, step: 100 } as const;
const QUESTIONS = { key: "questions", unit: "pieces", least: 8, greatest: 30, step: 1 } as const;
const DIFFICULTY = { key: "difficulty", unit: "pieces", least: 1, greatest: 5, step: 1 } as const;

/** Parts of the contact-time formula that nurses' accreditors print (Mergener 1991, from memory). */
const PARTS = { start: 22.3, word: 0.00209, question: 2.78, level: 15.5, share: 0.9 } as const;

const inner = (givens: Givens, start: number = -PARTS.start): number => start + PARTS.word * given(givens, "words") + PARTS.question * given(givens, "questions") + PARTS.level * given(givens, "difficulty");
const minutes = { places: 1, unit: "min" } as const;

/** D7, here 15g: how long a module takes, by the contact-time formula. */
export const contactTime: SumFamily = {
  kind: "sum",
  id: "contact-time",
  code: "15g",
  module: "DX",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["dx-time"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [WORDS, QUESTIONS, DIFFICULTY],
  asks: [{ id: "contactMin", unit: "min", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({ givens: { words: chance.onGrid(WORDS), questions: chance.onGrid(QUESTIONS), difficulty: chance.onGrid(DIFFICULTY) }, about: { hospital: chance.pick(HOSPITALS), module: chance.pick(["fluid", "counting and waste", "the cuff", "portals"]) } }),
  solve: (givens) => ({ contactMin: PARTS.share * inner(givens) }),
  slips: [
    { id: "sign-of-the-start", gives: ({ givens }) => ({ contactMin: PARTS.share * inner(givens, PARTS.start) }) },
    { id: "share-left-out", gives: ({ givens }) => ({ contactMin: inner(givens) }) },
    { id: "start-left-out", gives: ({ givens }) => ({ contactMin: PARTS.share * inner(givens, 0) }) },
  ],
  words: {
    en: {
      title: "How long does it take",
      stems: [
        (say) => [`A module on ${say.about("module")} at ${say.about("hospital")} is to be credited with minutes. Words and questions were counted; the difficulty is the author’s estimate from one to five.`],
        (say) => [`Nobody timed the readers of the module on ${say.about("module")}. ${say.about("hospital")} uses the contact-time formula instead, as accreditors print it.`],
        (say) => [`A formula replaces a stop-watch only for groups like those it was made from. ${say.about("hospital")}, module on ${say.about("module")}.`],
      ],
      question: `How many minutes does the formula give? ${PARTS.share} × (−${PARTS.start} + ${PARTS.word} × words + ${PARTS.question} × questions + ${PARTS.level} × difficulty), to one decimal.`,
      givens: { words: "Words", questions: "Questions", difficulty: "Difficulty, one to five" },
      asks: { contactMin: "Contact time" },
      says: { none: "It takes no time", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "sign-of-the-start": { name: "sign of the first number", because: () => ["The first number is taken away. A handout in print has it the wrong way round, and its own worked sum shows it."] },
        "share-left-out": { name: "share left out", because: () => [`The whole bracket counts with ${PARTS.share}.`] },
        "start-left-out": { name: "first number left out", because: () => [`${PARTS.start} minutes are taken off before the share.`] },
      },
      working: (say) => [
        `Bracket: −${PARTS.start} + ${PARTS.word} × ${say.bare("words")} + ${PARTS.question} × ${say.bare("questions")} + ${PARTS.level} × ${say.bare("difficulty")} = ${say.number(inner({ words: say.value("words"), questions: say.value("questions"), difficulty: say.value("difficulty") }), 2)}`,
        `Times ${PARTS.share}: ${answerText(say, "contactMin", minutes)}`,
        "Formula of Mergener 1991, from memory; to be verified.",
      ],
      right: (say) => [`${answerText(say, "contactMin", minutes)}. If your own readers take longer, theirs is the better measurement.`],
      off: () => ["Work the bracket out first, minus sign included, and take nine tenths of it."],
      inverse: () => [],
      turns: () => [`One question more adds ${(PARTS.share * PARTS.question).toFixed(1)} minutes, whatever the rest.`],
    },
  },
};
