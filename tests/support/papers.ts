import type { VerdictCode } from "../../src/engine/question/verdict.ts";
import type { Mark, Paper } from "../../src/engine/cohort/paper.ts";

/** A mark with what a test does not care about filled in. */
export const markOf = (given: Partial<Mark> = {}): Mark => {
  const verdict: VerdictCode = given.verdict ?? "right";
  return { slot: 1, family: "family-a", version: 1, module: "M01", objective: "m01-a", seed: "1", verdict, score: verdict === "right" ? 1 : 0, slip: null, unsafe: verdict === "unsafe-side", try: 1, ...given };
};

/** A paper with what a test does not care about filled in. */
export const paperOf = (learner: string, marks: readonly Mark[], given: Partial<Paper> = {}): Paper => ({
  learner, place: null, list: "list-a", attempt: 1, handedInAt: "2026-11-20T10:00:00Z", marks, ...given,
});

/** A table of right and wrong answers as papers: rows are learners, columns are places on one sheet. */
export const papersFrom = (table: readonly (readonly number[])[]): readonly Paper[] =>
  table.map((row, person) =>
    paperOf(`learner-${person}`, row.map((score, item) => markOf({ slot: item + 1, family: `family-${item}`, objective: `m01-${item}`, verdict: score === 1 ? "right" : "safe-side" }))));
