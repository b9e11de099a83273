import { choiceEfficiency, choiceFigures } from "./dead-choices.ts";
import { LEAST_FOR_ITEMS } from "./figure.ts";
import type { FixedForm } from "./fixed-form.ts";
import { sum } from "./score-matrix.ts";

/** How many of the slips that an item foresees work as wrong choices. */
export interface WorkingSlips {
  readonly works: number;
  readonly of: number;
  /** Share of them that work. */
  readonly efficiency: number | null;
}

/** Judges the slips that a family foresees by who made them; null under thirty learners, and where it foresees none. */
export const workingSlips = (form: FixedForm, item: number, slips: readonly string[]): WorkingSlips | null => {
  if (slips.length === 0 || form.learners.length < LEAST_FOR_ITEMS) return null;
  const answers = form.marks.map((row, person) => ({ choice: row[item]?.slip ?? null, restPoints: sum(form.rights[person] ?? []) - (form.rights[person]?.[item] ?? 0) }));
  const figures = choiceFigures(slips, answers);
  return { works: figures.filter(({ works }) => works === true).length, of: slips.length, efficiency: choiceEfficiency(figures) };
};
