import { accountOf } from "./account.ts";
import { type Cell, csvText, type Separator } from "./csv.ts";
import type { Paper } from "./paper.ts";

/** Form of the table: a program that reads it looks here first, and takes one quote from the front of each text. */
export const COHORT_CSV = "small-knee-workbook/cohort-table/2";

const HEAD = ["form", "list", "learner", "account", "place", "attempt", "handed in", "question", "try", "module", "objective", "family", "version", "verdict", "score", "slip", "unsafe"];

const rowsOf = (paper: Paper): readonly (readonly Cell[])[] => {
  const { list, learner, place, attempt, handedInAt } = paper;
  const who = [COHORT_CSV, list, learner, accountOf(list, learner), place, attempt, handedInAt];
  return paper.marks.map(({ slot, try: tried, module, objective, family, version, verdict, score, slip }) =>
    [...who, slot + 1, tried, module, objective, family, version, verdict, score, slip, verdict === "unsafe-side" ? "yes" : "no"]);
};

/** One line for each answer, for reading in a spreadsheet, with questions counted from 1 as on every page; what must be said with it stands in lines of its own below. */
export const cohortCsv = (papers: readonly Paper[], { notes, separator }: { readonly notes: readonly string[]; readonly separator: Separator }): string =>
  csvText([HEAD, ...papers.flatMap(rowsOf), ...notes.map((note) => ["note", note])], separator);
