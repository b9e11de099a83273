import type { Says } from "./response.ts";
import type { UnreadableReason } from "../quantity/parse.ts";
import type { Span } from "../quantity/round.ts";

/** The six verdicts in the order in which they are tried: the first that fits is given. */
export const VERDICTS = ["not-recognised", "right", "unsafe-side", "unit-or-power", "rounding", "safe-side"] as const;
export type VerdictCode = (typeof VERDICTS)[number];

/** Why a response is not an answer. */
export type Reason = UnreadableReason | "part-missing" | "other-kind";
export const REASONS: readonly Reason[] = [
  "empty",
  "too-long",
  "no-number",
  "not-first",
  "two-numbers",
  "two-readings",
  "fraction",
  "foreign-unit",
  "unknown-unit",
  "part-missing",
  "other-kind",
];

/** How one ask of a sum went. */
export interface AskVerdict {
  readonly ask: string;
  readonly verdict: VerdictCode;
  /** The learner's value in the unit asked, as plain decimal text. */
  readonly value?: string;
  readonly reason?: Reason;
  /** The piece of the text that could not be read. */
  readonly found?: string;
}

export interface SourceMark {
  /** Key in `content/sources.json`. */
  readonly source: string;
  /** Ledger entry with its revision, such as `zone-width.8-10@1`. */
  readonly entry: string;
}

export interface Verdict {
  readonly verdict: VerdictCode;
  readonly reason?: Reason;
  readonly slip?: string;
  /** Share of the answer that was right, 0 to 1. */
  readonly score: number;
  /** What is accepted, by ask; empty where a `says` is right. */
  readonly accepted: Readonly<Record<string, Span>>;
  /** The right `says`, where no value is right. */
  readonly acceptedSays?: Says;
  readonly parts: readonly AskVerdict[];
  readonly working: readonly string[];
  readonly cautions: readonly string[];
  readonly sources: readonly SourceMark[];
}

/** Which part decides an answer of several parts: the whole is a slip of unit or rounding only where no part of it is plainly off. */
const DECIDES: readonly VerdictCode[] = ["not-recognised", "unsafe-side", "safe-side", "unit-or-power", "rounding"];

/** The verdict of an answer of which these parts are not right. */
export const wholeOf = (wrong: readonly VerdictCode[]): VerdictCode => DECIDES.find((code) => wrong.includes(code)) ?? "safe-side";
