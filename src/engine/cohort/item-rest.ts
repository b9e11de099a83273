import { requireNumber } from "../quantity/require.ts";
import { covariance, isConstant, itemScores, requireRectangle, type ScoreMatrix, sum } from "./score-matrix.ts";

const requireScores = (matrix: ScoreMatrix): void => {
  requireRectangle(matrix);
  for (const [person, row] of matrix.entries()) {
    for (const [item, score] of row.entries()) {
      const range = { least: 0, leastIncluded: true, greatest: 1, greatestIncluded: true };
      requireNumber(`matrix[${person}][${item}]`, score, range);
    }
  }
};

/**
 * Discrimination of each item: correlation of its score with the total of the other items. The item itself is left out,
 * because a short sheet would otherwise correlate with its own part.
 *
 * @param matrix - Rows are persons, columns items; every score from 0 to 1, all rows equally long. May be empty.
 * @returns One correlation per item, −1 to 1; `null` where undefined: the item or the rest has no spread.
 * @throws {RangeError} If a score is outside 0 to 1, or rows differ in length.
 * @example itemRest([[1, 1, 1], [1, 1, 0], [1, 0, 0], [0, 0, 0]]) // => [0.522, 0.707, 0.522]
 */
export const itemRest = (matrix: ScoreMatrix): (number | null)[] => {
  requireScores(matrix);
  return Array.from({ length: matrix[0]?.length ?? 0 }, (_, item) => {
    const scores = itemScores(matrix, item);
    const rest = matrix.map((row) => sum(row.filter((_score, column) => column !== item)));
    if (isConstant(scores) || isConstant(rest)) return null;
    return covariance(scores, rest) / Math.sqrt(covariance(scores, scores) * covariance(rest, rest));
  });
};
