import { sha256Words } from "../random/sha256.ts";
import { MOST_ATTEMPTS, MOST_QUESTIONS } from "./list-form.ts";
import { packed, readSigns, unpacked, withCheck } from "./signs.ts";
import type { CodeFault } from "./words.ts";

/**
 * What twelve typed signs can say where no file, mail or camera may be used: which list, under which learner code, which
 * attempt, how many right and how many on the unsafe side. It carries no answer, so nothing of it can be marked again, and
 * whoever knows how it is made can make one.
 */
export interface CompletionCode {
  /** First fifteen bits of the list's name. */
  readonly list: number;
  readonly attempt: number;
  readonly right: number;
  readonly unsafe: number;
}

const NAMES = 32_768;
const SCORES = MOST_QUESTIONS + 1;
/** Learner and list, attempt, right, unsafe: 46 bits in ten signs, and two to check them. */
const COUNTS: readonly number[] = [NAMES, NAMES, MOST_ATTEMPTS + 1, SCORES, SCORES];
const GROUP = 4;

/** The part of a list's name that a code has room for. */
export const shortList = (listId: string): number => Number.parseInt(listId.slice(0, 4), 16) % NAMES;
const shortLearner = (learner: string): number => ((sha256Words(`completion|${learner}`)[0] ?? 0) >>> 17) % NAMES;

/** The code in three groups of four. */
export const completionCode = ({ list, attempt, right, unsafe }: CompletionCode, learner: string): string => {
  const values = packed([shortLearner(learner), list, attempt, right, unsafe].map((value, index) => [value, COUNTS[index] ?? 1] as const));
  return withCheck(values, { purpose: "completion", groupOf: GROUP });
};

/** Reads a typed completion code, which only fits together with the learner code that it was made for. Never throws. */
export const readCompletion = (typed: string, learner: string): CompletionCode | { readonly fault: CodeFault } => {
  const signs = readSigns(typed, "completion");
  if ("fault" in signs) return signs;
  const [named, list, attempt, right, unsafe] = unpacked(signs.values, COUNTS) ?? [];
  if (named !== shortLearner(learner) || list === undefined || attempt === undefined || right === undefined || unsafe === undefined) return { fault: "content" };
  return attempt >= 1 && right + unsafe <= MOST_QUESTIONS ? { list, attempt, right, unsafe } : { fault: "content" };
};
