import { inWords } from "./assumptions.ts";
import { COURSE, SHEET_SIZE } from "./course.ts";
import { TEST_DAY } from "./keep.ts";
import { holdsZero, type MeanInterval } from "./mean-interval.ts";
import { MOST_DAYS } from "./reach-steady.ts";
import type { KeepResult, OrderResult, SetResult } from "./run-set.ts";

/** The results as text: assumptions first, then tables, then one sentence for each comparison. */

const NAME_WIDTH = 28;
const COLUMN_WIDTH = 27;

const count = (value: number): string => value.toFixed(1);
const share = (value: number): string => `${(value * 100).toFixed(1)} %`;
const between = ({ low, high }: MeanInterval, shown: (value: number) => string): string => `${shown(low)} to ${shown(high)}`;
const cell = (interval: MeanInterval, shown: (value: number) => string): string => `${shown(interval.mean)} (${between(interval, shown)})`;
const row = (name: string, cells: readonly string[]): string => `  ${name.padEnd(NAME_WIDTH)}${cells.map((text) => text.padEnd(COLUMN_WIDTH)).join("")}`.trimEnd();

const points = (value: number): string => (value * 100).toFixed(1);

const NO_DIFFERENCE = "no difference to be seen, the interval contains 0";

/** One comparison with the first row of its table. */
const compared = (name: string, difference: MeanInterval, { what, shown }: { readonly what: string; readonly shown: (value: number) => string }): string => {
  const interval = `${difference.mean > 0 ? "+" : ""}${cell(difference, shown)}`;
  if (holdsZero(difference)) return `  ${name}: ${interval} ${what}; ${NO_DIFFERENCE}.`;
  return `  ${name}: ${interval} ${what}; ${difference.mean > 0 ? "more" : "fewer"} under these assumptions.`;
};

const QUESTIONS = { what: "questions", shown: count };
const POINTS = { what: "right answers in 100", shown: points };

/** Questions compare only where nearly all learners got there: who did not would have needed more than were counted. */
const MOST_MISSING = 0.05;

const questionsCompared = ({ name, notReached, moreQuestions }: OrderResult, first: OrderResult | undefined, learners: number): string => {
  const isCompared = Math.max(notReached, first?.notReached ?? 0) <= MOST_MISSING * learners;
  return isCompared ? compared(name, moreQuestions, QUESTIONS) : `  ${name}: questions not compared, because more than ${MOST_MISSING * 100} in 100 learners of one of the two were not there after ${MOST_DAYS} days.`;
};

const orderLines = ({ orders, learners }: SetResult): readonly string[] => {
  const missing = orders.filter(({ notReached }) => notReached > 0).map(({ name, notReached }) => `${notReached} in the order "${name}"`);
  return [
    `1. Until all ${COURSE.length} objectives are Steady, ${SHEET_SIZE} questions at most a day`,
    row("", ["questions", "days", "right the morning after"]),
    ...orders.map(({ name, questions, days, rightShare }) => row(name, [cell(questions, count), cell(days, count), cell(rightShare, share)])),
    ...(missing.length === 0 ? [] : [`  Not there after ${MOST_DAYS} days, and counted with what they had answered by then, which is too few: ${missing.join("; ")}.`]),
    "  Compared with the workbook's order:",
    ...orders.slice(1).flatMap((order) => [questionsCompared(order, orders[0], learners), compared(order.name, order.moreRight, POINTS)]),
  ];
};

const keepLines = (keeps: readonly KeepResult[]): readonly string[] => [
  `2. Right on day ${TEST_DAY}, every objective Worked on day 0`,
  row("", ["right", "returns", "days since the last"]),
  ...keeps.map(({ name, rightShare, returns, idleDays }) => row(name, [cell(rightShare, share), count(returns.mean), count(idleDays.mean)])),
  "  Compared with the return rule:",
  ...keeps.slice(1).map(({ name, moreRight }) => compared(name, moreRight, POINTS)),
];

/** One set of assumptions and what follows from it. */
export const setText = (result: SetResult): string =>
  [`Assumptions: ${result.set.name}`, ...inWords(result.set).map((sentence) => `  ${sentence}`), "", ...orderLines(result), "", ...keepLines(result.keeps)].join("\n");

/** What was done, how the intervals are made, and what they are not. */
export const headText = (learners: number, seed: number): string => [
  `${learners} simulated learners for each set of assumptions, seed ${seed}. The same learner goes through every order and every way of coming back.`,
  "Where they stand, what is asked and when it comes back is worked out by the workbook's own rules; only the answers are simulated.",
  "Nothing is known at the start. A worked example stands before the first question of an objective and teaches as a question does.",
  "What was forgotten and is learnt again lasts as long as at first.",
  "In part 2 equal gaps give each objective as many returns as the rule took, and an unsafe answer counts as a wrong one.",
  "In brackets: 95 % interval of the mean of the learners, mean ± 1.96 × s / √n; for a difference, of the differences learner by learner.",
  "It is the uncertainty of the draws alone. More learners make it narrower; they do not make an assumption truer.",
  "Each interval stands for itself: about one in twenty misses what is true.",
].join("\n");

/** What must be known before any of it is quoted. */
export const endText = (): string => [
  "How to read this",
  "A simulation shows what follows from assumptions, not what people do. None of these numbers was measured on a learner.",
  "The order within a sheet changes nothing here, because these learners neither confuse nor compare: whether mixing helps people, only trials can say.",
  "The workbook's order also asks what has come back; the others ask only what is not yet Steady. Compare the questions together with the last column.",
  "Steady needs two days between the first and the last right answer. Blocks that stay with one objective spend their questions waiting for that.",
  "Equal gaps may do as well as the rule or better on one day fixed beforehand, because their last question lies nearer to it.",
].join("\n");
