import { compareOnGrid } from "../quantity/grid.ts";

/** One row per person, one column per item. */
export type ScoreMatrix = readonly (readonly number[])[];

/** Checks that all rows are equally long. */
export const requireRectangle = (matrix: ScoreMatrix): void => {
  const width = matrix[0]?.length ?? 0;
  for (const [index, row] of matrix.entries()) {
    if (row.length !== width) {
      throw new RangeError(`matrix must have ${width} items in every row, got ${row.length} in row ${index}`);
    }
  }
};

/** The scores of one item. */
export const itemScores = (matrix: ScoreMatrix, item: number): number[] => matrix.map((row) => row[item] ?? 0);

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** True where all values are the same; compared on the grid, because sums of parts are not exact in doubles. */
export const isConstant = (values: readonly number[]): boolean =>
  values.every((value) => compareOnGrid(value, values[0] ?? value) === 0);

const mean = (values: readonly number[]): number => sum(values) / values.length;

/** Population covariance (divided by n); of a list with itself its variance. */
export const covariance = (first: readonly number[], second: readonly number[]): number => {
  const firstMean = mean(first);
  const secondMean = mean(second);
  return mean(first.map((value, index) => (value - firstMean) * ((second[index] ?? secondMean) - secondMean)));
};
