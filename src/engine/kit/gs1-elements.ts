import { daysInMonth } from "./days-in-month.ts";
import { gs1CheckDigit } from "./gs1-check-digit.ts";

/** Device identifier, production date, expiry, lot, serial number. */
export type ApplicationIdentifier = "01" | "10" | "11" | "17" | "21";

export interface Gs1Element {
  readonly ai: ApplicationIdentifier;
  readonly value: string;
}

/** Why a string was not read; `at` is the place in the string where the element starts. */
export type Gs1Error = "empty" | "unknown-identifier" | "wrong-length" | "wrong-character" | "check-digit" | "no-such-day" | "repeated";

export type Gs1Reading =
  | { readonly elements: readonly Gs1Element[] }
  | { readonly error: Gs1Error; readonly at: number };

interface Raw extends Gs1Element {
  readonly at: number;
}

interface Broken {
  readonly error: Gs1Error;
  readonly at: number;
}

interface Rule {
  /** Characters that are always there; a variable value ends at a separator or at the end. */
  readonly fixed: number | null;
  readonly faultOf: (value: string) => Gs1Error | null;
}

const SEPARATOR = "\u001d";
const GREATEST_LENGTH = 20;
/** The 82 characters of a variable value (GS1 General Specifications, character set 82; from memory). */
const TEXT = /^[!"%&'()*+,\-./0-9:;<=>?A-Z_a-z]*$/;
/** Two digits of a year are taken in this century for the length of February; every fourth year is a leap year there. */
const CENTURY = 2000;

const keyFault = (value: string): Gs1Error | null => {
  if (!/^\d+$/.test(value)) return "wrong-character";
  return gs1CheckDigit(value.slice(0, -1)) === Number(value.at(-1)) ? null : "check-digit";
};

const dateFault = (value: string): Gs1Error | null => {
  if (!/^\d+$/.test(value)) return "wrong-character";
  const [year = 0, month = 0, day = 0] = [0, 2, 4].map((start) => Number(value.slice(start, start + 2)));
  const days = daysInMonth(CENTURY + year, month);
  return days > 0 && day <= days ? null : "no-such-day";
};

const textFault = (value: string): Gs1Error | null => (TEXT.test(value) ? null : "wrong-character");

const RULES: Readonly<Record<ApplicationIdentifier, Rule>> = {
  "01": { fixed: 14, faultOf: keyFault },
  "10": { fixed: null, faultOf: textFault },
  "11": { fixed: 6, faultOf: dateFault },
  "17": { fixed: 6, faultOf: dateFault },
  "21": { fixed: null, faultOf: textFault },
};

const isKnown = (text: string): text is ApplicationIdentifier => Object.hasOwn(RULES, text);

/** The printed form: digits in parentheses are always an identifier, so that no unknown one is read as part of a lot. */
const splitPrinted = (text: string): readonly Raw[] | Broken => {
  const marks = [...text.matchAll(/\((\d{2,4})\)/g)];
  if (marks[0]?.index !== 0) return { error: "unknown-identifier", at: 0 };
  const parts: Raw[] = [];
  for (const [order, { index, 0: mark, 1: ai = "" }] of marks.entries()) {
    if (!isKnown(ai)) return { error: "unknown-identifier", at: index };
    parts.push({ ai, at: index, value: text.slice(index + mark.length, marks[order + 1]?.index) });
  }
  return parts;
};

/** The stored form: a fixed value ends by its length, a variable one at a separator; one more separator does no harm. */
const splitStored = (text: string): readonly Raw[] | Broken => {
  const parts: Raw[] = [];
  let at = text.startsWith(SEPARATOR) ? 1 : 0;
  while (at < text.length) {
    const ai = text.slice(at, at + 2);
    if (!isKnown(ai)) return { error: "unknown-identifier", at };
    const start = at + ai.length;
    const separator = text.indexOf(SEPARATOR, start);
    const next = separator < 0 ? text.length : separator;
    const { fixed } = RULES[ai];
    const end = fixed === null ? next : Math.min(start + fixed, next);
    parts.push({ ai, at, value: text.slice(start, end) });
    at = text[end] === SEPARATOR ? end + 1 : end;
  }
  return parts.length === 0 ? { error: "empty", at: 0 } : parts;
};

const faultOf = ({ ai, value }: Raw, before: readonly Raw[]): Gs1Error | null => {
  const { fixed, faultOf: valueFault } = RULES[ai];
  if (before.some((other) => other.ai === ai)) return "repeated";
  if (fixed === null ? value.length === 0 || value.length > GREATEST_LENGTH : value.length !== fixed) return "wrong-length";
  return valueFault(value);
};

/**
 * Elements of a GS1 string as a device label carries it, for the identifiers (01) device, (10) lot, (11) production date,
 * (17) expiry and (21) serial number, printed with parentheses or stored with separators (FDA 2017, UDI formats by issuing
 * agency, version 1.3; GS1 General Specifications). Lengths, characters, check digit and dates are checked; day 00 of a date
 * stands for the whole month and is left as it is.
 *
 * @param text - The string: parentheses around each identifier, or none and U+001D after a value of variable length that is
 * not the last.
 * @returns Elements in their order; or the first fault and the place in the string where its element starts.
 * @throws {RangeError} If the text is no text.
 * @example gs1Elements("(01)51022222233336(17)150707(10)A213B1") // => { elements: [{ ai: "01", value: "51022222233336" }, { ai: "17", value: "150707" }, { ai: "10", value: "A213B1" }] }
 */
export const gs1Elements = (text: string): Gs1Reading => {
  if (typeof text !== "string") throw new RangeError(`text must be a GS1 string, got ${String(text)}`);
  if (text === "") return { error: "empty", at: 0 };
  const parts = text.startsWith("(") ? splitPrinted(text) : splitStored(text);
  if ("error" in parts) return parts;
  for (const [index, part] of parts.entries()) {
    const error = faultOf(part, parts.slice(0, index));
    if (error !== null) return { error, at: part.at };
  }
  return { elements: parts.map(({ ai, value }) => ({ ai, value })) };
};
