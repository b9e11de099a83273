import { toGrid } from "../quantity/grid.ts";
import { requireNumber } from "../quantity/require.ts";
import { GRID_PER_UNIT } from "../quantity/tolerance.ts";
import { requireLengths, requireLengthsOrZero } from "./require-lengths.ts";

export interface TearToStitch {
  readonly tearMm: number;
  readonly endMarginMm: number;
  readonly greatestSpacingMm: number;
}

/**
 * Fewest stitches that close a tear with one at each end, inside the end margins, and no gap above the greatest
 * spacing: as many gaps as fit, rounded up, and one stitch more than gaps. Counted in whole millionths of a
 * millimetre, so that a tear that divides evenly never gets one stitch too many.
 *
 * @param tearMm - Length of the tear, in mm; greater than 0, at most 10⁹.
 * @param endMarginMm - Left free at each end, in mm; 0 included, at most 10⁹.
 * @param greatestSpacingMm - Greatest gap between neighbours, in mm; at least a millionth, at most 10⁹.
 * @returns Whole number of stitches; 1 where the margins leave nothing between them.
 * @throws {RangeError} If a length is outside its range.
 * @example stitchCount({ tearMm: 25, endMarginMm: 2.5, greatestSpacingMm: 5 }) // => 5
 */
export const stitchCount = ({ tearMm, endMarginMm, greatestSpacingMm }: TearToStitch): number => {
  requireLengths({ tearMm, greatestSpacingMm });
  requireLengthsOrZero({ endMarginMm });
  requireNumber("greatestSpacingMm", greatestSpacingMm, { least: 1 / GRID_PER_UNIT, leastIncluded: true });
  const between = toGrid(tearMm) - 2 * toGrid(endMarginMm);
  if (between <= 0) return 1;
  const spacing = toGrid(greatestSpacingMm);
  const rest = between % spacing;
  return (between - rest) / spacing + (rest > 0 ? 2 : 1);
};
