import { requireCount, requireNumber } from "../quantity/require.ts";

export interface EventsOfTotal {
  readonly events: number;
  readonly total: number;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** Normal deviate of a two-sided 95 % interval. */
const DEVIATE = 1.959964;

/**
 * 95 % interval of a share after counting, by Wilson's score method (Wilson 1927, Probable inference, the law of
 * succession, and statistical inference, J Am Stat Assoc 22:209–12, 10.1080/01621459.1927.10502953). Unlike mean ± 1.96
 * standard errors it never leaves 0 to 1 and says something where nothing was seen.
 *
 * @param events - How often it was seen; whole number, 0 included, at most the total.
 * @param total - How many were looked at; whole number, at least 1.
 * @returns Lower and upper end as shares from 0 to 1.
 * @throws {RangeError} If a count is negative, not whole, or the events exceed the total.
 * @example wilson({ events: 93, total: 503 }) // => { low: 0.153, high: 0.221 }
 */
export const wilson = ({ events, total }: EventsOfTotal): Interval => {
  requireCount({ events, total });
  requireNumber("total", total, { least: 1, leastIncluded: true });
  requireNumber("events", events, { least: 0, leastIncluded: true, greatest: total, greatestIncluded: true });
  const share = events / total;
  const weight = DEVIATE ** 2 / total;
  const centre = share + weight / 2;
  const half = Math.sqrt(weight * (share * (1 - share) + weight / 4));
  const low = events === 0 ? 0 : (centre - half) / (1 + weight);
  const high = events === total ? 1 : (centre + half) / (1 + weight);
  return { low, high };
};
