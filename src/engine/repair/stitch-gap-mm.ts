import { fromGrid, toGrid } from "../quantity/grid.ts";
import { requireCount } from "../quantity/require.ts";
import { requireLengths, requireLengthsOrZero } from "./require-lengths.ts";

/**
 * The gap between stitches that stand evenly on a tear, one at each end inside the margins.
 *
 * @param tearMm - Length of the tear, in mm; greater than 0.
 * @param endMarginMm - Left free at either end, in mm; 0 included; twice it below the tear.
 * @param stitches - How many stitches; a whole number, 2 or more.
 * @returns Distance between neighbouring stitches, in mm.
 * @throws {RangeError} If a value is outside its range.
 * @example stitchGapMm({ tearMm: 25, endMarginMm: 2.5, stitches: 5 }) // => 5
 */
export const stitchGapMm = ({ tearMm, endMarginMm, stitches }: { readonly tearMm: number; readonly endMarginMm: number; readonly stitches: number }): number => {
  requireLengths({ tearMm });
  requireLengthsOrZero({ endMarginMm });
  requireCount({ stitches });
  if (stitches < 2) throw new RangeError(`stitches must be 2 or more, got ${stitches}`);
  const spread = toGrid(tearMm) - 2 * toGrid(endMarginMm);
  if (spread <= 0) throw new RangeError(`endMarginMm must leave part of the tear between the margins, got ${endMarginMm}`);
  return fromGrid(spread) / (stitches - 1);
};
