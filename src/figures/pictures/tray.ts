import { amountOf, foundOf, packLineOf, packStateOf } from "../../engine/kit/pack-line.ts";
import type { Item } from "../../engine/question/item.ts";
import { element } from "../markup.ts";
import { aboutOf, type DrawPicture, drawn, flaggedBy, FONT_PX, inWords, linesOf, listed, MIDDLE, type Picture, words } from "./picture.ts";
import { thing } from "./shapes.ts";

const LETTERS = "ABCDEFGHIJKL";
/** Pieces that lie in one compartment; more of a thing lie in the next. */
const HEAP = 5;
const LAYOUTS = { wide: { columns: 4, widthPx: 616, cellPx: 118, letters: 20 }, narrow: { columns: 2, widthPx: 356, cellPx: 112, letters: 23 } } as const;

/** What lies in one compartment. */
interface Heap {
  readonly id: string;
  readonly shape: string;
  readonly count: number;
  /** Pieces at the end of the heap that are drawn broken. */
  readonly broken: number;
  readonly text: string;
}

const DEFAULT_SHAPE = "box";
/** More than so many pieces of a heap lie in two rows. */
const MOST_IN_ROW = 3;

/** A compartment with its letter, what lies in it, and the learner's mark where it was flagged. */
const compartment = (layout: (typeof LAYOUTS)[keyof typeof LAYOUTS], at: number, { heap, flagged }: { readonly heap: Heap | undefined; readonly flagged: boolean }): string => {
  const { columns, widthPx, cellPx, letters } = layout;
  const cellWidth = widthPx / columns;
  const [left, top] = [(at % columns) * cellWidth, Math.floor(at / columns) * cellPx];
  const middle = left + cellWidth / 2;
  const count = heap?.count ?? 0;
  const inRow = count > MOST_IN_ROW ? Math.ceil(count / 2) : Math.max(1, count);
  const room = (cellWidth - 56) / inRow;
  const firstRow = top + (count > MOST_IN_ROW ? 26 : 38);
  const pieces = Array.from({ length: count }, (_, piece) => {
    const shape = heap && piece >= heap.count - heap.broken ? "brokenTip" : (heap?.shape ?? DEFAULT_SHAPE);
    return thing(shape, [left + 28 + room * ((piece % inRow) + 0.5), firstRow + Math.floor(piece / inRow) * 30], Math.min(46, room - 4));
  });
  const lines = linesOf(heap?.text ?? "", letters);
  return [
    element("rect", { class: "t-thin", x: left + 1, y: top + 1, width: cellWidth - 2, height: cellPx - 2 }),
    words(left + 9, top + 21, [LETTERS[at] ?? "", { class: "num" }]),
    ...pieces,
    ...lines.map((line, row) => words(middle, top + cellPx - 12 - (lines.length - 1 - row) * (FONT_PX + 3), [line, MIDDLE])),
    flagged ? element("path", { class: "dimmine", d: `M${left + cellWidth - 24} ${top + 8}l14 14m0 -14l-14 14` }) : "",
  ].join("");
};

/** Compartments of a tray: whole rows of four, as many as its things need. A phone should not scroll past rows that hold nothing. */
const SIZES = [[4, "four"], [8, "eight"], [LETTERS.length, "twelve"]] as const;
const sizeFor = (heaps: readonly Heap[]): (typeof SIZES)[number] => SIZES.find(([count]) => heaps.length <= count) ?? SIZES[2];

const sheetOf = (name: "wide" | "narrow", heaps: readonly Heap[], found: readonly string[]): string => {
  const layout = LAYOUTS[name];
  const letters = LETTERS.slice(0, sizeFor(heaps)[0]);
  const rows = Math.ceil(letters.length / layout.columns);
  const cells = Array.from(letters, (_, at) => compartment(layout, at, { heap: heaps[at], flagged: found.includes(heaps[at]?.id ?? "") }));
  return drawn({ name: `tray ${name}`, widthPx: layout.widthPx, heightPx: rows * layout.cellPx }, cells);
};

const emptyInWords = (heaps: readonly Heap[]): string => {
  const rest = [...LETTERS.slice(heaps.length, sizeFor(heaps)[0])];
  if (rest.length === 0) return "";
  return rest.length === 1 ? `${rest[0]} is empty.` : `${rest[0]} to ${rest.at(-1) ?? ""} are empty.`;
};

const trayOf = (heaps: readonly Heap[], found: readonly string[], asked: readonly string[]): Picture => {
  const marked = heaps.flatMap(({ id }, at) => (found.includes(id) ? [LETTERS[at] ?? ""] : []));
  const elsewhere = asked.filter((id) => found.includes(id) && heaps.every((heap) => heap.id !== id)).length;
  const absent = elsewhere === 0 ? "" : `${elsewhere} of what you flagged ${elsewhere === 1 ? "lies" : "lie"} in no compartment`;
  const own = [marked.length === 0 ? "" : `You flagged what lies in ${listed(marked)}`, absent].filter((one) => one !== "").join("; ");
  return {
    markup: sheetOf("wide", heaps, found) + sheetOf("narrow", heaps, found),
    text: inWords(`A tray of ${sizeFor(heaps)[1]} compartments with letters, seen from above.`, ...heaps.map(({ text }, at) => `${LETTERS[at] ?? ""}: ${text}.`), emptyInWords(heaps), own === "" ? "" : `${own}.`),
    ...(own === "" ? {} : { own: `${own}.` }),
  };
};

/** What lies on the trolley in a question about a pack, in the order of the alphabet: nothing stands where something is missing. */
const packHeaps = (item: Item, ids: readonly string[]): readonly Heap[] =>
  ids
    .map((id) => ({ id, line: packLineOf(aboutOf(item, `${id}-line`)), state: packStateOf(item.about[id]) }))
    .filter(({ line, state }) => foundOf(line, state).count > 0)
    .map(({ id, line, state }) => ({ id, shape: line.shape, count: foundOf(line, state).count, broken: 0, text: amountOf(line, foundOf(line, state)) }))
    .sort((first, second) => (first.id < second.id ? -1 : 1));

/** The trolley of a question about a content list. */
export const packTray: DrawPicture = (item, own) => {
  if (item.kind !== "tray") return null;
  const ids = item.things.map(({ id }) => id);
  return trayOf(packHeaps(item, ids), flaggedBy(own), ids);
};

const COUNTED: readonly (readonly [id: string, shape: string, one: string, more: string])[] = [
  ["swabs", "swab", "swab", "swabs"],
  ["needles", "needle", "needle", "needles"],
  ["blades", "blade", "blade", "blades"],
  ["tips", "tip", "instrument with its tip", "instruments with their tips"],
];

/** Heaps of at most five of what lies there of one class; those that are not whole lie in the last. */
const heapsOfClass = (item: Item, [id, shape, one, more]: (typeof COUNTED)[number]): readonly Heap[] => {
  const [, , , present = 0, notWhole = 0] = aboutOf(item, id).split("|").map(Number);
  return Array.from({ length: Math.ceil(present / HEAP) }, (_, heap) => {
    const count = Math.min(HEAP, present - heap * HEAP);
    const broken = Math.max(0, Math.min(count, notWhole - Math.max(0, present - (heap + 1) * HEAP)));
    const text = `${count} ${count === 1 ? one : more}${broken === 0 ? "" : `, ${broken} broken`}`;
    return { id, shape, count, broken, text };
  });
};

/** What lies on the trolley at the closing count, class by class, in heaps of five. */
export const countTray: DrawPicture = (item) =>
  item.kind === "count" ? trayOf(COUNTED.flatMap((one) => heapsOfClass(item, one)).slice(0, LETTERS.length), [], []) : null;
