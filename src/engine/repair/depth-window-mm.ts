import { fromGrid, toGrid } from "../quantity/grid.ts";
import { requireLengths } from "./require-lengths.ts";

export interface NeedleLine {
  readonly entryToJunctionMm: number;
  readonly throughCapsuleMm: number;
  readonly junctionToStructureMm: number;
  readonly marginMm: number;
}

/** The needle settings that are right on one line, both ends included. */
export interface DepthWindow {
  readonly leastMm: number;
  readonly greatestMm: number;
}

/**
 * The needle settings, measured from the entry, that pass the capsule and still keep the margin in front of the
 * structure behind it, all along one line. Computed in whole millionths of a millimetre, so that a window
 * whose ends touch is a window of one depth for every value shown, never lost to the last bit of a double.
 *
 * @param entryToJunctionMm - Needle entry to meniscocapsular junction, in mm; greater than 0, at most 10⁹.
 * @param throughCapsuleMm - Needed beyond the junction to pass the capsule, in mm; greater than 0, at most 10⁹.
 * @param junctionToStructureMm - Junction to the structure on this line, in mm; greater than 0, at most 10⁹.
 * @param marginMm - To keep in front of the structure, in mm; greater than 0, at most 10⁹.
 * @returns Least and greatest setting in mm, both included, or `null` where this line has none.
 * @throws {RangeError} If a length is outside its range.
 * @example depthWindowMm({ entryToJunctionMm: 5, throughCapsuleMm: 4, junctionToStructureMm: 9, marginMm: 3 }) // => { leastMm: 9, greatestMm: 11 }
 */
export const depthWindowMm = (line: NeedleLine): DepthWindow | null => {
  const { entryToJunctionMm, throughCapsuleMm, junctionToStructureMm, marginMm } = line;
  requireLengths({ entryToJunctionMm, throughCapsuleMm, junctionToStructureMm, marginMm });
  const least = toGrid(entryToJunctionMm) + toGrid(throughCapsuleMm);
  const greatest = toGrid(entryToJunctionMm) + toGrid(junctionToStructureMm) - toGrid(marginMm);
  return least > greatest ? null : { leastMm: fromGrid(least), greatestMm: fromGrid(greatest) };
};
