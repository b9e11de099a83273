import { requireNumber } from "../quantity/require.ts";

export interface PartsInSeries {
  readonly partsMmHgMinPerMl: readonly number[];
}

/**
 * Resistance of parts that the same liquid runs through one after the other: their sum, for the flow is the same in each and
 * the pressures lost add up. It holds where each part loses pressure in step with the flow, as laminar parts do.
 *
 * @param partsMmHgMinPerMl - Resistance of each part, mmHg lost for each mL/min; 0 included; at least one part.
 * @returns Resistance of the whole, in mmHg for each mL/min.
 * @throws {RangeError} If there is no part, or a resistance is outside its range.
 * @example seriesResistance({ partsMmHgMinPerMl: [0.2, 0.55] }) // => 0.75
 */
export const seriesResistance = ({ partsMmHgMinPerMl }: PartsInSeries): number => {
  if (partsMmHgMinPerMl.length === 0) throw new RangeError("partsMmHgMinPerMl must hold at least one part, got 0");
  partsMmHgMinPerMl.forEach((part, place) => {
    requireNumber(`partsMmHgMinPerMl[${place}]`, part, { least: 0, leastIncluded: true });
  });
  return partsMmHgMinPerMl.reduce((total, part) => total + part, 0);
};
