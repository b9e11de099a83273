import { kneeFrom } from "../engine/knee/knee.ts";
import type { Item } from "../engine/question/item.ts";
import { cautionText } from "../facts/cautions.ts";
import { ADULT_CAPSULE_MM, KNEE_BANDS, kneeSizes } from "../facts/knee-model.ts";
import type { Point } from "../engine/geometry/vec2.ts";
import { type AxialFrame, axialFrame, pointAt } from "./axial-frame.ts";
import { cautionLines } from "./caution-lines.ts";
import { axialBase, axialStructures } from "./axial-tissue.ts";
import { element, label, px } from "./markup.ts";
import { isInMap } from "./places-in-picture.ts";

const SECTORS = ["in front", "in front on the right", "on the right", "behind on the right", "behind", "behind on the left", "on the left", "in front on the left"] as const;
const SECTOR_RAD = Math.PI / 4;

interface Region { readonly id: string; readonly xMm: string; readonly yMm: string }

const marks = (frame: AxialFrame, regions: readonly Region[]): string =>
  regions.map(({ id, xMm, yMm }) => {
    const [cx, cy] = frame.at({ xMm: Number(xMm), yMm: Number(yMm) });
    return element("circle", { cx, cy, r: 12, class: "place" }) + label(cx, cy + 5.5, { text: id, class: "num placenum", "text-anchor": "middle", "font-size": frame.fontPx });
  }).join("");

/** Where a place lies, in words that do not say what lies there. */
const placeInWords = ({ id, xMm, yMm }: Region): string => {
  const [x, y] = [Number(xMm), Number(yMm)];
  const sector = Math.round(((Math.atan2(x, y) + 2 * Math.PI) % (2 * Math.PI)) / SECTOR_RAD) % SECTORS.length;
  return `${id}: ${SECTORS[sector]}, ${Math.round(Math.hypot(x, y))} mm from the middle of the plateau`;
};

export interface MarksFigure {
  readonly markup: string;
  readonly text: string;
  /** The point of the model under a place of the picture, both given as shares of the picture's width. */
  readonly pointUnder: (name: "wide" | "narrow", xShare: number, yShare: number) => Point;
}

/** The figure with numbered places of a question that asks for marks, the axial plane for most; null for one whose places stand in a picture of their own, and for any other question. */
export const marksOfItem = (item: Item): MarksFigure | null => {
  if (item.kind !== "mark" || !isInMap(item)) return null;
  const band = KNEE_BANDS.find((one) => one === item.about["band"]) ?? "8-10";
  const knee = kneeFrom(kneeSizes({ band, side: item.about["side"] === "left" ? "left" : "right", capsuleMm: ADULT_CAPSULE_MM / 2 }));
  const drawing = (name: "wide" | "narrow"): string => {
    const frame = axialFrame(name);
    const caution = cautionLines({ yPx: frame.heightPx + 16, fontPx: frame.fontPx, isNarrow: name === "narrow" });
    return element("svg", { class: `fig ${name}`, viewBox: `0 0 ${px(frame.widthPx)} ${px(frame.heightPx + (name === "wide" ? 24 : 44))}`, "aria-hidden": "true", focusable: "false" }, axialBase(frame, knee) + axialStructures(frame, knee, null) + marks(frame, item.regions) + caution);
  };
  const text = `The axial plane of the model knee, seen from above, front at the top. Two menisci lie side by side; the rounder one, nearly closed, is the lateral one, and behind its rim lies a tendon. Numbered places: ${item.regions.map(placeInWords).join("; ")}. ${cautionText("C8")}`;
  return { markup: drawing("wide") + drawing("narrow"), text, pointUnder: pointAt };
};
