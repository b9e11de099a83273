import { requirePositive } from "../quantity/require.ts";
import { MINUTES_PER_HOUR } from "./minute-of-day.ts";

export interface InfusionByWeight {
  readonly weightKg: number;
  readonly microgramPerKgPerMin: number;
  readonly mgPerMl: number;
}

const MICROGRAMS_PER_MG = 1000;

/**
 * Rate of a pump for a dose by weight and minute. Three units change at once, so each step is named: micrograms to
 * milligrams, minutes to hours, milligrams to millilitres.
 *
 * @param weightKg - Body weight, in kg; greater than 0.
 * @param microgramPerKgPerMin - Dose of the stated sheet, in micrograms per kg and min; greater than 0.
 * @param mgPerMl - Strength in the syringe, in mg/mL; greater than 0.
 * @returns Rate in mL/h.
 * @throws {RangeError} If a value is not finite or not greater than 0.
 * @example infusionMlPerHour({ weightKg: 20, microgramPerKgPerMin: 5, mgPerMl: 2 }) // => 3
 */
export const infusionMlPerHour = ({ weightKg, microgramPerKgPerMin, mgPerMl }: InfusionByWeight): number => {
  requirePositive({ weightKg, microgramPerKgPerMin, mgPerMl });
  const mgPerMin = (weightKg * microgramPerKgPerMin) / MICROGRAMS_PER_MG;
  return (mgPerMin * MINUTES_PER_HOUR) / mgPerMl;
};
