import { requireOneCount } from "../quantity/require.ts";

type Table = readonly (readonly number[])[];

const requireTable = (table: Table): void => {
  for (const [index, row] of table.entries()) {
    if (row.length !== table.length) {
      throw new RangeError(`table must have as many columns as rows (${table.length}), got ${row.length} in row ${index}`);
    }
    for (const [column, count] of row.entries()) requireOneCount(`table[${index}][${column}]`, count);
  }
};

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/**
 * Agreement of two readers beyond chance, (observed − chance) ÷ (1 − chance) (Cohen 1960, A coefficient of agreement
 * for nominal scales, Educ Psychol Meas 20:37–46, 10.1177/001316446002000104).
 *
 * @param table - Counts, one row per class of the first reader, one column per class of the second, in the same order;
 * square, whole numbers, 0 included.
 * @returns Kappa, at most 1; 0 at chance, negative below it.
 * @throws {RangeError} If the table is not square, a count is negative or not whole, or chance alone agrees wholly
 * (all readings in one class, or none at all): then there is no kappa.
 * @example cohenKappa([[20, 5], [10, 15]]) // => 0.4
 */
export const cohenKappa = (table: Table): number => {
  requireTable(table);
  const total = sum(table.map(sum));
  const agreed = sum(table.map((row, index) => row[index] ?? 0));
  const byChance = sum(table.map((row, index) => sum(row) * sum(table.map((other) => other[index] ?? 0))));
  if (total ** 2 === byChance) {
    throw new RangeError(`table must hold readings in more than one class, got ${total} in one`);
  }
  return (total * agreed - byChance) / (total ** 2 - byChance);
};
