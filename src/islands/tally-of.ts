import { type VerdictCode, VERDICTS } from "../engine/question/verdict.ts";
import { verdictText } from "./verdict-text.ts";

interface Given {
  readonly verdict: VerdictCode;
  /** Whether the question has an unsafe side. */
  readonly isUnsafeKind: boolean;
}

interface Tallied {
  readonly verdict: VerdictCode;
  readonly text: string;
  readonly count: number;
}

/** How often each verdict was given, under the words that stand at the questions: an answer that has no unsafe side was on no safe one. */
export const tallyOf = (given: readonly Given[]): readonly Tallied[] => {
  const tallied = new Map<string, Tallied>();
  for (const { verdict, isUnsafeKind } of given.toSorted((one, other) => VERDICTS.indexOf(one.verdict) - VERDICTS.indexOf(other.verdict))) {
    const text = verdictText(isUnsafeKind, verdict);
    tallied.set(text, { verdict, text, count: (tallied.get(text)?.count ?? 0) + 1 });
  }
  return [...tallied.values()];
};
