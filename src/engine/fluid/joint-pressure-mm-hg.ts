import { compareOnGrid } from "../quantity/grid.ts";
import { requireNotNegative } from "../quantity/require.ts";

export interface InflowLine {
  readonly setMmHg: number;
  readonly flowMlPerMin: number;
  readonly resistanceMmHgMinPerMl: number;
}

/**
 * Pressure that reaches the joint when liquid runs: what is set less what is lost on the way, set − flow × resistance. With
 * the outflow shut nothing runs and the joint stands at the full set pressure; with the same flow, every part that is
 * added to the line lowers it. It holds where the line loses pressure in step with the flow.
 *
 * @param setMmHg - Pressure at the start of the line, measured at the height of the joint, in mmHg; 0 included.
 * @param flowMlPerMin - Flow through the line, in mL/min; 0 included.
 * @param resistanceMmHgMinPerMl - Resistance of the line, in mmHg lost for each mL/min; 0 included.
 * @returns Pressure in the joint, in mmHg; at least 0.
 * @throws {RangeError} If a value is outside its range, or more would be lost than is set: that flow cannot run.
 * @example jointPressureMmHg({ setMmHg: 60, flowMlPerMin: 40, resistanceMmHgMinPerMl: 0.5 }) // => 40
 */
export const jointPressureMmHg = ({ setMmHg, flowMlPerMin, resistanceMmHgMinPerMl }: InflowLine): number => {
  requireNotNegative({ setMmHg, flowMlPerMin, resistanceMmHgMinPerMl });
  const lostMmHg = flowMlPerMin * resistanceMmHgMinPerMl;
  if (compareOnGrid(lostMmHg, setMmHg) > 0) {
    throw new RangeError(`flowMlPerMin × resistanceMmHgMinPerMl must be at most setMmHg (${setMmHg}), got ${lostMmHg}`);
  }
  return Math.max(0, setMmHg - lostMmHg);
};
