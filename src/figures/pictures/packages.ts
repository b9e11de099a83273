import type { Item } from "../../engine/question/item.ts";
import { element } from "../markup.ts";
import { aboutOf, type DrawPicture, drawn, flaggedBy, inWords, line, listed, MIDDLE, type Own, type Picture, WIDTH_PX, words } from "./picture.ts";

const COLUMNS = 2;
const CELL_PX = WIDTH_PX / COLUMNS;
const POUCH = { left: 12, top: 30, width: CELL_PX - 24, height: 92 } as const;
const ROW_PX = 144;
const DATE_ROW_PX = 122;

interface Pouch {
  readonly id: string;
  readonly name: string;
  /** Drawn inside the pouch, from its upper left corner. */
  readonly inside: string;
  readonly text: string;
  /** The edge of the seal that stands open. */
  readonly isOpen?: boolean;
}


/** The seal: short strokes all round, none along an edge that is open. */
const seal = ({ width, height }: { readonly width: number; readonly height: number }, isOpen: boolean): string => {
  const strokes = (count: number, of: (at: number) => string): string => Array.from({ length: count }, (_, at) => of(at)).join("");
  const across = Math.floor(width / 11);
  const down = Math.floor(height / 11);
  return line([
    strokes(across, (at) => `M${6 + at * 11} 0v7`),
    strokes(across, (at) => `M${6 + at * 11} ${height}v-7`),
    strokes(down, (at) => `M0 ${6 + at * 11}h7`),
    isOpen ? "" : strokes(down, (at) => `M${width} ${6 + at * 11}h-7`),
  ].join(""), "t-thin");
};

const outline = ({ width, height }: { readonly width: number; readonly height: number }, isOpen: boolean): string =>
  line(isOpen ? `M${width} 0H0V${height}H${width}M${width} 0q14 ${height / 4} 4 ${height / 2}q-10 ${height / 4} -4 ${height / 2}` : `M0 0H${width}V${height}H0Z`);

const pouchAt = ({ name, inside, isOpen = false }: Pouch, at: number, { flagged, rowPx }: { readonly flagged: boolean; readonly rowPx: number }): string => {
  const size = { width: POUCH.width, height: rowPx - POUCH.top - 22 };
  const move = `translate(${(at % COLUMNS) * CELL_PX + POUCH.left} ${Math.floor(at / COLUMNS) * rowPx + POUCH.top})`;
  return element("g", { transform: move }, [
    words(0, -11, [name, { class: "num" }]),
    flagged ? line(`M${size.width - 16} -22l14 14m0 -14l-14 14`, "dimmine") : "",
    outline(size, isOpen),
    seal(size, isOpen),
    inside,
  ].join(""));
};

const picture = (pouches: readonly Pouch[], own: Own | undefined, { rowPx, lead, key }: { readonly rowPx: number; readonly lead: string; readonly key: readonly string[] }): Picture => {
  const found = flaggedBy(own);
  const rows = Math.ceil(pouches.length / COLUMNS);
  const drawing = pouches.map((pouch, at) => pouchAt(pouch, at, { flagged: found.includes(pouch.id), rowPx }));
  const marked = pouches.filter(({ id }) => found.includes(id)).map(({ name }) => name);
  const said = marked.length === 0 ? "" : `You put aside: ${listed(marked)}.`;
  const keyLines = key.map((text, row) => words(0, rows * rowPx + 14 + row * 20, [text, { class: "dim" }]));
  return {
    markup: drawn({ name: "small", heightPx: rows * rowPx + key.length * 20 + 2 }, [...drawing, ...keyLines]),
    text: inWords(lead, ...pouches.map(({ text }) => text), said),
    ...(said === "" ? {} : { own: said }),
  };
};

/** Packs with their use-by dates, as they are printed on them. */
export const datedPackages: DrawPicture = (item, own) => {
  if (item.kind !== "tray") return null;
  const pouches = item.things.map(({ id }): Pouch => {
    const name = `Pack ${id.toUpperCase()}`;
    const date = aboutOf(item, id);
    const inside = element("rect", { class: "t-fill", x: 14, y: 12, width: POUCH.width - 28, height: 46 }) + words(POUCH.width / 2, 30, ["use by", { ...MIDDLE, class: "dim" }]) + words(POUCH.width / 2, 51, [date, MIDDLE]);
    return { id, name, inside, text: `${name}: use by ${date}.` };
  });
  return picture(pouches, own, { rowPx: DATE_ROW_PX, lead: "Sealed packs, each with the date that is printed on it.", key: [] });
};

/** What was seen of a package, by part; a part that is not named is sound. */
interface Seen {
  readonly mark?: string;
  readonly said?: string;
  readonly isOpen?: boolean;
  readonly isUnchanged?: boolean;
  readonly isOther?: boolean;
}

const SEEN: Readonly<Record<string, Seen>> = {
  whole: {},
  dent: { mark: line("M-5 40V-5H159V97H-5V62L3 54 -1 46Z"), said: "outer box with a dent, film whole under it" },
  crease: { mark: line("M12 84L60 30 90 66 142 14", "t-thin"), said: "paper creased, without a hole" },
  sticker: { mark: element("rect", { class: "place", x: 98, y: 8, width: 46, height: 26 }) + line("M104 16h34M104 24h24", "t-thin"), said: "a sticker over a corner, film whole under it" },
  "small-tear": { mark: line("M104 16l7 7 -5 6 8 6 -4 7"), said: "a small tear in the film" },
  wet: { mark: element("path", { class: "clear", d: "M96 22q8 -12 22 -7q18 2 18 16q-2 14 -18 12q-14 6 -20 -5q-10 -6 -2 -16Z" }), said: "a dry water mark in the paper" },
  unsealed: { isOpen: true },
  pinhole: { mark: element("circle", { class: "place", cx: 118, cy: 30, r: 3 }) + line("M118 22v-8M118 38v8M110 30h-8M126 30h8M112 24l-5 -5M124 24l5 -5M112 36l-5 5M124 36l5 5"), said: "light through a pinhole in the paper" },
  unchanged: { isUnchanged: true },
  mismatch: { isOther: true },
};

const LOT = "41";
const OTHER_LOT = "47";

/** A strip that stays empty in its first colour and is striped when it has changed. */
const indicator = (isUnchanged: boolean): string =>
  element("rect", { class: "t-out", x: 14, y: 14, width: 62, height: 16 }) + (isUnchanged ? "" : line("M22 14v16M30 14v16M38 14v16M46 14v16M54 14v16M62 14v16M70 14v16"));

const seenPouch = (item: Item, { id, text }: { readonly id: string; readonly text: string }): Pouch => {
  const { mark = "", said = "film whole", isOpen = false, isUnchanged = false, isOther = false } = SEEN[aboutOf(item, id)] ?? {};
  const name = text.split(":")[0] ?? id;
  const inner = isOther ? OTHER_LOT : LOT;
  const inside = [indicator(isUnchanged), mark, words(14, 58, [`outer lot ${LOT}`]), words(14, 80, [`inner lot ${inner}`])].join("");
  const sealed = isOpen ? "seal open along one edge" : "seal closed all round";
  return { id, name, inside, isOpen, text: `${name}: ${said}, ${sealed}, indicator ${isUnchanged ? "empty" : "striped"}, outer label lot ${LOT}, inner label lot ${inner}.` };
};

/** Packages as they lie beside the trolley: barrier, seal, indicator and both labels. */
export const seenPackages: DrawPicture = (item, own) =>
  item.kind === "tray"
    ? picture(item.things.map((one) => seenPouch(item, one)), own, { rowPx: ROW_PX, lead: "Packages from above, with seal, indicator and labels.", key: ["Indicator: empty in its first colour,", "striped when it has changed."] })
    : null;

