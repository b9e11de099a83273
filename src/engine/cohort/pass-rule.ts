import type { PassRule } from "../record/list-form.ts";
import type { Sheet } from "../record/sheet-number.ts";
import type { Paper } from "./paper.ts";

/** What keeps a sheet from passing; an empty list where nothing does. */
export interface RuleMiss {
  readonly why: "percent" | "must" | "unsafe";
  /** Places on the sheet, from 0; for `percent` those that are not right. */
  readonly slots: readonly number[];
}

export interface RuleReading {
  readonly passes: boolean;
  readonly right: number;
  readonly questions: number;
  readonly misses: readonly RuleMiss[];
}

const PERCENT = 100;

/** Reads the rule of a list against one marked sheet, in whole numbers: a share that is met exactly passes. `must` names families. */
export const readRule = ({ rightPercent, noUnsafe }: PassRule, must: readonly string[], { sheet, paper }: { readonly sheet: Sheet; readonly paper: Paper }): RuleReading => {
  const rightSlots = new Set(paper.marks.filter(({ verdict }) => verdict === "right").map(({ slot }) => slot));
  const open = sheet.items.flatMap((_, slot) => (rightSlots.has(slot) ? [] : [slot]));
  const critical = open.filter((slot) => must.includes(sheet.items[slot]?.family ?? ""));
  const unsafe = paper.marks.filter((mark) => mark.unsafe).map(({ slot }) => slot);
  const questions = sheet.items.length;
  const misses: RuleMiss[] = [];
  if (rightSlots.size * PERCENT < rightPercent * questions) misses.push({ why: "percent", slots: open });
  if (critical.length > 0) misses.push({ why: "must", slots: critical });
  if (noUnsafe && unsafe.length > 0) misses.push({ why: "unsafe", slots: unsafe });
  return { passes: misses.length === 0, right: rightSlots.size, questions, misses };
};
