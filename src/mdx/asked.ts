import { draw } from "../bank/index.ts";
import type { Item } from "../engine/question/item.ts";
import { sha256Hex } from "../engine/random/sha256.ts";

/** What an author writes in the tag of a question. */
export interface AskTag {
  readonly family: string;
  /** How many of its kind the author asks for here. */
  readonly n?: number;
  /** A fixed draw, where the prose speaks of its numbers. */
  readonly seed?: number;
}

/** What the pages of a module hand down to its tags. */
export interface ModuleLocals {
  /** Name of the module in its address. */
  readonly module: string;
  readonly objectives?: Readonly<Record<string, string>>;
  /** Questions met so far. */
  asked?: number;
  /** Terms of the glossary met so far. */
  terms?: number;
}

export interface AskedHere {
  readonly item: Item;
  /** Names the place on the site: module and number. */
  readonly place: string;
  readonly number: number;
}

/** The seed of one use of a place, so that the module, its answers and the next build agree. */
export const seedAt = (place: string, use: "asked" | "worked"): string => sha256Hex(`${place}#${use}`).slice(0, 32);

/** The question that stands at the next place of a module; counts the place as taken. */
export const askedHere = (locals: ModuleLocals, { family, seed }: AskTag): AskedHere => {
  const number = (locals.asked ?? 0) + 1;
  locals.asked = number;
  const place = `${locals.module}-${number}`;
  return { item: draw(family, seed ?? seedAt(place, "asked")), place, number };
};
