import { canonicalJson } from "./canonical.ts";
import type { CompletionCode } from "./completion-code.ts";
import { codesIn } from "./completion-lines.ts";
import { DASHES, hyphenated } from "./dashes.ts";
import { type HandIn, handInSum, isHandIn } from "./hand-in-form.ts";
import { BLOCK_LINE, FILE_FORM, SUM_DIGITS } from "./hand-in-text.ts";
import { isLearnerCode } from "./learner-code.ts";
import type { Route } from "./list-form.ts";
import { parsedJson, textOfLetters } from "./text-bytes.ts";

/** Why something that came back could not be read as a hand-in. */
export type HandInFault = "nothing" | "too-long" | "not-json" | "other-file" | "newer" | "form" | "cut-off" | "letters-missing" | "letters-added" | "sum" | "part-missing" | "code";

/** What was found in one file or one paste, in order. */
export type Found =
  | { readonly kind: "hand-in"; readonly route: Route; readonly handIn: HandIn; readonly sum: string; /** True where its sum does not fit, so somebody or something changed it after it was made. */ readonly isChanged: boolean }
  | { readonly kind: "part"; readonly sum: string; readonly at: number; readonly of: number; readonly letters: string }
  | { readonly kind: "code"; readonly learner: string; readonly code: CompletionCode }
  | { readonly kind: "unread"; readonly route: Route | null; readonly fault: HandInFault; readonly learner: string | null; /** Lines of a block, or parts of a printed hand-in, that are missing; 0 where it cannot be told. */ readonly missing: number };

export const MOST_CHARACTERS = 1_000_000;
const MOST_PARTS = 60;

const unread = (fault: HandInFault, { route = null, learner = null, missing = 0 }: { readonly route?: Route | null; readonly learner?: string | null; readonly missing?: number } = {}): Found => ({ kind: "unread", route, fault, learner, missing });

const learnerIn = (text: string): string | null => {
  const found = /"learner"\s{0,9}:\s{0,9}"([a-z0-9-]{3,24})"/.exec(text)?.[1];
  return isLearnerCode(found) ? found : null;
};

const fromFile = (text: string): Found => {
  const value = parsedJson(text);
  const learner = learnerIn(text);
  if (typeof value !== "object" || value === null) return unread("not-json", { route: "file", learner });
  const { form, sum, handIn } = value as Record<string, unknown>;
  if (typeof form !== "string" || !form.startsWith(FILE_FORM.slice(0, -1))) return unread("other-file", { route: "file" });
  if (form !== FILE_FORM) return unread("newer", { route: "file", learner });
  if (!isHandIn(handIn)) return unread("form", { route: "file", learner });
  const own = handInSum(handIn);
  return { kind: "hand-in", route: "file", handIn, sum: own, isChanged: sum !== own };
};

/** The hand-in of letters and the first digits of its sum. Canonical text only, so that one hand-in has one spelling. */
export const fromLetters = (letters: string, { sum, route, learner = null }: { readonly sum: string; readonly route: Route; readonly learner?: string | null }): Found => {
  const text = textOfLetters(letters);
  const value = parsedJson(text ?? "");
  if (!isHandIn(value) || canonicalJson(value) !== text) return unread("sum", { route, learner });
  const own = handInSum(value);
  return own.slice(0, SUM_DIGITS) === sum ? { kind: "hand-in", route, handIn: value, sum: own, isChanged: false } : unread("sum", { route, learner });
};

const readBlock = (squeezed: string): Found => {
  const head = /^BEGINHAND-IN(\d{1,3}):([a-z0-9-]{3,24}):(\d{1,6}):/.exec(squeezed);
  if (head === null) return unread("cut-off", { route: "block" });
  const [whole, form, learner = "", count] = head;
  if (form !== "1") return unread("newer", { route: "block", learner });
  const tail = /^([\w-]*):([0-9a-f]+):ENDHAND-IN/.exec(squeezed.slice(whole.length));
  if (tail === null) return unread("cut-off", { route: "block", learner });
  const [, letters = "", sum = ""] = tail;
  const lacking = Number(count) - letters.length;
  if (lacking > 0) return unread("letters-missing", { route: "block", learner, missing: Math.ceil(lacking / BLOCK_LINE) });
  if (lacking < 0) return unread("letters-added", { route: "block", learner });
  return fromLetters(letters, { sum, route: "block", learner });
};

/** Ways to read the dashes of a block: as what somebody put around it, which is dropped, or as hyphens that a mail program changed. */
const spellings = (piece: string): readonly string[] => [...new Set([piece.replace(/[^\w:-]/g, ""), ...hyphenated(piece)])];

/** The first spelling whose count and sum fit; at most one can. Where none does, the fault of the one with hyphens is told. */
const fromBlock = (piece: string): Found => {
  const [dropped, ...others] = spellings(piece).map(readBlock);
  const whole = [dropped, ...others].find((found) => found?.kind === "hand-in");
  return whole ?? others[0] ?? dropped ?? unread("cut-off", { route: "block" });
};

const BEGIN = new RegExp(`BEGINHAND[${DASHES}-]IN\\d`);
const NO_SIGN = new RegExp(`[^\\w:${DASHES}-]`, "g");

/** Everything but the signs of a block, and dashes, is dropped: quote marks, also as a web page spells them, breaks, spaces, soft hyphens. */
const blocksIn = (text: string): readonly string[] => {
  const squeezed = text.replace(/&(?:gt|lt|amp|nbsp);/g, "").replace(NO_SIGN, "");
  return squeezed.split(new RegExp(`(?=${BEGIN.source})`)).filter((piece) => piece.search(BEGIN) === 0);
};

const partsIn = (text: string): readonly Found[] =>
  [...text.replace(/[^\S\n]|\r/g, "").matchAll(/KH1:([0-9a-f]{12}):(\d{1,2}):(\d{1,2}):([A-Za-z0-9_-]{1,1000})/g)].flatMap(([, sum = "", at, of, letters = ""]): readonly Found[] => {
    const isIn = Number(at) >= 1 && Number(at) <= Number(of) && Number(of) <= MOST_PARTS;
    return isIn ? [{ kind: "part", sum, at: Number(at), of: Number(of), letters }] : [];
  });

/** Everything that one file or one paste holds. Never throws and never gives nothing: what cannot be read says why. */
export const readHandIns = (text: string): readonly Found[] => {
  if (text.length > MOST_CHARACTERS) return [unread("too-long")];
  const bare = text.replace(/^\uFEFF/, "").trim();
  if (bare === "") return [unread("nothing")];
  if (bare.startsWith("{")) return [fromFile(bare)];
  const blocks = blocksIn(bare).map(fromBlock);
  const parts = partsIn(bare);
  if (blocks.length + parts.length > 0) return [...blocks, ...parts];
  const codes = codesIn(bare).map(({ learner, code }): Found => (code === null ? unread("code", { route: "code", learner }) : { kind: "code", learner, code }));
  return codes.length > 0 ? codes : [unread("nothing")];
};
