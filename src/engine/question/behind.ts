import type { Family } from "./family.ts";
import type { Draw } from "./family-head.ts";
import type { Item } from "./item.ts";
import type { SlipResponse } from "./kind-rules.ts";
import { rulesOf } from "./kinds/rules.ts";
import type { Response } from "./response.ts";
import { sayOf } from "./say.ts";

/** What follows from an item alone, whatever is answered: its draw, and, once asked for, its slips and its working. */
export interface Behind {
  readonly draw: Draw;
  readonly slips: () => readonly SlipResponse[];
  /** The slip that gives exactly this response, by the text of the response. */
  readonly slipBySignature: () => ReadonlyMap<string, string>;
  readonly working: () => readonly string[];
}

/** One text for a response, to tell whether two would look the same on paper. */
export const signature = (response: Response): string =>
  response.kind === "sum" && "text" in response ? response.text : JSON.stringify(response);

/** Computes once, and only if anybody asks. */
const once = <T>(compute: () => T): (() => T) => {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: compute() };
    return made.value;
  };
};

const made = (family: Family, item: Item): Behind => {
  const rules = rulesOf(family);
  const draw = rules.drawOf(item);
  const slips = once(() => rules.slips(family, draw));
  // The first slip that gives a response names it, so the last to be written here is the first of the list.
  const slipBySignature = once(() => new Map(slips().toReversed().map(({ id, response }) => [signature(response), id])));
  return { draw, slips, slipBySignature, working: once(() => family.words.en.working(sayOf(family, draw))) };
};

/** The item of last time: one item is graded, explained and graded again before the next one comes. */
let last: { readonly item: Item; readonly family: Family; readonly behind: Behind } | null = null;

/** What follows from an item for one version of its family. */
export const behind = (family: Family, item: Item): Behind => {
  if (last?.item === item && last.family === family) return last.behind;
  last = { item, family, behind: made(family, item) };
  return last.behind;
};
