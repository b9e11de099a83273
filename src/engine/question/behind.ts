import type { Family } from "./family.ts";
import type { Draw } from "./family-head.ts";
import type { Item } from "./item.ts";
import type { SlipResponse } from "./kind-rules.ts";
import { rulesOf } from "./kinds/rules.ts";
import type { Response } from "./response.ts";
import { sayOf } from "./say.ts";

/** What follows from the draw of an item, whatever is answered: once asked for, its slips and its working. */
export interface Behind {
  readonly family: Family;
  readonly draw: Draw;
  slips: readonly SlipResponse[] | null;
  slipBySignature: ReadonlyMap<string, string> | null;
  working: readonly string[] | null;
}

/** One text for a response, to tell whether two would look the same on paper. */
export const signature = (response: Response): string =>
  response.kind === "sum" && "text" in response ? response.text : JSON.stringify(response);

type Values = Readonly<Record<string, unknown>>;

const areSame = (one: Values, other: Values): boolean => {
  for (const key in one) if (one[key] !== other[key]) return false;
  for (const key in other) if (!(key in one)) return false;
  return true;
};

const areSameShown = (one: readonly string[] = [], other: readonly string[] = []): boolean =>
  one.length === other.length && one.every((id, place) => id === other[place]);

/** True where two draws show the same in every value: an item that was changed since is another one. */
const isSameDraw = (one: Draw, other: Draw): boolean =>
  areSame(one.givens, other.givens) && areSame(one.about, other.about) && areSameShown(one.shown, other.shown);

/** The draw of last time: one item is graded, explained and graded again before the next one comes. */
let last: Behind | null = null;

/** Keeps the draw that an item was just made of: who draws a question mostly grades it next, and its answer and slips are known. */
export const rememberDraw = (family: Family, draw: Draw): void => {
  last = { family, draw, slips: null, slipBySignature: null, working: null };
};

/** What is known behind an item, by what the item shows now. */
export const behind = (family: Family, item: Item): Behind => {
  const draw = rulesOf(family).drawOf(item);
  if (last !== null && last.family === family && isSameDraw(last.draw, draw)) return last;
  last = { family, draw, slips: null, slipBySignature: null, working: null };
  return last;
};

/** What every slip that applies gives. */
export const slipsOf = (known: Behind): readonly SlipResponse[] => {
  known.slips ??= rulesOf(known.family).slips(known.family, known.draw);
  return known.slips;
};

/** The slip that gives exactly this response; the first of them where several do. */
export const slipGiving = (known: Behind, response: Response): string | undefined => {
  known.slipBySignature ??= new Map(slipsOf(known).toReversed().map((slip) => [signature(slip.response), slip.id]));
  return known.slipBySignature.get(signature(response));
};

/** The working, line by line. */
export const workingOf = (known: Behind): readonly string[] => {
  known.working ??= known.family.words.en.working(sayOf(known.family, known.draw));
  return known.working;
};
