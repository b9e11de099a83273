import { compareOnGrid } from "../quantity/grid.ts";
import { requireLengths } from "./require-lengths.ts";

export interface ZoneWidths {
  readonly junctionWidthMm: number;
  readonly anteriorWidthMm: number;
  readonly separationMm: number;
}

/**
 * Distance from the apex of a triangular zone to its junction line, along the middle of the zone. Two parallel
 * widths of the zone are known; by similar triangles the width shrinks evenly from the junction line to the apex,
 * so the distance is separation × junction width ÷ (junction width − anterior width).
 *
 * @param junctionWidthMm - Width of the zone at the meniscocapsular junction, in mm; greater than 0, at most 10⁹.
 * @param anteriorWidthMm - Width nearer to the apex, in mm; greater than 0, less than the junction width.
 * @param separationMm - Distance between the two widths, in mm; greater than 0, at most 10⁹.
 * @returns Distance from apex to junction line, in mm; always greater than the separation.
 * @throws {RangeError} If a value is outside its range, or the anterior width is not the smaller one: the sides
 * of such a zone do not meet in front.
 * @example zoneDepthMm({ junctionWidthMm: 12, anteriorWidthMm: 9, separationMm: 10 }) // => 40
 */
export const zoneDepthMm = ({ junctionWidthMm, anteriorWidthMm, separationMm }: ZoneWidths): number => {
  requireLengths({ junctionWidthMm, anteriorWidthMm, separationMm });
  if (compareOnGrid(anteriorWidthMm, junctionWidthMm) >= 0) {
    throw new RangeError(`anteriorWidthMm must be less than junctionWidthMm (${junctionWidthMm}), got ${anteriorWidthMm}`);
  }
  return (separationMm * junctionWidthMm) / (junctionWidthMm - anteriorWidthMm);
};
