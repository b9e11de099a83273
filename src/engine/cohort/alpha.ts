import { requireFinite } from "../quantity/require.ts";
import { covariance, itemScores, type ScoreMatrix, sum } from "./score-matrix.ts";

/** Variances on the diagonal, covariances beside it; one row and column per item. */
export type CovarianceMatrix = readonly (readonly number[])[];

/** Covariances of all pairs of items, divided by n. */
export const covariancesOf = (matrix: ScoreMatrix): CovarianceMatrix => {
  const items = (matrix[0] ?? []).map((_, item) => itemScores(matrix, item));
  return items.map((one) => items.map((other) => covariance(one, other)));
};

const requireSquare = (matrix: CovarianceMatrix): void => {
  for (const [index, row] of matrix.entries()) {
    if (row.length !== matrix.length) throw new RangeError(`matrix must have ${matrix.length} values in every row, got ${row.length} in row ${index}`);
    requireFinite(Object.fromEntries(row.map((value, column) => [`matrix[${index}][${column}]`, value])));
  }
};

/**
 * Reliability from the covariances of the items, k ÷ (k − 1) × (1 − Σ variances ÷ variance of the total) (Cronbach 1951,
 * Coefficient alpha and the internal structure of tests, Psychometrika 16:297–334, 10.1007/BF02310555). Of right-or-wrong
 * items it is KR-20. Null where there are fewer than two items or the total has no spread.
 */
export const alphaOf = (matrix: CovarianceMatrix): number | null => {
  requireSquare(matrix);
  const items = matrix.length;
  const total = sum(matrix.map(sum));
  if (items < 2 || !(total > 0)) return null;
  const within = sum(matrix.map((row, index) => row[index] ?? 0));
  return (items / (items - 1)) * (1 - within / total);
};

/** The same for each item left out in turn: where it rises, the item does not fit the others. */
export const alphaWithoutEach = (matrix: CovarianceMatrix): readonly (number | null)[] =>
  matrix.map((_, out) => alphaOf(matrix.filter((_row, index) => index !== out).map((row) => row.filter((_value, column) => column !== out))));
