import { requireCount, requireNumber } from "../quantity/require.ts";

export interface SparesQuestion {
  readonly cases: number;
  readonly failureShare: number;
  readonly level: number;
}

export interface SparesAnswer {
  readonly spares: number;
  /** Chance that even these do not suffice. */
  readonly shortShare: number;
}

/** Beyond these the running sum would lose its digits. */
const GREATEST = { cases: 500, failureShare: 0.5, level: 0.999 } as const;

const requireQuestion = ({ cases, failureShare, level }: SparesQuestion): void => {
  requireCount({ cases });
  requireNumber("cases", cases, { least: 1, leastIncluded: true, greatest: GREATEST.cases, greatestIncluded: true });
  requireNumber("failureShare", failureShare, { least: 0, leastIncluded: true, greatest: GREATEST.failureShare, greatestIncluded: true });
  requireNumber("level", level, { least: 0, greatest: GREATEST.level, greatestIncluded: true });
};

/**
 * Fewest spare packs so that a list has enough good ones at a service level: least s with P(good among cases + s ≥ cases) ≥
 * level, packs failing independently. Summed as the chance of at most s failures before the last good pack, Σ C(cases + k − 1, k)
 * (1 − p)^cases p^k (negative binomial form of the same chance: Feller 1968, An introduction to probability theory, vol. 1,
 * section VI.8; from memory).
 *
 * @param cases - Packs that the list needs; whole number, 1 to 500 (included).
 * @param failureShare - Share of packs that fail or are dropped; 0 to 0.5 (included).
 * @param level - Wanted chance of having enough; greater than 0, at most 0.999 (included).
 * @returns Spare packs, and the chance that they still do not suffice.
 * @throws {RangeError} If a value is outside its range.
 * @example sparesNeeded({ cases: 12, failureShare: 0.03, level: 0.95 }) // => { spares: 2, shortShare: 0.008 }
 */
export const sparesNeeded = ({ cases, failureShare, level }: SparesQuestion): SparesAnswer => {
  requireQuestion({ cases, failureShare, level });
  let term = (1 - failureShare) ** cases;
  let enough = term;
  let spares = 0;
  while (enough < level) {
    spares += 1;
    term *= (failureShare * (cases + spares - 1)) / spares;
    enough += term;
  }
  return { spares, shortShare: Math.max(0, 1 - enough) };
};
