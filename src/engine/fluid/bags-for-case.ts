import { toGrid } from "../quantity/grid.ts";
import { requirePositive } from "../quantity/require.ts";
import { usableMl } from "./usable-ml.ts";

export interface CaseToSupply {
  readonly bagMl: number;
  readonly reserveMl: number;
  readonly flowMlPerMin: number;
  readonly caseMin: number;
}

/**
 * Bags that a case needs at a steady flow, each changed at its reserve: flow × time ÷ (bag − reserve), rounded up.
 * Counted in whole millionths of a millilitre, so that a case that divides evenly never gets one bag too many.
 *
 * @param bagMl - Volume in a full bag, in mL; greater than 0.
 * @param reserveMl - Left in each when it is changed, in mL; 0 included, less than the bag.
 * @param flowMlPerMin - Flow in mL/min; greater than 0.
 * @param caseMin - Time that it runs, in minutes; greater than 0.
 * @returns Whole number of bags, at least 1.
 * @throws {RangeError} If a value is outside its range.
 * @example bagsForCase({ bagMl: 3000, reserveMl: 300, flowMlPerMin: 90, caseMin: 61 }) // => 3
 */
export const bagsForCase = ({ bagMl, reserveMl, flowMlPerMin, caseMin }: CaseToSupply): number => {
  requirePositive({ flowMlPerMin, caseMin });
  return Math.max(1, Math.ceil(toGrid(flowMlPerMin * caseMin) / toGrid(usableMl({ bagMl, reserveMl }))));
};
