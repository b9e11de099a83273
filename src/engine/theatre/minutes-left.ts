import { requireCount, requireNumber } from "../quantity/require.ts";
import { clockAfter } from "./clock-after.ts";
import { clockMinutes } from "./clock-minutes.ts";
import { MINUTES_PER_DAY, minuteOfDay } from "./minute-of-day.ts";

export interface CuffUp {
  readonly upAt: string;
  readonly nowAt: string;
  readonly limitMin: number;
}

export interface MinutesLeft {
  readonly usedMin: number;
  /** Negative once the limit has passed. */
  readonly leftMin: number;
  readonly limitAt: string;
}

/**
 * Minutes that a printed local limit leaves a cuff, counted from inflation and not from the skin cut. The limit is the
 * question's own: published ones differ, and none of them says that the time below it is harmless.
 *
 * @param upAt - When the cuff went up, 24-hour clock as HH:MM, less than a day ago.
 * @param nowAt - Time now, written the same way.
 * @param limitMin - Limit of the stated sheet, in min; whole number, greater than 0, less than 1440.
 * @returns Minutes used, minutes left (negative past the limit) and the clock time at which the limit is reached.
 * @throws {RangeError} If a time does not exist or the limit is outside its range.
 * @example minutesLeft({ upAt: "23:20", nowAt: "00:05", limitMin: 60 }) // => { usedMin: 45, leftMin: 15, limitAt: "00:20" }
 */
export const minutesLeft = ({ upAt, nowAt, limitMin }: CuffUp): MinutesLeft => {
  minuteOfDay("upAt", upAt);
  minuteOfDay("nowAt", nowAt);
  requireCount({ limitMin });
  requireNumber("limitMin", limitMin, { least: 0, greatest: MINUTES_PER_DAY });
  const usedMin = clockMinutes({ from: upAt, to: nowAt });
  return { usedMin, leftMin: limitMin - usedMin, limitAt: clockAfter({ from: upAt, afterMin: limitMin }).clock };
};
