import type { Item } from "../../engine/question/item.ts";
import type { Response } from "../../engine/question/response.ts";
import { cautionText } from "../../facts/cautions.ts";
import { cautionLines } from "../caution-lines.ts";
import { type Attributes, element, label, px } from "../markup.ts";

/** A drawing and the same in words; both are computed from what the question prints. */
export interface Picture {
  readonly markup: string;
  /** The picture in words, C8 included; it alone is enough to answer. */
  readonly text: string;
  /** What the learner's own part of the picture shows, where it has one. */
  readonly own?: string;
  /** A map of the knee, which may be wider than the other pictures. */
  readonly isMap?: true;
  /** Repeats the numbers of the question to scale, and is said to under it. */
  readonly hasCaption?: true;
}

/** What the learner answered, for the part of a picture that is drawn after an answer. */
export interface Own {
  /** Numbers as they were read, by ask. */
  readonly values: Readonly<Record<string, number>>;
  readonly response: Response;
}

export type DrawPicture = (item: Item, own?: Own) => Picture | null;

/** Width of a picture in the size in which it stands on a phone; no letter in it is smaller than `FONT_PX`. */
export const WIDTH_PX = 356;
export const FONT_PX = 15;
const CAUTION_PX = 46;

/** A given as the question prints it; 0 where it has none of that name. */
export const givenOf = (item: Item, key: string): number => Number(item.givens.find((given) => given.key === key)?.text ?? 0);

/** A word that the draw decided; empty where it has none of that name. */
export const aboutOf = (item: Item, key: string): string => item.about[key] ?? "";

/** Things that the learner flagged; none before an answer. */
export const flaggedBy = (own: Own | undefined): readonly string[] => (own?.response.kind === "tray" ? own.response.found : []);

/** A line of words in the size of all letters of a picture. */
export const words = (x: number, y: number, [text, attributes = {}]: readonly [string, Attributes?]): string => label(x, y, { text, "font-size": FONT_PX, ...attributes });

/** A path from its data, whose numbers are printed to a tenth of a pixel. */
export const line = (data: string, name = "t-out"): string => element("path", { class: name, d: data.replace(/-?\d+\.\d+/g, (number) => px(Number(number))) });

export const MIDDLE: Attributes = { "text-anchor": "middle" };
export const END: Attributes = { "text-anchor": "end" };

export interface Sheet {
  /** Name of the drawing among the styles. */
  readonly name: string;
  readonly widthPx?: number;
  /** Height of the drawing without the caution under it. */
  readonly heightPx: number;
}

/** One drawing with C8 under it, inside the picture. */
export const drawn = ({ name, widthPx = WIDTH_PX, heightPx }: Sheet, parts: readonly string[]): string =>
  element("svg", { class: `fig ${name}`, viewBox: `0 0 ${widthPx} ${heightPx + CAUTION_PX}`, "aria-hidden": "true", focusable: "false" }, [
    ...parts,
    cautionLines({ yPx: heightPx + 18, fontPx: FONT_PX, isNarrow: true }),
  ].join(""));

/** Sentences of a picture with C8 as the last. */
export const inWords = (...sentences: readonly string[]): string => [...sentences.filter((one) => one !== ""), cautionText("C8")].join(" ");

/** A list as it is read aloud: "A, B and C". */
export const listed = (parts: readonly string[]): string => (parts.length < 2 ? (parts[0] ?? "") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1) ?? ""}`);

/** A text cut into lines that are no longer than so many letters; a word is never cut. */
export const linesOf = (text: string, letters: number): readonly string[] => {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last === undefined || last.length + word.length + 1 > letters) lines.push(word);
    else lines.splice(-1, 1, `${last} ${word}`);
  }
  return lines;
};
