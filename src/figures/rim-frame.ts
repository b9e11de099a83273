import type { Point } from "../engine/geometry/vec2.ts";

/** How the back of a meniscus becomes pixels: mm to the right and to the front from the middle of its curve. */

const WIDTH_PX = 356;
export const PX_PER_MM = 12;
export const CENTRE_PX = [WIDTH_PX / 2, -6] as const;

/** The pixel of a place. */
export const rimToPx = ({ xMm, yMm }: Point): readonly [number, number] => [CENTRE_PX[0] + xMm * PX_PER_MM, CENTRE_PX[1] - yMm * PX_PER_MM];

/** The place under a point of the drawing, given as shares of its width. */
export const rimPointAt = (xShare: number, yShare: number): Point =>
  ({ xMm: (xShare * WIDTH_PX - CENTRE_PX[0]) / PX_PER_MM, yMm: (CENTRE_PX[1] - yShare * WIDTH_PX) / PX_PER_MM });
