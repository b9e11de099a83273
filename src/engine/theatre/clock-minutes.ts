import { MINUTES_PER_DAY, minuteOfDay } from "./minute-of-day.ts";

export interface ClockSpan {
  readonly from: string;
  readonly to: string;
}

/**
 * Minutes from one clock time to the next time the clock shows another, across midnight where that lies between. Two
 * equal times are 0 minutes apart: a clock cannot tell a whole day from none.
 *
 * @param from - Time at the start, 24-hour clock as HH:MM, 00:00 to 23:59.
 * @param to - Time at the end, written the same way.
 * @returns Whole minutes from 0 to 1439.
 * @throws {RangeError} If a time is not written as HH:MM or does not exist.
 * @example clockMinutes({ from: "23:40", to: "00:25" }) // => 45
 */
export const clockMinutes = ({ from, to }: ClockSpan): number => {
  const start = minuteOfDay("from", from);
  const end = minuteOfDay("to", to);
  return (end - start + MINUTES_PER_DAY) % MINUTES_PER_DAY;
};
