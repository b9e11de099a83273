import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { given, HOSPITALS, PERCENT, withPlaces } from "../m01/common.ts";

const LEARNERS = { key: "learners", unit: "pieces", least: 36, greatest: 80, step: 1 } as const;
const CHOICES = ["first", "second", "third"] as const;
const COUNT = { unit: "pieces", least: 0, greatest: 24, step: 1 } as const;
const TOOK = CHOICES.map((choice) => ({ key: `${choice}Took`, ...COUNT }));

/** A wrong choice that fewer take does no work (Tarrant, Ware and Mohammed 2009, 10.1186/1472-6920-9-40). */
const ONE_IN = 20;
/** The programme of the stem calls an item easy where more than nine in ten had it right. */
const WRONG_AT_MOST_ONE_IN = 10;
/** Five learners, taken for five in a hundred. */
const FIVE = 5;

const ITEMS: Readonly<Record<string, readonly [string, string, string]>> = {
  "depth of a stitch": ["margin left out", "width added twice", "rounded up"],
  "width of a cuff": ["half the girth", "whole diameter", "girth taken for diameter"],
  "count at the end": ["packets counted", "a pair counted once", "dropped ones left out"],
  "height of a bag": ["centimetres read as pressure", "measured from the floor", "measured from the table"],
};

type Picks = Readonly<Record<string, string>>;
type Choice = (typeof CHOICES)[number];

const took = (givens: Givens, choice: Choice): number => given(givens, `${choice}Took`);
const wrong = (givens: Givens): number => CHOICES.reduce((sum, choice) => sum + took(givens, choice), 0);
const isEasy = (givens: Givens): boolean => wrong(givens) * WRONG_AT_MOST_ONE_IN < given(givens, "learners");
const isDead = (givens: Givens, choice: Choice): boolean => took(givens, choice) * ONE_IN < given(givens, "learners");
const nextOf = (givens: Givens): string => {
  if (isEasy(givens)) return "leave";
  return CHOICES.some((choice) => isDead(givens, choice)) ? "rewrite" : "keep";
};
const picksBy = (givens: Givens, dead: (choice: Choice) => boolean): Picks => ({ ...Object.fromEntries(CHOICES.map((choice) => [choice, dead(choice) ? "dead" : "works"])), next: nextOf(givens) });
const truth = ({ givens }: Pick<Draw, "givens">): Picks => picksBy(givens, (choice) => isDead(givens, choice));
/** The same with some choices judged by another rule; null where the rule makes no difference. */
const judgedBy = (draw: Draw, dead: (choice: Choice) => boolean): Picks | null => {
  const picks = picksBy(draw.givens, dead);
  return CHOICES.some((choice) => picks[choice] !== truth(draw)[choice]) ? picks : null;
};
const byFive = (draw: Draw): Picks | null => judgedBy(draw, (choice) => isDead(draw.givens, choice) || took(draw.givens, choice) < FIVE);
const rarest = (givens: Givens): Choice => [...CHOICES].sort((one, other) => took(givens, one) - took(givens, other))[0] ?? "first";

/** Counts of the three wrong choices: few altogether in an easy item; otherwise at least one that many took. */
const drawCounts = (chance: Chance, learners: number): readonly number[] => {
  const last = Math.ceil(learners / ONE_IN) - 1;
  const working = { least: last + 2, greatest: Math.floor(learners / 5), step: 1 };
  if (chance.happens(1, 4)) {
    const few = chance.below(Math.ceil(learners / WRONG_AT_MOST_ONE_IN) - 2) + 1;
    const first = chance.below(few + 1);
    return chance.shuffled([first, few - first, 0]);
  }
  const other = (): number => (chance.happens(1, 2) ? chance.below(last + 1) : chance.onGrid(working));
  return chance.shuffled([chance.onGrid({ ...working, least: Math.ceil(learners / 6) }), other(), other()]);
};

const share = (say: Say, choice: Choice): string => withPlaces((PERCENT * say.value(`${choice}Took`)) / say.value("learners"), 1, "%");
const asDraw = (say: Say): Pick<Draw, "givens"> => ({ givens: Object.fromEntries(["learners", ...TOOK.map(({ key }) => key)].map((key) => [key, say.value(key)])) });
const choiceText = (say: Say, at: number): string => ITEMS[say.about("item")]?.[at] ?? "";
const NAMES = { first: "First wrong choice", second: "Second wrong choice", third: "Third wrong choice" } as const;
const RULE = "The programme’s rule: a wrong choice that fewer than one in twenty learners take does no work and is rewritten; but an item that more than nine in ten had right is easy, and its choices are left.";

/** D6, here 15f: wrong choices that do no work, and when that means nothing. */
export const deadChoice: NameFamily = {
  kind: "name",
  id: "dead-choice",
  code: "15f",
  module: "DX",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["dx-item"],
  reads: [],
  sources: [],
  cautions: ["C12"],
  givens: [LEARNERS, ...TOOK],
  attributes: [...CHOICES.map((id) => ({ id, options: ["works", "dead"] })), { id: "next", options: ["keep", "rewrite", "leave", "delete"] }],
  draw: (chance) => {
    const learners = chance.onGrid(LEARNERS);
    // A share of exactly one in twenty is an argument, not a question.
    const counts = drawCounts(chance, learners).map((count) => (count * ONE_IN === learners ? count - 1 : count));
    return { givens: { learners, ...Object.fromEntries(TOOK.map(({ key }, at) => [key, counts[at] ?? 0])) }, about: { hospital: chance.pick(HOSPITALS), item: chance.pick(Object.keys(ITEMS)) } };
  },
  truth,
  slips: [
    { id: "five-learners", gives: byFive },
    { id: "share-of-the-wrong", gives: (draw) => judgedBy(draw, (choice) => took(draw.givens, choice) * ONE_IN < wrong(draw.givens)) },
    { id: "rarest-called-dead", gives: (draw) => (nextOf(draw.givens) === "keep" && byFive(draw) === null ? { ...truth(draw), [rarest(draw.givens)]: "dead" } : null) },
    { id: "easy-item-rewritten", gives: (draw) => (nextOf(draw.givens) === "leave" ? { ...truth(draw), next: "rewrite" } : null) },
    { id: "dead-one-kept", gives: (draw) => (nextOf(draw.givens) === "rewrite" ? { ...truth(draw), next: "keep" } : null) },
    { id: "item-deleted", gives: (draw) => ({ ...truth(draw), next: "delete" }) },
  ],
  words: {
    en: {
      title: "Choices that nobody takes",
      stems: [
        (say) => [`Learners from all five hospitals answered an item on the ${say.about("item")} by choosing; ${say.about("hospital")} keeps the table. ${RULE}`],
        (say) => [RULE, `The table of choices for an item on the ${say.about("item")} lies before the programme lead at ${say.about("hospital")}.`],
        (say) => [`An item with three wrong choices may have only one that tempts anybody. Item on the ${say.about("item")}, table from ${say.about("hospital")}. ${RULE}`],
      ],
      question: "Which wrong choices do no work by this rule, and what is done next?",
      givens: { learners: "Learners who answered", ...Object.fromEntries(CHOICES.map((choice, at) => [`${choice}Took`, (say: Say) => `${NAMES[choice]}: ${choiceText(say, at)}`])) },
      attributes: { ...NAMES, next: "Next" },
      options: { works: "Taken often enough", dead: "Taken by fewer than one in twenty", keep: "Nothing: every choice works", rewrite: "Rewrite what does no work", leave: "Leave it: the item is easy", delete: "Delete the item" },
      slips: {
        "five-learners": { name: "five learners for five per cent", because: (say) => [`One in twenty of ${say.bare("learners")} is ${say.number(say.value("learners") / ONE_IN)}, not five.`] },
        "share-of-the-wrong": { name: "share of the wrong answers", because: (say) => [`The share is of all ${say.bare("learners")} who answered, not of the ${wrong(asDraw(say).givens)} who were wrong.`] },
        "rarest-called-dead": { name: "the rarest called dead", because: (say) => [`Some choice is always the rarest. This one was taken by ${share(say, rarest(asDraw(say).givens))}, and that is more than one in twenty.`] },
        "easy-item-rewritten": { name: "easy item rewritten", because: (say) => [`Only ${wrong(asDraw(say).givens)} of ${say.bare("learners")} were wrong. Where almost everybody is right every wrong choice is rare, and nothing is wrong with it.`] },
        "dead-one-kept": { name: "dead choice kept", because: () => ["A choice that hardly anybody takes makes the item a shorter one. A better wrong choice is a mistake that people really make."] },
        "item-deleted": { name: "item deleted", because: () => ["A choice that does no work says nothing against the question. And a figure like this is no ground to strike anything out."] },
      },
      working: (say) => [
        `One in twenty of ${say.bare("learners")}: ${say.number(say.value("learners") / ONE_IN)} learners`,
        ...CHOICES.map((choice, at) => `${choiceText(say, at)}: ${say.bare(`${choice}Took`)} ÷ ${say.bare("learners")} = ${share(say, choice)}, ${isDead(asDraw(say).givens, choice) ? "fewer than one in twenty" : "often enough"}`),
        `Wrong altogether: ${wrong(asDraw(say).givens)} of ${say.bare("learners")}, ${isEasy(asDraw(say).givens) ? "fewer than one in ten: an easy item" : "not fewer than one in ten"}`,
        "One in twenty after Tarrant and others 2009; nine in ten is this programme’s own line.",
      ],
      right: (say) => [{ leave: "The item is easy, so rare choices tell nothing. Whether it should be so easy is another question.", rewrite: "Rewrite it with a mistake that people make; the slips of typed answers are a good place to look.", keep: "All three tempt somebody. Leave them, and read why." }[nextOf(asDraw(say).givens)] ?? ""],
      off: () => ["Each choice over all learners, beside one in twenty. Then look whether the item is easy: there the rule does not apply."],
      moves: (say) => [`With ${say.value("learners") * 2} learners and the same counts, one in twenty would be ${say.number(say.value("learners") / WRONG_AT_MOST_ONE_IN)}.`],
      turns: () => ["The same count is rare in a large group and frequent in a small one; and in an easy item it means nothing."],
    },
  },
};
