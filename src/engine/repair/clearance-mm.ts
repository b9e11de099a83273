import { distanceToSegment } from "../geometry/distance-to-segment.ts";
import type { Point } from "../geometry/vec2.ts";
import { requireNotNegative, requireNumber, requirePositive } from "../quantity/require.ts";

export interface NeedleAndDisc {
  readonly entry: Point;
  readonly tip: Point;
  readonly centre: Point;
  readonly radiusMm: number;
  readonly needleRadiusMm: number;
}

const requirePoint = (name: string, { xMm, yMm }: Point): void => {
  requireNumber(`${name}.xMm`, xMm);
  requireNumber(`${name}.yMm`, yMm);
};

/**
 * Edge-to-edge distance between a straight needle and a round structure in one plane. The needle ends at its
 * tip: a structure straight ahead is measured from the tip, not from the line drawn on beyond it.
 *
 * @param entry - Where the needle enters, `{ xMm, yMm }` in mm; any sign.
 * @param tip - Where its tip lies, in mm; any sign. The same point as the entry is a needle of no length.
 * @param centre - Centre of the structure, in mm; any sign.
 * @param radiusMm - Radius of the structure, in mm; greater than 0.
 * @param needleRadiusMm - Radius of the needle, in mm; 0 included.
 * @returns Distance between the edges in mm; 0 where they touch, negative inside.
 * @throws {RangeError} If a coordinate is not finite or a radius is outside its range.
 * @example clearanceMm({ entry: { xMm: 0, yMm: 0 }, tip: { xMm: 0, yMm: 20 }, centre: { xMm: 6, yMm: 10 }, radiusMm: 2, needleRadiusMm: 0.5 }) // => 3.5
 */
export const clearanceMm = ({ entry, tip, centre, radiusMm, needleRadiusMm }: NeedleAndDisc): number => {
  requirePoint("entry", entry);
  requirePoint("tip", tip);
  requirePoint("centre", centre);
  requirePositive({ radiusMm });
  requireNotNegative({ needleRadiusMm });
  return distanceToSegment(entry, tip, centre) - radiusMm - needleRadiusMm;
};
