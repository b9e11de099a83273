import { requireCount, requireNumber } from "../quantity/require.ts";
import { daysInMonth } from "./days-in-month.ts";

export interface ReadingYear {
  /** Year of the list, in which two digits of a year are read. */
  readonly thisYear: number;
}

/** Why a printed date was not read. */
export type ExpiryRefusal = "not-a-date" | "no-such-day" | "ambiguous";

/** Last day on which a pack may be used, as YYYY-MM-DD, or why there is none. */
export type Expiry = { readonly lastDay: string } | { readonly refused: ExpiryRefusal };

interface Parts {
  readonly year: number;
  readonly month: number;
  /** 0 means the whole month. */
  readonly day: number;
}

const MONTHS = ["JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"];
const CENTURY = 100;
/** Years that a two-digit year may lie ahead of this one; one more is read as a year gone by. */
const YEARS_AHEAD = 50;

const fullYear = (twoDigits: number, thisYear: number): number => {
  const year = thisYear - (thisYear % CENTURY) + twoDigits;
  if (year - thisYear > YEARS_AHEAD) return year - CENTURY;
  return year - thisYear < YEARS_AHEAD - CENTURY + 1 ? year + CENTURY : year;
};

/** Day and month of 04/05/2027 cannot be told apart unless one of them is above 12 or both are the same. */
const dayOrMonth = (first: number, second: number, year: number): Parts | "ambiguous" => {
  if (first !== second && first <= 12 && second <= 12) return "ambiguous";
  return second > 12 ? { year, month: first, day: second } : { year, month: second, day: first };
};

/** Each way of printing with what its groups mean, in the order in which they are tried. */
const FORMS: readonly (readonly [RegExp, (groups: readonly string[], thisYear: number) => Parts | "ambiguous"])[] = [
  [/^(\d{4})-(\d{2})(?:-(\d{2}))?$/, ([year, month, day]) => ({ year: Number(year), month: Number(month), day: day === undefined ? 0 : Number(day) || -1 })],
  [/^(\d{2})(\d{2})(\d{2})$/, ([year, month, day], now) => ({ year: fullYear(Number(year), now), month: Number(month), day: Number(day) })],
  [/^(\d{1,2})[/.-](\d{4})$/, ([month, year]) => ({ year: Number(year), month: Number(month), day: 0 })],
  [/^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})$/, ([first, second, year]) => dayOrMonth(Number(first), Number(second), Number(year))],
  [/^(?:(\d{1,2})[ -])?([A-Z]{3})[ -](\d{4})$/, ([day, month = "", year]) => ({ year: Number(year), month: MONTHS.indexOf(month) + 1, day: day === undefined ? 0 : Number(day) || -1 })],
];

const partsOf = (text: string, thisYear: number): Parts | ExpiryRefusal => {
  for (const [form, read] of FORMS) {
    const match = form.exec(text);
    if (match) return read(match.slice(1), thisYear);
  }
  return "not-a-date";
};

/**
 * Last day on which a pack may be used, from the date as printed: 2027-03-31, 2027-03, 03/2027, 31/03/2027, 31 MAR 2027,
 * MAR 2027, or six digits YYMMDD as in a GS1 barcode. A month means its last day (ISO 15223-1:2021, use-by date), and so does
 * day 00 of six digits; two digits of a year are read at most 50 years ahead and 49 back (GS1 General Specifications,
 * dates of application identifiers; the window from memory). Day and month that could be swapped are not guessed.
 *
 * @param text - The printed date; letters of either case, spaces around it are ignored.
 * @param year - `thisYear`: year in which the list runs, as the clock is not asked; whole number from 1900 to 9900 (included).
 * @returns `lastDay` as YYYY-MM-DD, which sorts by time; or `refused`: not a date in a known form, no such day, or ambiguous.
 * @throws {RangeError} If the text is no text or the year is outside its range.
 * @example expiry("270200", { thisYear: 2026 }) // => { lastDay: "2027-02-28" }
 */
export const expiry = (text: string, { thisYear }: ReadingYear): Expiry => {
  if (typeof text !== "string") throw new RangeError(`text must be a printed date, got ${String(text)}`);
  requireCount({ thisYear });
  requireNumber("thisYear", thisYear, { least: 1900, leastIncluded: true, greatest: 9900, greatestIncluded: true });
  const parts = partsOf(text.trim().toUpperCase(), thisYear);
  if (typeof parts === "string") return { refused: parts };
  const { year, month, day } = parts;
  const days = daysInMonth(year, month);
  if (days === 0 || day < 0 || day > days) return { refused: "no-such-day" };
  const twoDigits = (value: number): string => String(value).padStart(2, "0");
  return { lastDay: `${String(year).padStart(4, "0")}-${twoDigits(month)}-${twoDigits(day || days)}` };
};
