import type { Picture } from "../pictures/picture.ts";

/** A figure of a module: a drawing, the same in words, and what stands under it. */
export interface PhysicalFigure extends Picture {
  readonly caption: string;
}

/** A place on a ring or a ray: degrees from straight ahead (to the right), positive upwards. */
export const polar = ([x, y]: readonly [number, number], radiusPx: number, angleDeg: number): readonly [number, number] =>
  [x + radiusPx * Math.cos((angleDeg * Math.PI) / 180), y - radiusPx * Math.sin((angleDeg * Math.PI) / 180)];
