import { requirePositive } from "../quantity/require.ts";

export interface DoseAndStrength {
  readonly doseMg: number;
  readonly mgPerMl: number;
}

/**
 * Volume that holds a dose. Unrounded, a volume is rounded down.
 *
 * @param doseMg - Dose, in mg; greater than 0.
 * @param mgPerMl - Strength of the solution, in mg/mL; greater than 0.
 * @returns Volume in mL.
 * @throws {RangeError} If a value is not finite or not greater than 0.
 * @example volumeForDoseMl({ doseMg: 44, mgPerMl: 2.5 }) // => 17.6
 */
export const volumeForDoseMl = ({ doseMg, mgPerMl }: DoseAndStrength): number => {
  requirePositive({ doseMg, mgPerMl });
  return doseMg / mgPerMl;
};
