import { requirePositive } from "../quantity/require.ts";

export interface TwoBores {
  readonly fromBoreMm: number;
  readonly toBoreMm: number;
}

/**
 * How many times as much flows through one bore as through another by the ideal law, (to ÷ from)⁴: same length, drop and
 * liquid, both laminar (Hagen and Poiseuille; Bird, Stewart, Lightfoot, Transport Phenomena, section 2.3). Short tubes do
 * less: McPherson and others 2009 fitted an exponent near 2.2 to short cannulas (10.1213/ane.0b013e3181966451).
 *
 * @param fromBoreMm - Inner diameter of the tube compared with, in mm; greater than 0.
 * @param toBoreMm - Inner diameter of the tube asked about, in mm; greater than 0.
 * @returns Ratio of the flows; 1 for equal bores, below 1 for a narrower one.
 * @throws {RangeError} If a value is not finite or not greater than 0.
 * @example flowRatio({ fromBoreMm: 2, toBoreMm: 2.7 }) // => 3.32
 */
export const flowRatio = ({ fromBoreMm, toBoreMm }: TwoBores): number => {
  requirePositive({ fromBoreMm, toBoreMm });
  return (toBoreMm / fromBoreMm) ** 4;
};
