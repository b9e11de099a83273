import { covariance, isConstant, itemScores, requireRectangle, type ScoreMatrix, sum } from "./score-matrix.ts";

const requireMarks = (matrix: ScoreMatrix): void => {
  requireRectangle(matrix);
  for (const [person, row] of matrix.entries()) {
    for (const [item, mark] of row.entries()) {
      if (mark !== 0 && mark !== 1) throw new RangeError(`matrix[${person}][${item}] must be 0 or 1, got ${String(mark)}`);
    }
  }
};

/**
 * Reliability of a fixed sheet of right-or-wrong items, k ÷ (k − 1) × (1 − Σpq ÷ variance of the totals), with variances
 * divided by n (Kuder and Richardson 1937, The theory of the estimation of test reliability, Psychometrika 2:151–160,
 * 10.1007/BF02288391). Divided by n − 1 it would come out too high.
 *
 * @param matrix - Rows are persons, columns items; every mark 0 or 1, all rows equally long. May be empty.
 * @returns At most 1, may be negative; `null` where undefined: fewer than two items, nobody, or all totals equal.
 * @throws {RangeError} If a mark is neither 0 nor 1, or rows differ in length.
 * @example kr20([[1, 1, 1], [1, 1, 0], [1, 0, 0], [0, 0, 0]]) // => 0.75
 */
export const kr20 = (matrix: ScoreMatrix): number | null => {
  requireMarks(matrix);
  const items = matrix[0]?.length ?? 0;
  const totals = matrix.map(sum);
  if (items < 2 || isConstant(totals)) return null;
  const withinItems = Array.from({ length: items }, (_, item) => {
    const share = sum(itemScores(matrix, item)) / matrix.length;
    return share * (1 - share);
  });
  return (items / (items - 1)) * (1 - sum(withinItems) / covariance(totals, totals));
};
