import { canonicalJson } from "./canonical.ts";
import { type HandIn, handInSum } from "./hand-in-form.ts";
import { lettersOf } from "./text-bytes.ts";

/** The three forms in which a hand-in leaves: a file, a block of text for a mail, and the texts of printed square codes. */

export const FILE_FORM = "small-knee-workbook/hand-in/1";
/** Signs of the sum that a block and a square carry. */
export const SUM_DIGITS = 12;
export const BLOCK_LINE = 64;
const PART_LETTERS = 600;

/** A file that can be read by people: the hand-in as JSON, with its sum in front. */
export const handInFile = (handIn: HandIn): string => `${JSON.stringify({ form: FILE_FORM, sum: handInSum(handIn), handIn }, null, 2)}\n`;

const inLines = (letters: string): readonly string[] => letters.match(new RegExp(`.{1,${BLOCK_LINE}}`, "g")) ?? [];

/**
 * A block of text to paste into a mail. Between its first and last line stand only letters, digits, hyphens and
 * underscores, so that quoting, wrapping and indenting change nothing that is read. The first line says how many there are.
 */
export const handInBlock = (handIn: HandIn): string => {
  const letters = lettersOf(canonicalJson(handIn));
  const sum = handInSum(handIn).slice(0, SUM_DIGITS);
  return [`BEGIN HAND-IN 1:${handIn.learner}:${letters.length}:`, ...inLines(letters), `:${sum}:END HAND-IN`].join("\n");
};

/** The texts of the square codes that hold a hand-in together, each with its number and the sum that they share. */
export const handInParts = (handIn: HandIn): readonly string[] => {
  const letters = lettersOf(canonicalJson(handIn));
  const sum = handInSum(handIn).slice(0, SUM_DIGITS);
  const chunks = letters.match(new RegExp(`.{1,${PART_LETTERS}}`, "g")) ?? [];
  return chunks.map((chunk, index) => `KH1:${sum}:${index + 1}:${chunks.length}:${chunk}`);
};
