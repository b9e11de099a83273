import { requireCount, requireNumber } from "../quantity/require.ts";
import { type Interval, wilson } from "./wilson.ts";

export interface TwoCounts {
  readonly events: number;
  readonly total: number;
  readonly otherEvents: number;
  readonly otherTotal: number;
}

/**
 * 95 % interval of the difference of two shares that were counted in two groups of people: Wilson's intervals of both,
 * squared and added (Newcombe 1998, Interval estimation for the difference between independent proportions, method 10,
 * Stat Med 17:873–90, 10.1002/(SICI)1097-0258(19980430)17:8<873::AID-SIM779>3.0.CO;2-I). It stays inside −1 to 1.
 *
 * @param events - How often it was seen in the first group; whole number, 0 included, at most the total.
 * @param total - How many were in the first group; whole number, at least 1.
 * @param otherEvents - The same in the second group.
 * @param otherTotal - The same in the second group.
 * @returns Lower and upper end of first share less second, each from −1 to 1.
 * @throws {RangeError} If a count is negative, not whole, or events exceed their total.
 * @example differenceInterval({ events: 56, total: 70, otherEvents: 48, otherTotal: 80 }) // => { low: 0.0524, high: 0.3339 }
 */
export const differenceInterval = ({ events, total, otherEvents, otherTotal }: TwoCounts): Interval => {
  requireCount({ events, total, otherEvents, otherTotal });
  requireNumber("otherTotal", otherTotal, { least: 1, leastIncluded: true });
  requireNumber("otherEvents", otherEvents, { least: 0, leastIncluded: true, greatest: otherTotal, greatestIncluded: true });
  const [first, second] = [wilson({ events, total }), wilson({ events: otherEvents, total: otherTotal })];
  const [share, otherShare] = [events / total, otherEvents / otherTotal];
  const difference = share - otherShare;
  return {
    low: difference - Math.hypot(share - first.low, second.high - otherShare),
    high: difference + Math.hypot(first.high - share, otherShare - second.low),
  };
};
