import { type Arc, arcPoint } from "../engine/geometry/arc.ts";
import type { Point } from "../engine/geometry/vec2.ts";
import { pathThrough, px } from "./markup.ts";

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
const HALF_TURN_DEG = 180;
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

/** A piece of path along an arc, from one of its ends to the other: two numbers and a radius instead of many points. */
export const alongArc = (frame: AxialFrame, arc: Arc, backwards = false): { readonly start: string; readonly curve: string } => {
  const [from, to] = backwards ? [arc.toDeg, arc.fromDeg] : [arc.fromDeg, arc.toDeg];
  const text = (angleDeg: number): string => frame.at(arcPoint(arc, angleDeg)).map(px).join(" ");
  const radius = px(arc.radiusMm * frame.pxPerMm);
  const isClockwise = (to < from) === (arc.outward === 1);
  return { start: text(from), curve: `A${radius} ${radius} 0 ${Math.abs(to - from) > HALF_TURN_DEG ? 1 : 0} ${isClockwise ? 1 : 0} ${text(to)}` };
};

/** Path data of a band between two arcs of the same angles. */
export const bandBetween = (frame: AxialFrame, outer: Arc, inner: Arc): string => {
  const there = alongArc(frame, outer);
  const back = alongArc(frame, inner, true);
  return `M${there.start}${there.curve}L${back.start}${back.curve}Z`;
};

/** The point of the knee under a place of the picture, both given as shares of the picture's width. */
export const pointAt = (name: "wide" | "narrow", xShare: number, yShare: number): Point => {
  const { widthPx, pxPerMm } = axialFrame(name);
  return { xMm: (xShare * widthPx) / pxPerMm - HALF_WIDTH_MM, yMm: FRONT_MM - (yShare * widthPx) / pxPerMm };
};
