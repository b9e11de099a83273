import type { AskSpec } from "../../engine/question/family-head.ts";
import type { SourceMark } from "../../engine/question/verdict.ts";
import type { Say } from "../../engine/question/say.ts";

/** What the families of tests and odds have in common. */

export const TESTS = ["exam", "scan"] as const;

/** The test of this draw, in words. */
export const testOf = (say: Say): string => (say.about("test") === "exam" ? "an examination" : "a scan");

/** A share asked to one decimal of a per cent. */
export const askShare = (id: string): AskSpec => ({ id, unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" });

export const TEST_SAYS = {
  none: "There is no such share",
  "cannot-be-told": "Cannot be told from this",
  "ask-locally": "Ask locally",
} as const;

/** Published pairs for children: a test of a structure, sensitivity and specificity of one paper. */
export const PAIRS = {
  "kocher-mri-medial": "MRI of the medial meniscus",
  "kocher-exam-medial": "clinical examination of the medial meniscus",
  "kocher-mri-acl": "MRI of the anterior cruciate ligament",
  "kocher-exam-acl": "clinical examination of the anterior cruciate ligament",
} as const;

export type Pair = keyof typeof PAIRS;
export const PAIR_IDS = Object.keys(PAIRS) as readonly Pair[];
/** What a paper printed about a pair, as sources of one draw. */
export const sourcesOf = (pairs: readonly string[], quantities: readonly string[]): readonly SourceMark[] =>
  pairs.flatMap((pair) => quantities.map((quantity) => ({ source: "kocher-2001", entry: `${quantity}.${pair}@1` })));

export const readsOf = (quantity: string): readonly string[] => PAIR_IDS.map((pair) => `${quantity}.${pair}@1`);
