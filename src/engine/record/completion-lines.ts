import { type CompletionCode, readCompletion } from "./completion-code.ts";
import { withHyphens } from "./dashes.ts";
import { learnerCode } from "./learner-code.ts";

/** A completion code as it was pasted behind its learner code; null where the two do not fit together. */
export interface PastedCode {
  readonly learner: string;
  readonly code: CompletionCode | null;
}

const MOST_LINES = 400;
const BOTH = /^([\w-]{3,24})[\s,;:]{1,9}([0-9A-Za-z][0-9A-Za-z -]{10,20}[0-9A-Za-z])$/;
const LEARNER = /^([\w-]{3,24})[,;:]?$/;
/** Twelve signs in three groups: on a line of its own a code is taken only as it is printed, so that no other word is. */
const CODE = /^[0-9A-Za-z]{4}(?:[ -]?[0-9A-Za-z]{4}){2}$/;

const pasted = (named: string, typed: string): PastedCode | null => {
  const learner = learnerCode(named);
  if (learner === null) return null;
  const code = readCompletion(typed, learner);
  return { learner, code: "fault" in code ? null : code };
};

const inOneLine = (line: string): PastedCode | null => {
  const [, named = "", typed = ""] = BOTH.exec(line) ?? [];
  return pasted(named, typed);
};

/** A completion code that stands alone, with the learner code alone above it and above other codes of the same learner. */
const underLearner = (lines: readonly string[], at: number): PastedCode | null => {
  const typed = lines[at] ?? "";
  if (!CODE.test(typed)) return null;
  const [, named = ""] = LEARNER.exec(lines.slice(0, at).findLast((line) => !CODE.test(line)) ?? "") ?? [];
  return pasted(named, typed);
};

/** The completion codes of a pasted text, each behind its learner code in the same line or above; empty lines between do not matter. */
export const codesIn = (text: string): readonly PastedCode[] => {
  const lines = text.split("\n", MOST_LINES).map((line) => withHyphens(line).trim()).filter((line) => line !== "");
  return lines.flatMap((line, at) => inOneLine(line) ?? underLearner(lines, at) ?? []);
};
