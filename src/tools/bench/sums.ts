import { answerTo, draw, families, grade } from "../../bank/index.ts";
import type { Item } from "../../engine/question/item.ts";
import type { Response } from "../../engine/question/response.ts";
import { shown } from "./rate.ts";

/**
 * Draws and grades of all sums together, by processor time of this process, so that other work on the machine does not
 * count. `draw`, `right` and `wrong` time one of them alone, every item graded once; `pairRight` and `pairWrong` draw a
 * question and grade an answer to it at once, as a page does.
 */

const WARM = 1500;
const DRAWS = 2000;
const ROUNDS = 5;
const FIRST_SEED = 10_000;

const secondsOf = (work: () => void): number => {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
};

const WRONG = { kind: "sum", text: "7.2" } as const;

interface Times {
  readonly draw: number;
  readonly right: number;
  readonly wrong: number;
  readonly pairRight: number;
  readonly pairWrong: number;
}

const drawn = (id: string, from: number, count: number): readonly Item[] => Array.from({ length: count }, (_, place) => draw(id, from + place));

const gradeAll = (items: readonly Item[], answers: readonly Response[]): void => {
  for (const [place, item] of items.entries()) grade(item, answers[place] ?? WRONG);
};

const drawAndGrade = (id: string, answers: readonly Response[]): void => {
  for (const [place, answer] of answers.entries()) grade(draw(id, FIRST_SEED + place), answer);
};

const timesOf = (id: string): Times => {
  let items: readonly Item[] = [];
  const drawTime = secondsOf(() => {
    items = drawn(id, FIRST_SEED, DRAWS);
  });
  const answers = items.map(answerTo);
  const wrongs = items.map(() => WRONG);
  return {
    draw: drawTime,
    right: secondsOf(() => gradeAll(items, answers)),
    wrong: secondsOf(() => gradeAll(items, wrongs)),
    pairRight: secondsOf(() => drawAndGrade(id, answers)),
    pairWrong: secondsOf(() => drawAndGrade(id, wrongs)),
  };
};

const PARTS = ["draw", "right", "wrong", "pairRight", "pairWrong"] as const;

const median = (values: readonly number[]): number => values.toSorted((first, second) => first - second)[Math.floor(values.length / 2)] ?? Number.NaN;

/** The middle of several rounds for each part, as for everything else that is timed here. */
const medians = (rounds: readonly Times[]): Times => Object.fromEntries(PARTS.map((part) => [part, median(rounds.map((round) => round[part]))])) as unknown as Times;

/** Mean rates over all families of sums, one a second of one core. */
const sumRates = (): Readonly<Record<keyof Times, number>> => {
  const ids = families.filter(({ kind }) => kind === "sum").map(({ id }) => id);
  for (const id of ids) {
    const items = drawn(id, 0, WARM);
    for (const answers of [items.map(answerTo), items.map(() => WRONG)]) {
      gradeAll(items, answers);
      drawAndGrade(id, answers);
    }
  }
  const rounds = Array.from({ length: ROUNDS }, () => ids.map(timesOf));
  const times = ids.map((_, at) => medians(rounds.map((round) => round[at] as Times)));
  const rate = (part: keyof Times): number => (ids.length * DRAWS) / times.reduce((total, time) => total + time[part], 0);
  return { draw: rate("draw"), right: rate("right"), wrong: rate("wrong"), pairRight: rate("pairRight"), pairWrong: rate("pairWrong") };
};

/** All sums together, five lines. */
export const benchSums = (): void => {
  const sums = sumRates();
  shown("all sums: draw", sums.draw);
  shown("all sums: grade a right answer", sums.right);
  shown("all sums: grade a wrong answer", sums.wrong);
  shown("all sums: draw and grade, right answer", sums.pairRight);
  shown("all sums: draw and grade, wrong answer", sums.pairWrong);
};
