import { clockAfter } from "../../engine/theatre/clock-after.ts";
import { clockMinutes } from "../../engine/theatre/clock-minutes.ts";

/** What the families of cuff and clock have in common: times as HH:MM, and the steps between them. */

const HALF_A_DAY_MIN = 720;
const DAY_MIN = 1440;
const HOUR_MIN = 60;

/** Clock time so many minutes after another. */
export const later = (from: string, afterMin: number): string => clockAfter({ from, afterMin }).clock;

/** Clock time so many minutes before another. */
export const earlier = (from: string, beforeMin: number): string => later(from, DAY_MIN - beforeMin);

/** Minutes from one time to another; negative where the other lies less than half a day before it. */
export const signedMinutes = (from: string, to: string): number => {
  const minutes = clockMinutes({ from, to });
  return minutes > HALF_A_DAY_MIN ? minutes - DAY_MIN : minutes;
};

export const hourOf = (clock: string): number => Number(clock.slice(0, 2));
export const minuteOf = (clock: string): number => Number(clock.slice(3));

/** A clock time out of an hour and minutes that may run past the hour. */
export const clockOf = (hour: number, minute: number): string => later("00:00", (((hour * HOUR_MIN + minute) % DAY_MIN) + DAY_MIN) % DAY_MIN);

/** Minutes between two times read as decimals, as if an hour had a hundred minutes. */
export const decimalMinutes = (from: string, to: string): number => 100 * ((hourOf(to) - hourOf(from) + 24) % 24) + minuteOf(to) - minuteOf(from);

/** Hours at which a case starts, some of them so late that it runs past midnight. */
export const STARTS = ["07:50", "08:20", "09:10", "10:05", "11:30", "12:25", "13:40", "14:35", "16:15", "22:40", "23:05"] as const;
