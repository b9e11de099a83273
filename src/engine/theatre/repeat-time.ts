import { compareOnGrid } from "../quantity/grid.ts";
import { requireCount, requireNotNegative, requireNumber, requirePositive } from "../quantity/require.ts";
import { clockAfter } from "./clock-after.ts";
import { clockMinutes } from "./clock-minutes.ts";
import { MINUTES_PER_DAY, minuteOfDay } from "./minute-of-day.ts";

export interface BloodLoss {
  readonly seenAt: string;
  readonly lostMl: number;
  readonly limitMl: number;
}

export interface FirstDose {
  readonly startAt: string;
  readonly intervalMin: number;
  /** `null` where no loss was recorded. */
  readonly bloodLoss: BloodLoss | null;
}

export interface RepeatTime {
  readonly clock: string;
  readonly daysLater: number;
  readonly because: "interval" | "blood-loss";
}

const requireLoss = ({ seenAt, lostMl, limitMl }: BloodLoss): void => {
  minuteOfDay("bloodLoss.seenAt", seenAt);
  requireNotNegative({ "bloodLoss.lostMl": lostMl });
  requirePositive({ "bloodLoss.limitMl": limitMl });
};

/**
 * When an antibiotic is due again: an interval after the start of the first dose, or as soon as more blood is lost than
 * the sheet allows, whichever comes first. Sheets differ in both rules, so both are given.
 *
 * @param startAt - Start of the first dose (not the skin cut), 24-hour clock as HH:MM.
 * @param intervalMin - Interval of the stated sheet, in min; whole number, greater than 0, less than 1440.
 * @param bloodLoss - `seenAt`, clock time of the count, after the start; `lostMl`, loss up to then, in mL, 0 included;
 * `limitMl`, loss of the same sheet for this weight, in mL, greater than 0, itself still allowed; or `null`.
 * @returns Clock time, midnights passed, and which rule came first; the interval where both fall together.
 * @throws {RangeError} If a time does not exist or a value is outside its range.
 * @example repeatTime({ startAt: "21:30", intervalMin: 240, bloodLoss: null }) // => { clock: "01:30", daysLater: 1, because: "interval" }
 */
export const repeatTime = ({ startAt, intervalMin, bloodLoss }: FirstDose): RepeatTime => {
  minuteOfDay("startAt", startAt);
  requireCount({ intervalMin });
  requireNumber("intervalMin", intervalMin, { least: 0, greatest: MINUTES_PER_DAY });
  if (bloodLoss !== null) {
    requireLoss(bloodLoss);
    const afterMin = clockMinutes({ from: startAt, to: bloodLoss.seenAt });
    if (compareOnGrid(bloodLoss.lostMl, bloodLoss.limitMl) > 0 && afterMin < intervalMin) {
      return { ...clockAfter({ from: startAt, afterMin }), because: "blood-loss" };
    }
  }
  return { ...clockAfter({ from: startAt, afterMin: intervalMin }), because: "interval" };
};
