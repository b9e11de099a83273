/**
 * The plane of the workbook: an axial slice seen from above, lengths in millimetres. The head comment of
 * the knee says where its origin lies; here x runs to the reader's right and y away from the reader, so
 * that an angle from x towards y turns anticlockwise. Nothing here depends on which knee it is.
 */
export interface Point {
  readonly xMm: number;
  readonly yMm: number;
}

/** From the first point to the second. */
export const fromTo = (first: Point, second: Point): Point => ({
  xMm: second.xMm - first.xMm,
  yMm: second.yMm - first.yMm,
});

/** A point moved along a direction by a multiple of it. */
export const movedAlong = (start: Point, direction: Point, times: number): Point => ({
  xMm: start.xMm + direction.xMm * times,
  yMm: start.yMm + direction.yMm * times,
});

/** The product that is 0 where two directions stand square to each other. */
export const dot = (first: Point, second: Point): number => first.xMm * second.xMm + first.yMm * second.yMm;

/** Length of a direction; distance where it runs between two points. */
export const lengthOf = ({ xMm, yMm }: Point): number => Math.hypot(xMm, yMm);
