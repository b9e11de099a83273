import type { Point } from "../engine/geometry/vec2.ts";
import { pathThrough } from "./markup.ts";

/** How the axial plane becomes pixels: front of the knee at the top, seen from above. */
export interface AxialFrame {
  readonly name: "wide" | "narrow";
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerMm: number;
  readonly fontPx: number;
  readonly at: (point: Point) => readonly [number, number];
  readonly path: (points: readonly Point[], closed?: boolean) => string;
}

const HALF_WIDTH_MM = 61;
const FRONT_MM = 52;
const BACK_MM = 60;
const LOOKS = { wide: { widthPx: 640, fontPx: 16 }, narrow: { widthPx: 356, fontPx: 15 } } as const;

/** One frame for all ages, so that a smaller knee is drawn smaller. */
export const axialFrame = (name: "wide" | "narrow"): AxialFrame => {
  const { widthPx, fontPx } = LOOKS[name];
  const pxPerMm = widthPx / (2 * HALF_WIDTH_MM);
  const at = ({ xMm, yMm }: Point): readonly [number, number] => [(xMm + HALF_WIDTH_MM) * pxPerMm, (FRONT_MM - yMm) * pxPerMm];
  return { name, widthPx, heightPx: (FRONT_MM + BACK_MM) * pxPerMm, pxPerMm, fontPx, at, path: (points, closed = false) => pathThrough(points.map(at), closed) };
};

/** The point of the knee under a place of the picture, both given as shares of the picture's width. */
export const pointAt = (name: "wide" | "narrow", xShare: number, yShare: number): Point => {
  const { widthPx, pxPerMm } = axialFrame(name);
  return { xMm: (xShare * widthPx) / pxPerMm - HALF_WIDTH_MM, yMm: FRONT_MM - (yShare * widthPx) / pxPerMm };
};
