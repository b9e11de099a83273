import type { VerdictCode } from "../engine/question/verdict.ts";
import { wordsOf } from "../facts/words.ts";

const verdictWords = wordsOf("en").verdicts;

/** The verdict in words; "Off" where a kind has no unsafe side. */
export const verdictText = (isUnsafeKind: boolean, verdict: VerdictCode): string => (verdict === "safe-side" && !isUnsafeKind ? verdictWords.off : verdictWords[verdict]);
