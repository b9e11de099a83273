import { textOf } from "./files.ts";

const EXAMPLE = /@example (.+?) \/\/ => (.+)$/gm;

/** The examples in the doc comments of files, as calls and printed results. */
export const examplesIn = (paths: readonly string[]): readonly { readonly call: string; readonly printed: string }[] =>
  paths.flatMap((path) => [...textOf(path).matchAll(EXAMPLE)].map(([, call = "", printed = ""]) => ({ call, printed })));

/** Runs a line of code with named values in scope. */
export const evaluate = (code: string, scope: Readonly<Record<string, unknown>>): unknown =>
  new Function(...Object.keys(scope), `return (${code});`)(...Object.values(scope));

/** Numbers become text with the digits that the example prints, so that results can be compared. */
export const asPrinted = (value: unknown, digits: string[]): unknown => {
  if (typeof value === "number") {
    const shown = digits.shift() ?? "";
    return value.toFixed(shown.includes(".") ? shown.length - shown.indexOf(".") - 1 : 0);
  }
  if (Array.isArray(value)) return value.map((part) => asPrinted(part, digits));
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, asPrinted(part, digits)]));
};

/** The numbers that an example prints, in order. */
export const numbersIn = (printed: string): string[] => printed.match(/-?\d+(?:\.\d+)?/g) ?? [];
