import { type Decimal, decimal, multiply } from "./decimal.ts";
import { convert, sameDimension, type UnitId, unitNamed } from "./units.ts";

/** Why a text cannot be read as one number in the unit asked. Closed: a page has a sentence for each. */
export type UnreadableReason =
  | "empty"
  | "too-long"
  | "no-number"
  | "not-first"
  | "two-numbers"
  | "two-readings"
  | "fraction"
  | "foreign-unit"
  | "unknown-unit";

export interface Read {
  /** The value in the unit asked. */
  readonly value: Decimal;
  /** The number as typed, before any conversion. */
  readonly typed: string;
  /** The unit typed, where it was not the unit asked. */
  readonly convertedFrom?: UnitId;
}

export type Reading = Read | { readonly reason: UnreadableReason; readonly found?: string };

const MOST_CHARACTERS = 40;
const MOST_EXPONENT = 9;
/** What most people type; it has one reading only. */
const PLAIN = /^\d{1,9}(?:\.\d{1,6})?$/;
const NUMBER = /^([+-]?)(\d+(?:[.,]\d*)?|[.,]\d+)(?:e([+-]?\d{1,3}))?/i;

const normalised = (text: string): string =>
  text
    .replace(/[\u2212\u2013\uFE63\uFF0D]/g, "-")
    .replace(/[\s\u00A0\u2007\u2009\u202F]+/g, " ")
    .trim();

const exponentOf = (digits: string): Decimal | null => {
  const exponent = Number(digits);
  if (Math.abs(exponent) > MOST_EXPONENT) return null;
  if (exponent >= 0) return { units: 10n ** BigInt(exponent), places: 0 };
  return { units: 1n, places: -exponent };
};

/** A comma before exactly three digits is a decimal comma in one country and a thousands mark in another. */
const hasTwoReadings = (number: string, rest: string): boolean =>
  /^[1-9]\d{0,2},\d{3}$/.test(number) || /^(?:[.,]\d|['’ ]\d{3}\b)/.test(rest);

const plain = (number: string): string => {
  const [whole = "", fraction = ""] = number.replace(",", ".").split(".");
  return `${whole === "" ? "0" : whole}${fraction === "" ? "" : `.${fraction}`}`;
};

const NUMBERS = /\d+(?:[.,]\d+)?/g;
const VULGAR = /[½¼¾⅓⅔]/;

const unreadable = (text: string): Reading => {
  const short = text.slice(0, MOST_CHARACTERS);
  if (VULGAR.test(text)) return { reason: "fraction", found: short };
  const numbers = text.match(NUMBERS)?.length ?? 0;
  if (numbers === 0) return { reason: "no-number", found: short };
  return { reason: numbers === 1 ? "not-first" : "two-numbers", found: short };
};

const afterNumber = (rest: string, unit: UnitId): Reading | UnitId => {
  if (rest === "") return unit;
  if (/^[/⁄]\s*\d/.test(rest) || /^\d+\s*[/⁄]/.test(rest) || VULGAR.test(rest)) return { reason: "fraction", found: rest };
  if (/\d/.test(rest.replace(/^(?:mm|cm|m)[2²]/i, "").replace(/^cmh2o/i, ""))) return { reason: "two-numbers", found: rest };
  const named = unitNamed(rest.replace(/\.$/, ""));
  if (named === null) return { reason: "unknown-unit", found: rest };
  return sameDimension(named, unit) ? named : { reason: "foreign-unit", found: rest };
};

const read = (match: RegExpExecArray, typedUnit: UnitId, unit: UnitId): Reading => {
  const sign = match[1] === "-" ? "-" : "";
  const typed = `${sign}${plain(match[2] ?? "")}`;
  const scale = exponentOf(match[3] ?? "0");
  if (scale === null) return { reason: "too-long", found: match[0] };
  const value = convert(multiply(decimal(typed), scale), typedUnit, unit);
  return typedUnit === unit ? { value, typed } : { value, typed, convertedFrom: typedUnit };
};

/** True for plain digits with a point or none, which have one reading only: what most people type. */
export const isPlain = (text: string): boolean => PLAIN.test(text);

/**
 * Reads what a learner typed as one number in the unit asked: comma or point, any minus sign, an exponent,
 * a unit of the same kind or none. Anything that could mean two things is refused with its reason.
 */
export const parseQuantity = (text: string, unit: UnitId): Reading => {
  if (isPlain(text)) return { value: decimal(text), typed: text };
  const line = normalised(text);
  if (line === "") return { reason: "empty" };
  if (line.length > MOST_CHARACTERS) return { reason: "too-long" };
  const compact = line.replace(/^([+-]) /, "$1");
  const match = NUMBER.exec(compact);
  if (!match) return unreadable(compact);
  const rest = compact.slice(match[0].length);
  if (/^x[0-9a-f]/i.test(rest) && /^[+-]?0$/.test(match[0])) return { reason: "no-number", found: compact };
  if (hasTwoReadings(match[2] ?? "", rest)) return { reason: "two-readings", found: compact };
  const after = afterNumber(rest.trim(), unit);
  return typeof after === "string" ? read(match, after, unit) : after;
};
