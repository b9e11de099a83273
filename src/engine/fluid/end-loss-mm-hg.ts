import { requireNotNegative, requirePositive } from "../quantity/require.ts";
import { requireScopeInBore } from "./require-scope-in-bore.ts";
import { ML_PER_MIN_IN_M3_PER_S, PA_PER_MMHG } from "./si.ts";

export interface FlowThroughEnds {
  readonly flowMlPerMin: number;
  readonly scopeMm: number;
  readonly boreMm: number;
  readonly densityKgPerM3: number;
}

const MM_PER_M = 1000;
/** Sharp inlet 0.5 (from memory) and exit 1.0 (Munson and others, figure 8.25), in heads of velocity. */
const END_LOSS_FACTOR = 1.5;

/**
 * Pressure lost where liquid enters and leaves a tube or a gap, 1.5 × density × speed² ÷ 2: half a head of velocity at a sharp
 * inlet and a whole one at the exit. It grows with the square of the flow, so what is nothing in a slow gap rules a fast one.
 *
 * @param flowMlPerMin - Flow in mL/min; 0 included.
 * @param scopeMm - Outer diameter of the scope, in mm; 0 (an open tube) included, less than the bore.
 * @param boreMm - Inner diameter of the bore, in mm; greater than 0.
 * @param densityKgPerM3 - Density of the liquid, in kg/m³; greater than 0.
 * @returns Pressure in mmHg; 0 where nothing flows.
 * @throws {RangeError} If a value is outside its range.
 * @example endLossMmHg({ flowMlPerMin: 100, scopeMm: 0, boreMm: 2.7, densityKgPerM3: 1004.6 }) // => 0.479
 */
export const endLossMmHg = ({ flowMlPerMin, scopeMm, boreMm, densityKgPerM3 }: FlowThroughEnds): number => {
  requireScopeInBore({ scopeMm, boreMm });
  requireNotNegative({ flowMlPerMin });
  requirePositive({ densityKgPerM3 });
  const areaM2 = (Math.PI / 4) * ((boreMm - scopeMm) / MM_PER_M) * ((boreMm + scopeMm) / MM_PER_M);
  const speedMPerS = flowMlPerMin / ML_PER_MIN_IN_M3_PER_S / areaM2;
  return (END_LOSS_FACTOR * densityKgPerM3 * speedMPerS ** 2) / 2 / PA_PER_MMHG;
};
