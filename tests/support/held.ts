import type { Item } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";

/** How many items of a version are held for ever. */
export const HELD_ITEMS = 20;

/** What the file keeps of one item: everything that a record or a printed sheet depends on. */
export interface HeldItem {
  readonly givens: Readonly<Record<string, string>>;
  readonly about: Readonly<Record<string, string>>;
  readonly stem: string;
  readonly answer: Response;
}

export type HeldFile = Readonly<Record<string, readonly HeldItem[]>>;

/** Texts of the kind's own part: cards, things, options. */
const ownTexts = (item: Item): readonly string[] => {
  if (item.kind === "order") return item.cards.map(({ text }) => text);
  if (item.kind === "tray") return item.things.map(({ text }) => text);
  if (item.kind === "judge") return [...item.options, ...item.reasons].map(({ text }) => text);
  if (item.kind === "name") return item.attributes.flatMap(({ text, options }) => [text, ...options.map((option) => option.text)]);
  return item.kind === "count" ? item.classes.map(({ text }) => text) : [];
};

/** The part of an item that must not change within a version. */
export const heldOf = (item: Item, answer: Response): HeldItem => ({
  givens: Object.fromEntries(item.givens.map(({ key, text }) => [key, text])),
  about: item.about,
  stem: [...item.stem, item.question, ...ownTexts(item)].join(" "),
  answer,
});

/** Families whose items differ from what is held, or that hold nothing yet, with what to do about it. */
export const broken = (held: HeldFile, now: HeldFile): readonly string[] =>
  Object.entries(now).flatMap(([name, items]) => {
    const before = held[name];
    if (!before) return [`${name} is not held yet: run "npm run hold" once and commit tests/laws/held`];
    const first = items.findIndex((item, index) => JSON.stringify(item) !== JSON.stringify(before[index]));
    return first < 0 ? [] : [`${name} changed from item ${first} on: give the family a new version and keep the old one in a file of its own`];
  });
