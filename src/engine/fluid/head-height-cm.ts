import { requirePositive } from "../quantity/require.ts";
import { GRAVITY_M_PER_S2, PA_PER_MMHG } from "./si.ts";

export interface PressureOfColumn {
  readonly pressureMmHg: number;
  readonly densityKgPerM3: number;
}

const CM_PER_M = 100;

/**
 * How high the free surface of a liquid must stand above the joint for a wanted pressure, pressure ÷ (density × gravity):
 * the way back from `headPressureMmHg`. It holds while nothing flows.
 *
 * @param pressureMmHg - Pressure wanted in the joint, in mmHg; greater than 0.
 * @param densityKgPerM3 - Density of the liquid, in kg/m³; greater than 0.
 * @returns Height in cm, from the joint, not from the table or the floor.
 * @throws {RangeError} If a value is not finite or not greater than 0.
 * @example headHeightCm({ pressureMmHg: 60, densityKgPerM3: 1004.6 }) // => 81.2
 */
export const headHeightCm = ({ pressureMmHg, densityKgPerM3 }: PressureOfColumn): number => {
  requirePositive({ pressureMmHg, densityKgPerM3 });
  return (pressureMmHg * PA_PER_MMHG * CM_PER_M) / (densityKgPerM3 * GRAVITY_M_PER_S2);
};
