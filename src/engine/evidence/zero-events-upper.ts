import { requireCount, requireNumber } from "../quantity/require.ts";

export interface ZeroEventsUpper {
  /** Exact upper end. */
  readonly exact: number;
  /** The rule of three, at most 1. */
  readonly ruleOfThree: number;
}

/** Chance that is left beyond the upper end of a one-sided 95 % interval. */
const LEFT_BEYOND = 0.05;

/**
 * How large a risk may still be where nothing was seen: upper end of the one-sided 95 % interval, 1 − 0.05^(1/n), and its short
 * form 3/n (Hanley and Lippman-Hand 1983, If nothing goes wrong, is everything all right?, JAMA 249:1743–5,
 * 10.1001/jama.1983.03330370053031). Nothing seen is not nothing there.
 *
 * @param total - How many were looked at without an event; whole number, at least 1.
 * @returns Both upper ends as shares from 0 to 1.
 * @throws {RangeError} If the total is not whole or less than 1.
 * @example zeroEventsUpper({ total: 60 }) // => { exact: 0.0487, ruleOfThree: 0.05 }
 */
export const zeroEventsUpper = ({ total }: { readonly total: number }): ZeroEventsUpper => {
  requireCount({ total });
  requireNumber("total", total, { least: 1, leastIncluded: true });
  return { exact: -Math.expm1(Math.log(LEFT_BEYOND) / total), ruleOfThree: Math.min(1, 3 / total) };
};
