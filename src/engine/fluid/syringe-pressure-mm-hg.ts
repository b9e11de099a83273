import { requireNotNegative, requirePositive } from "../quantity/require.ts";
import { PA_PER_MMHG } from "./si.ts";

export interface HandOnSyringe {
  readonly forceN: number;
  readonly barrelMm: number;
}

const MM_PER_M = 1000;

/**
 * Pressure that a thumb makes in a syringe with the way out shut: force over the area of the plunger, π r². A narrow barrel
 * makes more of the same force, far beyond any column of liquid. Friction of the plunger is left out.
 *
 * @param forceN - Force on the plunger, in newtons; 0 included.
 * @param barrelMm - Inner diameter of the barrel, in mm; greater than 0.
 * @returns Pressure in mmHg.
 * @throws {RangeError} If a value is outside its range.
 * @example syringePressureMmHg({ forceN: 20, barrelMm: 15 }) // => 849
 */
export const syringePressureMmHg = ({ forceN, barrelMm }: HandOnSyringe): number => {
  requireNotNegative({ forceN });
  requirePositive({ barrelMm });
  const radiusM = barrelMm / 2 / MM_PER_M;
  return forceN / (Math.PI * radiusM ** 2) / PA_PER_MMHG;
};
