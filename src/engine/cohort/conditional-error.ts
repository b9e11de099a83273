import { requireCount, requireNumber } from "../quantity/require.ts";

export interface PointsOfItems {
  /** Right answers; parts are allowed, because a cut score may lie between two. */
  readonly points: number;
  readonly items: number;
}

/**
 * Standard error of one person's score on right-or-wrong items, √(x (k − x) ÷ (k − 1)), from the binomial model of errors
 * (Lord 1955, Estimating test reliability, Educ Psychol Meas 15:325–36, from memory). It needs no cohort, so it holds for
 * one person; it takes the items for a draw from many like them.
 */
export const conditionalErrorPoints = ({ points, items }: PointsOfItems): number => {
  requireCount({ items });
  requireNumber("items", items, { least: 2, leastIncluded: true });
  requireNumber("points", points, { least: 0, leastIncluded: true, greatest: items, greatestIncluded: true });
  return Math.sqrt((points * (items - points)) / (items - 1));
};
