import type { VerdictCode } from "../question/verdict.ts";

/** One item of a paper: every value is what re-grading found, never what the hand-in said about itself. */
export interface Mark {
  readonly slot: number;
  readonly family: string;
  readonly version: number;
  readonly module: string;
  readonly objective: string;
  readonly seed: string;
  readonly verdict: VerdictCode;
  readonly score: number;
  readonly slip: string | null;
  readonly unsafe: boolean;
  readonly try: number;
}

/** What one learner handed in for one attempt at one teaching list, marked again. */
export interface Paper {
  readonly learner: string;
  readonly place: string | null;
  readonly list: string;
  readonly attempt: number;
  readonly handedInAt: string;
  readonly marks: readonly Mark[];
}
