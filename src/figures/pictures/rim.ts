import type { Point } from "../../engine/geometry/vec2.ts";
import type { Item } from "../../engine/question/item.ts";
import { element, px } from "../markup.ts";
import { CENTRE_PX, PX_PER_MM, rimToPx } from "../rim-frame.ts";
import { aboutOf, type DrawPicture, drawn, END, inWords, MIDDLE, type Own, WIDTH_PX, words } from "./picture.ts";

/** The back of a meniscus seen from above, with numbered places along a tear: schematic, of no one's size. */

const HEIGHT_PX = 232;
const TO_RIM_MM = 2.6;
const TO_FREE_EDGE_MM = 6;
const BEYOND_DEG = 7;
const FIBRES_MM = [-4.6, -3.2, -1.7, 1.3] as const;
const PLACE_PX = 11;
const CROSS_SHARE = 0.84;

interface Region { readonly id: string; readonly xMm: string; readonly yMm: string }

const numeric = ({ xMm, yMm }: Region): Point => ({ xMm: Number(xMm), yMm: Number(yMm) });

/** Beside a place, toward the free edge. */
const inward = ({ xMm, yMm }: Point): Point => ({ xMm: xMm * CROSS_SHARE, yMm: yMm * CROSS_SHARE });

interface Sector {
  readonly radiusMm: number;
  readonly halfDeg: number;
}

const onCircle = (radiusMm: number, fromBackDeg: number): readonly [number, number] => {
  const angleRad = (fromBackDeg * Math.PI) / 180;
  return rimToPx({ xMm: radiusMm * Math.sin(angleRad), yMm: -radiusMm * Math.cos(angleRad) });
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
  const [cx, cy] = rimToPx(numeric(region));
  const [crossX, crossY] = rimToPx(inward(numeric(region)));
  const ring = isChosen ? element("circle", { cx, cy, r: PLACE_PX + 2.4, class: "ownring" }) : "";
  const cross = isSoft ? element("path", { class: "t-out", d: `M${px(crossX - 8)} ${px(crossY - 6)}l16 12m0 -12l-16 12` }) : "";
  return element("circle", { cx, cy, r: PLACE_PX, class: "place" }) + words(cx, cy + 5.2, [region.id, { ...MIDDLE, class: "num placenum" }]) + cross + ring;
};

const regionsOf = (item: Item): readonly Region[] => (item.kind === "mark" ? item.regions : []);

/** Places that the learner's points stand in: a point is sent as the middle of its place. */
const chosenIn = (item: Item, own: Own | undefined): readonly string[] => {
  const points = own?.response.kind === "mark" ? Object.values(own.response.points).map(({ xMm, yMm }) => `${xMm} ${yMm}`) : [];
  return regionsOf(item).filter(({ xMm, yMm }) => points.includes(`${xMm} ${yMm}`)).map(({ id }) => id);
};

const said = (item: Item, chosen: readonly string[]): string => {
  const ids = regionsOf(item).map(({ id }) => id);
  const soft = aboutOf(item, "soft");
  const [first, last] = [ids[0] ?? "", ids.at(-1) ?? ""];
  return inWords(
    `The back of the ${aboutOf(item, "meniscus")} meniscus of a ${aboutOf(item, "side")} knee, seen from above, front at the top, with the capsule at the bottom and the free edge above. A tear runs along its fibres. On it stand numbered places, from ${first} at the end toward the body to ${last} at the end toward the root; each number is the distance in millimetres along the tear from the end at the body.`,
    soft === "" ? "" : `A cross stands at the place ${soft}, where the tissue is too soft.`,
    chosen.length === 0 ? "" : `You chose ${chosen.join(", ")}.`,
  );
};

/** The back of the meniscus with the places of a question, and rings around those that were chosen. */
export const backOfMeniscus: DrawPicture = (item, own) => {
  const regions = regionsOf(item);
  const chosen = chosenIn(item, own);
  const [from, to] = [regions[0], regions.at(-1)].map((region) => (region ? numeric(region) : { xMm: 0, yMm: -1 })) as [Point, Point];
  const halfDeg = (Math.abs(Math.atan2(from.xMm, -from.yMm)) * 180) / Math.PI;
  const radiusMm = Math.hypot(from.xMm, from.yMm);
  const [endX, endY] = onCircle(radiusMm - TO_FREE_EDGE_MM, halfDeg + BEYOND_DEG);
  const [left = "", right = ""] = from.xMm > to.xMm ? ["to the root", "to the body"] : ["to the body", "to the root"];
  const parts = [
    tissue({ radiusMm, halfDeg }),
    ...regions.map((region) => place(region, { isSoft: region.id === aboutOf(item, "soft"), isChosen: chosen.includes(region.id) })),
    words(WIDTH_PX - endX - 8, endY, [left, { ...END, class: "dim" }]),
    words(endX + 8, endY, [right, { class: "dim" }]),
    words(CENTRE_PX[0], 66, ["free edge", { ...MIDDLE, class: "dim" }]),
    words(CENTRE_PX[0], 216, ["capsule, behind", { ...MIDDLE, class: "dim" }]),
  ];
  return { markup: drawn({ name: "small", heightPx: HEIGHT_PX }, parts), text: said(item, chosen) };
};
