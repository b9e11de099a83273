import { sha256Hex } from "../random/sha256.ts";
import { canonicalJson } from "./canonical.ts";
import { isTeachingList, type TeachingList } from "./list-form.ts";
import { lettersOf, parsedJson, textOfLetters } from "./text-bytes.ts";

/** What can be wrong with a link to a teaching list. */
export type LinkFault = "empty" | "not-a-list" | "too-long" | "damaged" | "newer" | "content";

const MARK = "L1";
const MOST_LETTERS = 8000;
const SUM_DIGITS = 8;

const sumOf = (letters: string): string => sha256Hex(letters).slice(0, SUM_DIGITS);

/** A teaching list as the fragment of a link: mark, the list as letters, and a check of them. */
export const linkText = (list: TeachingList): string => {
  const letters = lettersOf(canonicalJson(list));
  return `${MARK}.${letters}.${sumOf(letters)}`;
};

/** The fragment of whatever was copied: a whole address, one that a mail program broke and put in brackets, or the fragment alone. Nothing but its own signs is left. */
const fragmentIn = (text: string): string => text.slice(text.indexOf("#") + 1).replace(/%([0-9a-f]{2})/gi, (_, digits: string) => String.fromCharCode(Number.parseInt(digits, 16))).replace(/[^\w.-]/g, "");

/** Reads the link of a teaching list. Never throws for what was pasted. */
export const readLink = (text: string): TeachingList | { readonly fault: LinkFault } => {
  if (text.length > 2 * MOST_LETTERS) return { fault: "too-long" };
  const fragment = fragmentIn(text);
  if (fragment === "") return { fault: "empty" };
  const [mark = "", letters = "", sum = "", ...rest] = fragment.split(".");
  if (!/^L\d{1,3}$/.test(mark)) return { fault: "not-a-list" };
  if (mark !== MARK) return { fault: "newer" };
  if (letters.length > MOST_LETTERS) return { fault: "too-long" };
  if (rest.length > 0 || sumOf(letters) !== sum.toLowerCase()) return { fault: "damaged" };
  const list = parsedJson(textOfLetters(letters) ?? "");
  return isTeachingList(list) ? list : { fault: "content" };
};
