import type { Family } from "./family.ts";
import type { Draw } from "./family-head.ts";
import type { Item } from "./item.ts";
import type { SlipResponse } from "./kind-rules.ts";
import { rulesOf } from "./kinds/rules.ts";
import type { Response } from "./response.ts";
import { sayOf } from "./say.ts";

/** What follows from an item alone, whatever is answered: its draw, and, once asked for, its slips and its working. */
interface Behind {
  readonly item: Item;
  readonly family: Family;
  readonly draw: Draw;
  slips: readonly SlipResponse[] | null;
  slipBySignature: ReadonlyMap<string, string> | null;
  working: readonly string[] | null;
}

/** One text for a response, to tell whether two would look the same on paper. */
export const signature = (response: Response): string =>
  response.kind === "sum" && "text" in response ? response.text : JSON.stringify(response);

/** The item of last time: one item is graded, explained and graded again before the next one comes. */
let last: Behind | null = null;

const behind = (family: Family, item: Item): Behind => {
  if (last !== null && last.item === item && last.family === family) return last;
  last = { item, family, draw: rulesOf(family).drawOf(item), slips: null, slipBySignature: null, working: null };
  return last;
};

/** The draw behind an item. */
export const drawBehind = (family: Family, item: Item): Draw => behind(family, item).draw;

const slipsIn = (known: Behind): readonly SlipResponse[] => {
  known.slips ??= rulesOf(known.family).slips(known.family, known.draw);
  return known.slips;
};

/** What every slip that applies to an item gives. */
export const slipsBehind = (family: Family, item: Item): readonly SlipResponse[] => slipsIn(behind(family, item));

/** The slip that gives exactly this response; the first of them where several do. */
export const slipBehind = (family: Family, item: Item, response: Response): string | undefined => {
  const known = behind(family, item);
  known.slipBySignature ??= new Map(slipsIn(known).toReversed().map((slip) => [signature(slip.response), slip.id]));
  return known.slipBySignature.get(signature(response));
};

/** The working of an item, line by line. */
export const workingBehind = (family: Family, item: Item): readonly string[] => {
  const known = behind(family, item);
  known.working ??= family.words.en.working(sayOf(family, known.draw));
  return known.working;
};
