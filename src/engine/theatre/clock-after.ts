import { requireCount } from "../quantity/require.ts";
import { MINUTES_PER_DAY, MINUTES_PER_HOUR, minuteOfDay } from "./minute-of-day.ts";

export interface ClockStart {
  readonly from: string;
  readonly afterMin: number;
}

export interface ClockTime {
  /** 24-hour clock as HH:MM. */
  readonly clock: string;
  /** Midnights passed on the way. */
  readonly daysLater: number;
}

const twoDigits = (value: number): string => String(value).padStart(2, "0");

/**
 * What the clock shows some minutes later, and how many midnights lie between.
 *
 * @param from - Time at the start, 24-hour clock as HH:MM, 00:00 to 23:59.
 * @param afterMin - Minutes to add, in min; whole number, 0 included.
 * @returns Clock time and midnights passed.
 * @throws {RangeError} If the time does not exist or the minutes are negative or not whole.
 * @example clockAfter({ from: "22:50", afterMin: 95 }) // => { clock: "00:25", daysLater: 1 }
 */
export const clockAfter = ({ from, afterMin }: ClockStart): ClockTime => {
  const start = minuteOfDay("from", from);
  requireCount({ afterMin });
  const total = start + afterMin;
  const minute = total % MINUTES_PER_DAY;
  const clock = `${twoDigits(Math.floor(minute / MINUTES_PER_HOUR))}:${twoDigits(minute % MINUTES_PER_HOUR)}`;
  return { clock, daysLater: Math.floor(total / MINUTES_PER_DAY) };
};
