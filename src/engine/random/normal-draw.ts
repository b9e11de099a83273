import type { Chance } from "./chance.ts";

const WORD = 2 ** 32;
const DRAWS = 12;

/**
 * A draw from a standard normal distribution, cut off at `limit` standard deviations to either side: the sum of twelve
 * uniform draws less six (variance 1, by the central limit theorem), drawn again while beyond the limit. Whole numbers,
 * sums and one division by a power of two only, so that every engine draws the same.
 */
export const normalDraw = (chance: Chance, limit: number): number => {
  for (;;) {
    let words = 0;
    for (let draw = 0; draw < DRAWS; draw += 1) words += chance.below(WORD);
    const value = words / WORD - DRAWS / 2;
    if (Math.abs(value) <= limit) return value;
  }
};
