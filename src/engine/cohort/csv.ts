import { decimalOf, toText, trimmed } from "../quantity/decimal.ts";
import { requireFinite } from "../quantity/require.ts";
import { RECORD_PLACES } from "../quantity/tolerance.ts";

/** A cell is a text, a number or empty; which of them it is decides whether it may begin with a sign. */
export type Cell = string | number | null;

/** Between cells, and the decimal mark that spreadsheets expect with it: with a comma 1.5 is a number, with a semicolon it would become a day in May. */
export type Separator = "," | ";";

/** Signs at which a spreadsheet takes a text for a formula, their wide and small twins, and the quote that marks a text. */
const STARTS_A_FORMULA = /^[=+\-@\t\r\n'\u2212\uff1d\uff0b\uff0d\uff20\ufe62\ufe63\ufe66\ufe6b\uff07]/;

/** White space, and signs that nobody sees: a spreadsheet may skip them before it looks for a formula. */
const UNSEEN = /^[\s\p{Cc}\p{Cf}\p{Zs}]+/u;

/** A text that no spreadsheet computes: with a quote in front where it begins like a formula, which `textIn` takes away again. */
const inert = (text: string): string => (STARTS_A_FORMULA.test(text) || STARTS_A_FORMULA.test(text.replace(UNSEEN, "")) ? `'${text}` : text);

/** The text as it was before `inert` looked at it. */
export const textIn = (cell: string): string => (cell.startsWith("'") ? cell.slice(1) : cell);

const numberIn = (value: number, separator: Separator): string => {
  requireFinite({ value });
  const text = toText(trimmed(decimalOf(value, RECORD_PLACES)));
  return separator === ";" ? text.replace(".", ",") : text;
};

const contentOf = (cell: Cell, separator: Separator): string => {
  if (cell === null) return "";
  return typeof cell === "number" ? numberIn(cell, separator) : inert(cell.toWellFormed());
};

const BYTE_ORDER_MARK = "\ufeff";

/** Rows as a file that spreadsheets open (RFC 4180): every cell in quotes, lines end in CR LF, and a mark says that it is UTF-8. */
export const csvText = (rows: readonly (readonly Cell[])[], separator: Separator): string =>
  BYTE_ORDER_MARK + rows.map((row) => `${row.map((cell) => `"${contentOf(cell, separator).replaceAll('"', '""')}"`).join(separator)}\r\n`).join("");
