/** Text to bytes and letters and back, written out because the engine has neither encoder nor decoder (RFC 3629 UTF-8; RFC 4648 section 5, base64url without padding). */

import { utf8Of } from "../random/utf8.ts";

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
const VALUES: ReadonlyMap<string, number> = new Map([...LETTERS].map((letter, value) => [letter, value]));

/** How many bytes a character takes by its first one; 0 where no character begins so. */
const lengthBy = (first: number): number => {
  if (first < 0x80) return 1;
  if (first >= 0xc2 && first < 0xe0) return 2;
  if (first >= 0xe0 && first < 0xf0) return 3;
  return first >= 0xf0 && first < 0xf5 ? 4 : 0;
};

const LEAST: readonly number[] = [0, 0, 0x80, 0x800, 0x10000];

/** The character that begins at a place; null where the bytes are none. */
const codeAt = (bytes: readonly number[], at: number, length: number): number | null => {
  const [first = 0, ...rest] = bytes.slice(at, at + length);
  if (rest.length !== length - 1 || rest.some((byte) => byte >> 6 !== 2)) return null;
  const lead = length === 1 ? first : first & (0xff >> (length + 1));
  const code = rest.reduce((sum, byte) => sum * 64 + (byte & 63), lead);
  const isHalf = code >= 0xd800 && code <= 0xdfff;
  return isHalf || code > 0x10ffff || code < (LEAST[length] ?? 0) ? null : code;
};

const textOf = (bytes: readonly number[]): string | null => {
  const characters: string[] = [];
  for (let at = 0; at < bytes.length; ) {
    const length = lengthBy(bytes[at] ?? 0xff);
    const code = length === 0 ? null : codeAt(bytes, at, length);
    if (code === null) return null;
    characters.push(String.fromCodePoint(code));
    at += length;
  }
  return characters.join("");
};

/** A text as letters that survive an address, a mail and a square code. */
export const lettersOf = (text: string): string => {
  const bytes = utf8Of(text.toWellFormed());
  const letters: string[] = [];
  for (let at = 0; at < bytes.length; at += 3) {
    const [first = 0, second, third] = bytes.slice(at, at + 3);
    const whole = (first << 16) | ((second ?? 0) << 8) | (third ?? 0);
    const count = 2 + Number(second !== undefined) + Number(third !== undefined);
    for (let place = 0; place < count; place += 1) letters.push(LETTERS[(whole >> (18 - 6 * place)) & 63] ?? "");
  }
  return letters.join("");
};

/** The text of such letters; null where they are no whole text. */
export const textOfLetters = (letters: string): string | null => {
  const bytes: number[] = [];
  let held = 0;
  let bits = 0;
  for (const letter of letters) {
    const value = VALUES.get(letter);
    if (value === undefined) return null;
    held = ((held << 6) | value) & 0xfffff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes.push((held >> bits) & 0xff);
    }
  }
  // What is left over must be nothing: one text has one spelling.
  const isWhole = bits < 6 && (held & ((1 << bits) - 1)) === 0;
  return isWhole ? textOf(bytes) : null;
};

/** The JSON value of a text; undefined where it is none. */
export const parsedJson = (text: string): unknown => {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
};
