import { element, px } from "../markup.ts";

/** A meniscus seen from above, front at the top, as a part of a ring: schematic, of no one's size. */
export interface Ring {
  readonly centre: readonly [number, number];
  readonly outerPx: number;
  readonly widthPx: number;
  /** 1 where the rim lies on the right of the page, −1 where it lies on the left. */
  readonly toward: 1 | -1;
}

export type Point = readonly [number, number];

const HORN_HOURS = [-0.55, 6.55] as const;
const HALF_TURN_HOURS = 6;
const DEG_AN_HOUR = 30;
const FIBRES = [0.1, 0.22, 0.34, 0.46, 0.57, 0.69, 0.8, 0.92] as const;

/** The point of an hour of the clock (12 in front, running toward the rim), so far from the middle. */
export const onClock = ({ centre, toward }: Ring, hours: number, radiusPx: number): Point => {
  const angle = (hours * DEG_AN_HOUR * Math.PI) / 180;
  return [centre[0] + toward * radiusPx * Math.sin(angle), centre[1] - radiusPx * Math.cos(angle)];
};

/** Path data along an arc of the ring from one hour to another; it begins with a move, or with a line where it goes on from another arc. */
const arc = (ring: Ring, radiusPx: number, { from, to, begin }: { readonly from: number; readonly to: number; readonly begin: "M" | "L" }): string => {
  const [[startX, startY], [endX, endY]] = [onClock(ring, from, radiusPx), onClock(ring, to, radiusPx)];
  const isLarge = Math.abs(to - from) > HALF_TURN_HOURS ? 1 : 0;
  const sweep = ring.toward * Math.sign(to - from) > 0 ? 1 : 0;
  return `${begin}${px(startX)} ${px(startY)}A${px(radiusPx)} ${px(radiusPx)} 0 ${isLarge} ${sweep} ${px(endX)} ${px(endY)}`;
};

/** Path data along the fibres, at a share of the width counted from the rim. */
export const along = (ring: Ring, share: number, [from, to]: readonly [number, number] = HORN_HOURS): string =>
  arc(ring, ring.outerPx - share * ring.widthPx, { from, to, begin: "M" });

/** The meniscus itself, hatched along its fibres. */
export const meniscus = (ring: Ring): string => {
  const [front, back] = HORN_HOURS;
  const outline = `${along(ring, 0)}${arc(ring, ring.outerPx - ring.widthPx, { from: back, to: front, begin: "L" })}Z`;
  const fibre = (share: number, at: number): string => element("path", { class: "t-fib", "stroke-dasharray": at % 2 === 0 ? "15 3" : "9 2.5", d: along(ring, share) });
  return element("path", { class: "t-plateau", d: outline }) + FIBRES.map(fibre).join("");
};

/** On which side of the page the rim lies: seen from above with the front at the top, a right knee has its lateral side on the right. */
export const rimSide = (meniscusName: string, side: string): 1 | -1 => ((meniscusName === "lateral") === (side === "right") ? 1 : -1);
