import { requirePositive } from "../quantity/require.ts";

export interface DoseByWeight {
  readonly weightKg: number;
  readonly mgPerKg: number;
  readonly capMg: number;
}

/**
 * A dose by weight that never exceeds its cap. Arithmetic for practice with the limits that a question prints;
 * unrounded, a dose is rounded down.
 *
 * @param weightKg - Body weight, in kg; greater than 0.
 * @param mgPerKg - Dose of the stated sheet, in mg/kg; greater than 0.
 * @param capMg - Greatest single dose of the same sheet, in mg; greater than 0.
 * @returns Dose in mg.
 * @throws {RangeError} If a value is not finite or not greater than 0.
 * @example cappedDoseMg({ weightKg: 22, mgPerKg: 30, capMg: 2000 }) // => 660
 */
export const cappedDoseMg = ({ weightKg, mgPerKg, capMg }: DoseByWeight): number => {
  requirePositive({ weightKg, mgPerKg, capMg });
  return Math.min(weightKg * mgPerKg, capMg);
};
