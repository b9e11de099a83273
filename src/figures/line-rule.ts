import { THIN_SPACE } from "../engine/quantity/format.ts";
import type { LineFrame } from "./line-frame.ts";
import type { LineModel, LinePlaces } from "./line-model.ts";
import { LINE_WORDS } from "./line-words.ts";
import { element, label, px } from "./markup.ts";

/** The rule under the picture and the dimension lines that hang from it. */

/** Room between a line and its words, and the width of a letter as a share of its height. */
const APART_PX = 8;
const LETTER_SHARE = 0.46;
const ROW_PX = 28;
const words = LINE_WORDS.en;
export const mm = (value: number): string => `${value.toFixed(1).replace("-", "−")}${THIN_SPACE}mm`;

interface Row {
  readonly fromMm: number;
  readonly toMm: number;
  readonly text: string;
  readonly side: "left" | "right";
  readonly look: "dimline" | "dimstrong" | "dimmine";
  readonly level: number;
  readonly arrow?: "left" | "right";
}

const axis = (frame: LineFrame): string => {
  const zero = frame.x(0);
  const top = frame.heightPx + 10;
  const marks = Array.from({ length: Math.floor(frame.rightMm) + 1 }, (_, step) => {
    const even = step % 2 === 0 ? 11 : 6;
    return `M${px(frame.x(step))} ${px(top)}v${step % 10 === 0 ? 16 : even}`;
  });
  const numbers = Array.from({ length: Math.floor((frame.rightMm - 0.8) / frame.numberEveryMm) + 1 }, (_, step) =>
    label(frame.x(step * frame.numberEveryMm), top + 31, { text: String(step * frame.numberEveryMm), class: "num", "text-anchor": "middle", "font-size": frame.fontPx }));
  return [
    element("path", { class: "ax", d: `M${px(zero)} ${px(top)}H${px(frame.widthPx)}` }),
    element("path", { class: "ax", d: marks.join("") }),
    ...numbers,
    label(zero - 12, top + 31, { text: words.axis, class: "dim", "text-anchor": "end", "font-size": frame.fontPx }),
  ].join("");
};

const ended = ({ arrow }: Row, [from, to, y]: readonly [number, number, number]): string => {
  const bar = (x: number): string => `M${px(x)} ${px(y - 6)}v12`;
  const head = (x: number, way: number): string => `M${px(x - 8 * way)} ${px(y - 5)}L${px(x)} ${px(y)}L${px(x - 8 * way)} ${px(y + 5)}`;
  if (arrow === "right") return bar(from) + head(to, 1);
  return arrow === "left" ? head(from, -1) : bar(from) + bar(to);
};

const widthOf = (text: string, { fontPx }: LineFrame): number => text.length * fontPx * LETTER_SHARE;

/** Where the words of a row stand: on their own side, on the other where that is too narrow, over the line where both are. */
const placeOf = (frame: LineFrame, { side, text }: Row, [from, to]: readonly [number, number]): readonly [x: number, anchor: "start" | "end"] => {
  const wordsPx = widthOf(text, frame);
  const left = from - APART_PX >= wordsPx;
  const right = frame.widthPx - to - APART_PX >= wordsPx;
  if (left && (side === "left" || !right)) return [from - APART_PX, "end"];
  return right ? [to + APART_PX, "start"] : [0, "start"];
};

const row = (frame: LineFrame, one: Row): string => {
  const y = frame.heightPx + 68 + one.level * ROW_PX;
  const from = frame.x(one.fromMm);
  const to = Math.min(frame.x(one.toMm), frame.widthPx);
  const [x, anchor] = placeOf(frame, one, [from, to]);
  return [
    element("path", { class: one.look, d: `M${px(from)} ${px(y)}H${px(to)}${ended(one, [from, to, y])}` }),
    label(x, y + 5, { text: one.text, class: `${one.look}-t`, "text-anchor": anchor, "font-size": frame.fontPx }),
  ].join("");
};

const givenRows = (frame: LineFrame, model: LineModel, places: LinePlaces): Row[] => {
  const text = (kind: "entry" | "bundle" | "edge", value: number): string => (frame.name === "wide" ? `${words[kind]} ${mm(value)}` : mm(value));
  const bundle: Row = { fromMm: places.junctionMm, toMm: places.bundleMm, text: text("bundle", model.junctionToBundleMm), side: "right", look: "dimline", level: 0 };
  const edge: Row = { fromMm: places.freeEdgeMm, toMm: places.bundleMm, text: text("edge", model.freeEdgeToBundleMm), side: "right", look: "dimline", level: 1 };
  if (model.entryName === "free edge") return [bundle, edge];
  // To its right lies the next length of the same row, so words that have no room on the left leave the number alone.
  const entry = text("entry", model.entryToJunctionMm);
  const hasRoom = frame.x(0) - APART_PX >= widthOf(entry, frame);
  return [{ fromMm: 0, toMm: places.junctionMm, text: hasRoom ? entry : mm(model.entryToJunctionMm), side: "left", look: "dimline", level: 0 }, bundle, edge];
};

/** The learner's own rows: one for a depth, two for the ends of a window; a width is no depth and has its own. */
const ownRows = (model: LineModel): Omit<Row, "level">[] =>
  model.yoursMm.map((depth) => ({ fromMm: 0, toMm: depth, text: `${words.yours} ${mm(depth)}`, side: "left", look: "dimmine" }));

const limitRows = (frame: LineFrame, model: LineModel, places: LinePlaces): Omit<Row, "level">[] => {
  const { greatestMm, leastMm, isEmpty } = places;
  const rows: Omit<Row, "level">[] = [];
  if (model.entryName === "free edge") rows.push({ fromMm: 0, toMm: places.junctionMm, text: `${words.width} ${mm(places.junctionMm)}`, side: "left", look: "dimstrong" });
  if (greatestMm !== undefined && greatestMm > 0) rows.push({ fromMm: 0, toMm: greatestMm, text: `${words.most} ${mm(greatestMm)}`, side: "left", look: "dimstrong", ...(isEmpty ? { arrow: "right" as const } : {}) });
  if (leastMm !== undefined && greatestMm !== undefined) rows.push({ fromMm: leastMm, toMm: frame.rightMm, text: `${words.least} ${mm(leastMm)}`, side: "left", look: "dimstrong", arrow: "left" });
  if (leastMm !== undefined && greatestMm === undefined) rows.push({ fromMm: 0, toMm: leastMm, text: `${words.least} ${mm(leastMm)}`, side: "left", look: "dimstrong" });
  return rows;
};

const drops = (frame: LineFrame, rows: readonly Row[]): string => {
  const lowest = new Map<number, number>();
  for (const one of rows.filter(({ look }) => look !== "dimmine")) {
    const y = frame.heightPx + 68 + one.level * ROW_PX;
    for (const at of [one.fromMm, one.toMm]) if (at !== 0 && at < frame.rightMm) lowest.set(at, Math.max(lowest.get(at) ?? 0, y));
  }
  return [...lowest].map(([at, y]) => element("path", { class: "drop", d: `M${px(frame.x(at))} ${px(frame.needlePx)}V${px(y)}` })).join("");
};

/** The whole rule with its rows, and where it ends. */
export const rule = (frame: LineFrame, model: LineModel, places: LinePlaces): { readonly markup: string; readonly bottomPx: number } => {
  const given = givenRows(frame, model, places);
  const extra = model.answered ? [...limitRows(frame, model, places), ...ownRows(model)] : [];
  const rows = [...given, ...extra.map((one, index) => ({ ...one, level: 2 + index }))];
  const levels = 1 + Math.max(...rows.map(({ level }) => level));
  return { markup: drops(frame, rows) + axis(frame) + rows.map((one) => row(frame, one)).join(""), bottomPx: frame.heightPx + 68 + levels * ROW_PX };
};
