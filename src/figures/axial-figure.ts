import { arcPoint } from "../engine/geometry/arc.ts";
import type { Point } from "../engine/geometry/vec2.ts";
import { lateralSign } from "../engine/knee/bearing.ts";
import { isBundle, type Structure } from "../engine/knee/structure.ts";
import { type AxialFrame, axialFrame } from "./axial-frame.ts";
import { type AxialModel, type AxialView, axialView } from "./axial-model.ts";
import { axialGround, axialNeedle } from "./axial-needle.ts";
import { axialBase, axialStructures } from "./axial-tissue.ts";
import { AXIAL_WORDS, axialInWords } from "./axial-words.ts";
import { cautionLines } from "./caution-lines.ts";
import { element, label, pathThrough, px } from "./markup.ts";

const words = AXIAL_WORDS.en;
const SCALE_MM = 20;

/** Mean width of a letter of the label face, as a share of its size. */
const LETTER = 0.46;
const EDGE_MM = 60;

interface SideLabel {
  readonly to: Point;
  readonly yMm: number;
  readonly text: string;
  /** The side of the picture at which the text ends: +1 right, −1 left. */
  readonly edge: number;
}

/** A label that ends at the edge of the picture, with a line to what it names. */
const sideLabel = (frame: AxialFrame, { to, yMm, text, edge }: SideLabel): string => {
  const [x, y] = frame.at({ xMm: edge * EDGE_MM, yMm });
  const inner = x - edge * (text.length * LETTER * frame.fontPx + 6);
  return element("path", { class: "lead", d: pathThrough([[inner, y - 5], frame.at(to)]) }) + label(x, y, { text, "text-anchor": edge > 0 ? "end" : "start", "font-size": frame.fontPx });
};

const wideLabels = (frame: AxialFrame, view: AxialView): string => {
  const { knee } = view.model;
  const out = lateralSign(knee.side);
  const centre = (id: string): Point => knee.structures.find((one) => one.id === id)?.centre ?? { xMm: 0, yMm: 0 };
  const low = Math.min(centre("tibial-nerve").yMm - 6, -44);
  const rows: readonly SideLabel[] = [
    { to: arcPoint(knee.lateral.rim, 25), yMm: 17, text: words.lateralMeniscus, edge: out },
    { to: centre("popliteus"), yMm: centre("popliteus").yMm - 3, text: words.structures.popliteus, edge: out },
    { to: centre("peroneal-nerve"), yMm: low, text: words.structures["peroneal-nerve"], edge: out },
    { to: arcPoint(knee.medial.rim, -75), yMm: low + 17, text: words.medialMeniscus, edge: -out },
    { to: centre("artery"), yMm: low + 11, text: words.structures.artery, edge: -out },
    { to: centre("vein"), yMm: low + 5.5, text: words.structures.vein, edge: -out },
    { to: centre("tibial-nerve"), yMm: low, text: words.structures["tibial-nerve"], edge: -out },
  ];
  return rows.map((row) => sideLabel(frame, row)).join("");
};

/** Least distance between the base lines of two letters, and how far they stand from what they name. */
const LETTER_ROW_PX = 19;
const LETTER_GAP_MM = 9;

/** Letters in a column beside what they name, pushed apart where two would touch. */
const letterColumn = (frame: AxialFrame, structures: readonly Structure[], edge: number): string => {
  const outermost = Math.max(...structures.map(({ centre, radiusMm }) => edge * centre.xMm + radiusMm));
  let last = Number.NEGATIVE_INFINITY;
  return structures.toSorted((one, other) => other.centre.yMm - one.centre.yMm).map(({ id, centre, radiusMm }) => {
    const [x, cy] = frame.at({ xMm: edge * (outermost + LETTER_GAP_MM), yMm: centre.yMm });
    last = Math.max(cy + 5, last + LETTER_ROW_PX);
    const rim = frame.at({ xMm: centre.xMm + edge * radiusMm, yMm: centre.yMm });
    return element("path", { class: "lead", d: pathThrough([[x - edge * 4, last - 5], rim]) }) + label(x, last, { text: words.letters[id], "text-anchor": edge > 0 ? "start" : "end", "font-size": frame.fontPx });
  }).join("");
};

const narrowLabels = (frame: AxialFrame, { model: { knee } }: AxialView): string => {
  const out = lateralSign(knee.side);
  return letterColumn(frame, knee.structures.filter(isBundle), -out) + letterColumn(frame, knee.structures.filter((one) => !isBundle(one)), out);
};

const orientation = (frame: AxialFrame, view: AxialView): string => {
  const { knee, portal } = view.model;
  const sign = lateralSign(knee.side);
  const size = { "font-size": frame.fontPx };
  const [lx] = frame.at({ xMm: sign * EDGE_MM, yMm: 0 });
  const [mx, my] = frame.at({ xMm: -sign * EDGE_MM, yMm: 4 });
  const [fx] = frame.at(knee.tendon.centre);
  const [px0, py0] = frame.at(knee.portals[portal]);
  const isRight = px0 > fx;
  return [
    label(fx, 16, { text: frame.name === "wide" ? words.front : words.frontShort, class: "dim", "text-anchor": "middle", ...size }),
    label(lx, my, { text: words.lateral, class: "dim", "text-anchor": sign === 1 ? "end" : "start", ...size }),
    label(mx, my, { text: words.medial, class: "dim", "text-anchor": sign === 1 ? "start" : "end", ...size }),
    label(px0 + (isRight ? 12 : -12), py0 + 5, { text: words.portals[portal], "text-anchor": isRight ? "start" : "end", ...size }),
  ].join("");
};

const scaleBar = (frame: AxialFrame, y: number): string => {
  const length = SCALE_MM * frame.pxPerMm;
  const x = frame.widthPx - length - 4;
  const marks = Array.from({ length: SCALE_MM / 2 + 1 }, (_, index) => `M${px(x + index * 2 * frame.pxPerMm)} ${px(y)}v${index % 5 === 0 ? -9 : -5}`).join("");
  return element("path", { class: "ax", d: `M${px(x)} ${px(y)}h${px(length)}${marks}` }) + label(x, y - 13, { text: words.scale, class: "dim", "font-size": frame.fontPx });
};

const drawing = (name: "wide" | "narrow", view: AxialView): string => {
  const frame = axialFrame(name);
  const isWide = name === "wide";
  const height = frame.heightPx + (isWide ? 22 : 66);
  const key = isWide ? "" : label(0, frame.heightPx + 18, { text: words.lettersKey, class: "dim", "font-size": 13 });
  return element("svg", { class: `fig ${name}`, viewBox: `0 0 ${px(frame.widthPx)} ${px(height)}`, "aria-hidden": "true", focusable: "false" }, [
    axialBase(frame, view.model.knee),
    axialGround(frame, view),
    axialStructures(frame, view.model.knee, view.model.showsAngles ? view.model.marginMm : null),
    axialNeedle(frame, view),
    orientation(frame, view),
    isWide ? wideLabels(frame, view) : narrowLabels(frame, view),
    scaleBar(frame, frame.heightPx - 4),
    key,
    cautionLines({ yPx: frame.heightPx + (isWide ? 16 : 40), fontPx: frame.fontPx, isNarrow: !isWide }),
  ].join(""));
};

export interface AxialFigure {
  readonly markup: string;
  readonly text: string;
  readonly view: AxialView;
}

/** The axial plane of the model knee with a needle, for a wide and a narrow page, and the same in words. */
export const axialFigure = (model: AxialModel): AxialFigure => {
  const view = axialView(model);
  return { markup: drawing("wide", view) + drawing("narrow", view), text: axialInWords(view), view };
};
