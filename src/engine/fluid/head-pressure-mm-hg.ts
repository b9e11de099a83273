import { requirePositive } from "../quantity/require.ts";
import { GRAVITY_M_PER_S2, PA_PER_MMHG } from "./si.ts";

export interface Column {
  readonly heightCm: number;
  readonly densityKgPerM3: number;
}

const CM_PER_M = 100;

/**
 * Pressure of a standing column of liquid, density × gravity × height. It holds while nothing flows; once liquid
 * runs, part of it is lost on the way.
 *
 * @param heightCm - From the joint up to the free surface of the liquid, in cm; greater than 0.
 * @param densityKgPerM3 - Density of the liquid, in kg/m³; greater than 0.
 * @returns Pressure in mmHg.
 * @throws {RangeError} If a value is not finite or not greater than 0.
 * @example headPressureMmHg({ heightCm: 100, densityKgPerM3: 1000 }) // => 73.556
 */
export const headPressureMmHg = ({ heightCm, densityKgPerM3 }: Column): number => {
  requirePositive({ heightCm, densityKgPerM3 });
  return (densityKgPerM3 * GRAVITY_M_PER_S2 * heightCm) / CM_PER_M / PA_PER_MMHG;
};
