import type { Point } from "../engine/geometry/vec2.ts";

/** How the front of the knee becomes pixels: mm to the right and up from the middle of the tibia at the joint line. */

export type Pair = readonly [number, number];

const WIDTH_PX = 356;
const PX_PER_MM = 4;
export const ORIGIN_PX = [WIDTH_PX / 2, 178] as const;

/** The pixel of a place. */
export const toPx = ([xMm, yMm]: Pair): Pair => [ORIGIN_PX[0] + xMm * PX_PER_MM, ORIGIN_PX[1] - yMm * PX_PER_MM];

/** The place under a point of the drawing, given as shares of its width. */
export const frontPointAt = (xShare: number, yShare: number): Point => ({ xMm: (xShare * WIDTH_PX - ORIGIN_PX[0]) / PX_PER_MM, yMm: (ORIGIN_PX[1] - yShare * WIDTH_PX) / PX_PER_MM });
