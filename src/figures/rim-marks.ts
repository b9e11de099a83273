import type { MarkItem } from "../engine/question/item.ts";
import type { Point } from "../engine/geometry/vec2.ts";
import { cautionText } from "../facts/cautions.ts";
import { cautionLines } from "./caution-lines.ts";
import { element, label, px } from "./markup.ts";

/** The back of a meniscus seen from above, with numbered places along a tear: schematic, of no one's size. */

const WIDTH_PX = 356;
const HEIGHT_PX = 232;
const FONT_PX = 15;
const PX_PER_MM = 12;
const CENTRE_PX = [WIDTH_PX / 2, -6] as const;
const TO_RIM_MM = 2.6;
const TO_FREE_EDGE_MM = 6;
const BEYOND_DEG = 7;
const FIBRES_MM = [-4.6, -3.2, -1.7, 1.3] as const;
const PLACE_PX = 11;
const CROSS_SHARE = 0.84;

interface Region { readonly id: string; readonly xMm: string; readonly yMm: string }

const numeric = ({ xMm, yMm }: Region): Point => ({ xMm: Number(xMm), yMm: Number(yMm) });
const toPx = ({ xMm, yMm }: Point): readonly [number, number] => [CENTRE_PX[0] + xMm * PX_PER_MM, CENTRE_PX[1] - yMm * PX_PER_MM];

/** Beside a place, toward the free edge. */
const inward = ({ xMm, yMm }: Point): Point => ({ xMm: xMm * CROSS_SHARE, yMm: yMm * CROSS_SHARE });

/** The point of the drawing under a place of the picture, both given as shares of the picture's width. */
export const rimPointAt = (xShare: number, yShare: number): Point =>
  ({ xMm: (xShare * WIDTH_PX - CENTRE_PX[0]) / PX_PER_MM, yMm: (CENTRE_PX[1] - yShare * WIDTH_PX) / PX_PER_MM });

interface Sector {
  readonly radiusMm: number;
  readonly halfDeg: number;
}

const onCircle = (radiusMm: number, fromBackDeg: number): readonly [number, number] => {
  const angleRad = (fromBackDeg * Math.PI) / 180;
  return toPx({ xMm: radiusMm * Math.sin(angleRad), yMm: -radiusMm * Math.cos(angleRad) });
};

/** Path data along the back, from the left of the page to the right or the other way. */
const arc = (radiusMm: number, { halfDeg, begin = "M", toLeft = false }: { readonly halfDeg: number; readonly begin?: "M" | "L"; readonly toLeft?: boolean }): string => {
  const [from, to] = toLeft ? [halfDeg, -halfDeg] : [-halfDeg, halfDeg];
  const radius = px(radiusMm * PX_PER_MM);
  return `${begin}${onCircle(radiusMm, from).map(px).join(" ")}A${radius} ${radius} 0 0 ${toLeft ? 1 : 0} ${onCircle(radiusMm, to).map(px).join(" ")}`;
};

/** The part of the meniscus behind, hatched along its fibres, with the tear. */
const tissue = ({ radiusMm, halfDeg }: Sector): string => {
  const whole = halfDeg + BEYOND_DEG;
  const outline = `${arc(radiusMm + TO_RIM_MM, { halfDeg: whole })}${arc(radiusMm - TO_FREE_EDGE_MM, { halfDeg: whole, begin: "L", toLeft: true })}Z`;
  return [
    element("path", { class: "t-bone", d: outline }),
    ...FIBRES_MM.map((offMm, at) => element("path", { class: "t-fib", "stroke-dasharray": at % 2 === 0 ? "15 3" : "9 2.5", d: arc(radiusMm + offMm, { halfDeg: whole }) })),
    element("path", { class: "t-out", d: arc(radiusMm + TO_RIM_MM, { halfDeg: whole }) }),
    element("path", { class: "t-out", d: arc(radiusMm - TO_FREE_EDGE_MM, { halfDeg: whole }) }),
    element("path", { class: "tear", d: arc(radiusMm, { halfDeg }) }),
  ].join("");
};

/** A place with its number; a soft one is crossed out with a broken ring, a chosen one has a second ring. */
const place = (region: Region, { isSoft, isChosen }: { readonly isSoft: boolean; readonly isChosen: boolean }): string => {
  const [cx, cy] = toPx(numeric(region));
  const [crossX, crossY] = toPx(inward(numeric(region)));
  const ring = isChosen ? element("circle", { cx, cy, r: PLACE_PX + 2.4, class: "ownring" }) : "";
  const cross = isSoft ? element("path", { class: "t-out", d: `M${px(crossX - 8)} ${px(crossY - 6)}l16 12m0 -12l-16 12` }) : "";
  return element("circle", { cx, cy, r: PLACE_PX, class: "place" }) + label(cx, cy + 5.2, { text: region.id, class: "num placenum", "text-anchor": "middle", "font-size": FONT_PX }) + cross + ring;
};

const said = (item: MarkItem, chosen: readonly string[]): string => {
  const ids = item.regions.map(({ id }) => id);
  const soft = item.about["soft"] ?? "";
  const [first, last] = [ids[0] ?? "", ids.at(-1) ?? ""];
  return [
    `The back of the ${item.about["meniscus"]} meniscus of a ${item.about["side"]} knee, seen from above, front at the top, with the capsule at the bottom and the free edge above. A tear runs along its fibres. On it stand numbered places, from ${first} at the end toward the body to ${last} at the end toward the root; each number is the distance in millimetres along the tear from the end at the body.`,
    soft === "" ? "" : `A cross stands at the place ${soft}, where the tissue is too soft.`,
    chosen.length === 0 ? "" : `Chosen: ${chosen.join(", ")}.`,
    cautionText("C8"),
  ].filter((one) => one !== "").join(" ");
};

export interface RimFigure {
  readonly markup: string;
  readonly text: string;
}

/** The back of the meniscus with the places of a question, and rings around those chosen so far. */
export const rimMarks = (item: MarkItem, chosen: readonly string[] = []): RimFigure => {
  const [first, last] = [item.regions[0], item.regions.at(-1)];
  const from = first ? numeric(first) : { xMm: 0, yMm: -1 };
  const halfDeg = (Math.abs(Math.atan2(from.xMm, -from.yMm)) * 180) / Math.PI;
  const bodyIsRight = from.xMm > (last ? numeric(last).xMm : 0);
  const radiusMm = Math.hypot(from.xMm, from.yMm);
  const [endX, endY] = onCircle(radiusMm - TO_FREE_EDGE_MM, halfDeg + BEYOND_DEG);
  const soft = item.about["soft"] ?? "";
  const ends = bodyIsRight ? ["to the root", "to the body"] : ["to the body", "to the root"];
  const parts = [
    tissue({ radiusMm, halfDeg }),
    ...item.regions.map((region) => place(region, { isSoft: region.id === soft, isChosen: chosen.includes(region.id) })),
    label(WIDTH_PX - endX - 8, endY, { text: ends[0] ?? "", class: "dim", "text-anchor": "end", "font-size": FONT_PX }),
    label(endX + 8, endY, { text: ends[1] ?? "", class: "dim", "font-size": FONT_PX }),
    label(CENTRE_PX[0], 66, { text: "free edge", class: "dim", "text-anchor": "middle", "font-size": FONT_PX }),
    label(CENTRE_PX[0], 216, { text: "capsule, behind", class: "dim", "text-anchor": "middle", "font-size": FONT_PX }),
    cautionLines({ yPx: HEIGHT_PX + 16, fontPx: FONT_PX, isNarrow: true }),
  ];
  const markup = element("svg", { class: "fig small", viewBox: `0 0 ${WIDTH_PX} ${HEIGHT_PX + 44}`, "aria-hidden": "true", focusable: "false" }, parts.join(""));
  return { markup, text: said(item, chosen) };
};
