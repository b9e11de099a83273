import type { Family } from "./family.ts";
import type { Draw } from "./family-head.ts";
import type { Item } from "./item.ts";
import type { SlipResponse } from "./kind-rules.ts";
import { rulesOf } from "./kinds/rules.ts";
import { sayOf } from "./say.ts";

/** What follows from an item alone, whatever is answered: its draw, and, once asked for, its slips and its working. */
export interface Behind {
  readonly draw: Draw;
  readonly slips: () => readonly SlipResponse[];
  readonly working: () => readonly string[];
}

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
  return { draw, slips: once(() => rules.slips(family, draw)), working: once(() => family.words.en.working(sayOf(family, draw))) };
};

/** As long as an item is held somewhere, what follows from it is made once: one item is graded, explained and graded again. */
const MADE = new WeakMap<Item, { readonly family: Family; readonly behind: Behind }>();

/** What follows from an item for one version of its family. */
export const behind = (family: Family, item: Item): Behind => {
  const before = MADE.get(item);
  if (before?.family === family) return before.behind;
  const next = made(family, item);
  MADE.set(item, { family, behind: next });
  return next;
};
