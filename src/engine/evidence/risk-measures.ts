import { requireCount, requireNumber } from "../quantity/require.ts";
import { shareOf } from "./share.ts";

export interface TwoArms {
  readonly events: number;
  readonly total: number;
  readonly otherEvents: number;
  readonly otherTotal: number;
}

export interface RiskMeasures {
  /** Risk of the first arm minus that of the other; negative where the first does better. */
  readonly difference: number;
  readonly ratio: number | null;
  readonly oddsRatio: number | null;
  /** Patients for one event more or less; `null` where the risks are the same. */
  readonly oneIn: number | null;
}

const requireArm = (eventsName: string, events: number, total: number): void => {
  requireNumber(eventsName, events, { least: 0, leastIncluded: true, greatest: total, greatestIncluded: true });
};

/**
 * How two arms of a study differ in risk: absolute difference, risk ratio, odds ratio, and the number needed for one event
 * more or less (Laupacis, Sackett and Roberts 1988, N Engl J Med 318:1728–33, 10.1056/NEJM198806303182605; from memory).
 * Unrounded; the number needed is rounded up.
 *
 * @param events - Events in the first arm; whole number, 0 included, at most its total.
 * @param total - Patients in the first arm; whole number, at least 1.
 * @param otherEvents - Events in the other arm; whole number, 0 included, at most its total.
 * @param otherTotal - Patients in the other arm; whole number, at least 1.
 * @returns Difference of shares; ratios, `null` where their denominator is 0; patients for one event, `null` without a difference.
 * @throws {RangeError} If a count is outside its range.
 * @example riskMeasures({ events: 20, total: 100, otherEvents: 10, otherTotal: 100 }) // => { difference: 0.1, ratio: 2, oddsRatio: 2.25, oneIn: 10 }
 */
export const riskMeasures = ({ events, total, otherEvents, otherTotal }: TwoArms): RiskMeasures => {
  requireCount({ events, total, otherEvents, otherTotal });
  requireNumber("total", total, { least: 1, leastIncluded: true });
  requireNumber("otherTotal", otherTotal, { least: 1, leastIncluded: true });
  requireArm("events", events, total);
  requireArm("otherEvents", otherEvents, otherTotal);
  const across = events * otherTotal - otherEvents * total;
  return {
    difference: across / (total * otherTotal),
    ratio: shareOf(events * otherTotal, otherEvents * total),
    oddsRatio: shareOf(events * (otherTotal - otherEvents), otherEvents * (total - events)),
    oneIn: shareOf(total * otherTotal, Math.abs(across)),
  };
};
