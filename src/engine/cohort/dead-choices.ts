import { type Figure, givenOr, LEAST_FOR_ITEMS, refused } from "./figure.ts";
import { covariance, isConstant } from "./score-matrix.ts";

/** A wrong choice works where at least this share takes it and those who do are weaker elsewhere (Tarrant, Ware and Mohammed 2009, BMC Med Educ 9:40, 10.1186/1472-6920-9-40). */
const LEAST_SHARE = 0.05;

/** Whose choice it was: what they chose, and what they had right in the rest of the sheet. */
export interface Chosen {
  readonly choice: string | null;
  readonly restPoints: number;
}

export interface ChoiceFigures {
  readonly choice: string;
  readonly chosen: number;
  readonly share: Figure;
  /** Correlation of choosing it with the rest; below 0 where weaker learners choose it. */
  readonly discrimination: Figure;
  readonly works: boolean | null;
}

const correlation = (first: readonly number[], second: readonly number[]): number | null =>
  isConstant(first) || isConstant(second) ? null : covariance(first, second) / Math.sqrt(covariance(first, first) * covariance(second, second));

const figuresOf = (choice: string, answers: readonly Chosen[]): ChoiceFigures => {
  const picks = answers.map((answer) => (answer.choice === choice ? 1 : 0));
  const chosen = answers.filter((answer) => answer.choice === choice).length;
  if (answers.length < LEAST_FOR_ITEMS) return { choice, chosen, share: refused("under-thirty"), discrimination: refused("under-thirty"), works: null };
  const share = chosen / answers.length;
  const rest = correlation(picks, answers.map(({ restPoints }) => restPoints));
  const reason = isConstant(picks) ? "item-alike" : "rest-alike";
  return { choice, chosen, share: givenOr(share, "nobody"), discrimination: givenOr(rest, reason), works: share >= LEAST_SHARE && rest !== null && rest < 0 };
};

/** How each wrong choice of an item behaved; a slip that a family foresees is such a choice, also where the answer is typed. */
export const choiceFigures = (choices: readonly string[], answers: readonly Chosen[]): readonly ChoiceFigures[] => choices.map((choice) => figuresOf(choice, answers));

/** Share of the wrong choices that work; null where they could not be judged or there are none. */
export const choiceEfficiency = (figures: readonly ChoiceFigures[]): number | null => {
  if (figures.length === 0 || figures.some(({ works }) => works === null)) return null;
  return figures.filter(({ works }) => works === true).length / figures.length;
};

/** Mean number of working choices an item, from how many items have none, one, two and so on; null without items. */
export const meanWorking = (itemsByWorking: readonly number[]): number | null => {
  const items = itemsByWorking.reduce((total, count) => total + count, 0);
  return items === 0 ? null : itemsByWorking.reduce((total, count, working) => total + count * working, 0) / items;
};
