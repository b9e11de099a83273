import { requirePositive } from "../quantity/require.ts";
import { usableMl } from "./usable-ml.ts";

export interface RunningBag {
  readonly bagMl: number;
  readonly reserveMl: number;
  readonly flowMlPerMin: number;
}

/**
 * Minutes until a running bag is down to its reserve, (bag − reserve) ÷ flow: the time by which the next one hangs.
 *
 * @param bagMl - Volume in the bag, in mL; greater than 0.
 * @param reserveMl - Left in it when it is changed, in mL; 0 included, less than the bag.
 * @param flowMlPerMin - Flow in mL/min; greater than 0.
 * @returns Time in minutes, unrounded; a plan rounds it down.
 * @throws {RangeError} If a value is outside its range.
 * @example bagMinutes({ bagMl: 3000, reserveMl: 300, flowMlPerMin: 90 }) // => 30
 */
export const bagMinutes = ({ bagMl, reserveMl, flowMlPerMin }: RunningBag): number => {
  requirePositive({ flowMlPerMin });
  return usableMl({ bagMl, reserveMl }) / flowMlPerMin;
};
