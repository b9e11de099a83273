import type { Point } from "../engine/geometry/vec2.ts";

/** Where two round pictures stand, one over the other, and where their places are. Places are shares of the radius, right and up. */

export type Spot = readonly [number, number];

const WIDTH_PX = 356;
/** The still's own drawing: its square, its middle, the radius of its disc. */
const STILL = { squarePx: 332, middlePx: 166, radiusPx: 150 } as const;
const PERCENT = 100;

export const SQUARE_PX = 300;
export const STILL_BOX = `14 6 ${STILL.squarePx} ${STILL.squarePx}`;
export const LEFT_PX = (WIDTH_PX - SQUARE_PX) / 2;
export const CAPTION_PX = 26;
export const SECOND_TOP_PX = SQUARE_PX + CAPTION_PX + 12;

const SHARE = SQUARE_PX / STILL.squarePx;
const RADIUS_PX = STILL.radiusPx * SHARE;
const MIDDLE_PX = STILL.middlePx * SHARE;

/** The pixel of a place in the picture whose top is given. */
export const inPicture = ([x, y]: Spot, topPx: number): Spot => [LEFT_PX + MIDDLE_PX + x * RADIUS_PX, topPx + MIDDLE_PX - y * RADIUS_PX];

/** The place of the second picture under a point of the drawing, both in the measure of a question's places; null beside the second picture. */
export const pointInSecond = (xShare: number, yShare: number): Point | null => {
  const [x, y] = [(xShare * WIDTH_PX - LEFT_PX - MIDDLE_PX) / RADIUS_PX, (SECOND_TOP_PX + MIDDLE_PX - yShare * WIDTH_PX) / RADIUS_PX];
  return Math.hypot(x, y) > 1 ? null : { xMm: PERCENT * x, yMm: PERCENT * y };
};
