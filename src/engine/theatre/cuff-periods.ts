import { requireCount } from "../quantity/require.ts";
import { clockMinutes } from "./clock-minutes.ts";
import { minuteOfDay } from "./minute-of-day.ts";

export interface CuffPeriod {
  readonly upAt: string;
  readonly downAt: string;
}

export interface CuffRest {
  /** Least rest after which the sheet starts counting anew. */
  readonly restMin: number;
}

export interface CuffTimes {
  /** Minutes under pressure in all periods together; rests are not counted. */
  readonly totalMin: number;
  /** Minutes under pressure since the last rest that was long enough. */
  readonly runningMin: number;
}

/**
 * Minutes under pressure over several inflations, by a local rest rule: a rest of at least the stated length starts the
 * count anew, a shorter one does not, and no rest is ever counted as pressure.
 *
 * @param periods - Inflations in the order of time, each from clock time to clock time (HH:MM); at least one, no two
 * times more than a day apart.
 * @param rest - `restMin`: rest of the stated sheet after which counting starts anew, in min; whole number, 0 included.
 * @returns Minutes in all, and since the last rest that was long enough.
 * @throws {RangeError} If there is no period, a time does not exist, or the rest is negative or not whole.
 * @example cuffPeriods([{ upAt: "08:10", downAt: "09:00" }, { upAt: "09:05", downAt: "09:35" }], { restMin: 10 }) // => { totalMin: 80, runningMin: 80 }
 */
export const cuffPeriods = (periods: readonly CuffPeriod[], { restMin }: CuffRest): CuffTimes => {
  requireCount({ restMin });
  if (periods.length === 0) throw new RangeError("periods must hold at least one inflation, got 0");
  let totalMin = 0;
  let runningMin = 0;
  let downBefore: string | null = null;
  for (const [index, { upAt, downAt }] of periods.entries()) {
    minuteOfDay(`periods[${index}].upAt`, upAt);
    minuteOfDay(`periods[${index}].downAt`, downAt);
    if (downBefore !== null && clockMinutes({ from: downBefore, to: upAt }) >= restMin) runningMin = 0;
    const minutes = clockMinutes({ from: upAt, to: downAt });
    totalMin += minutes;
    runningMin += minutes;
    downBefore = downAt;
  }
  return { totalMin, runningMin };
};
