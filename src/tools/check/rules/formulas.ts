import { mathMarkup } from "../../../build/math.ts";
import type { Finding } from "../finding.ts";
import { type FileRule, quoted } from "../rule.ts";

/** What the writer of formulas says of one; null where it can be written. */
const faultOf = (formula: string): string | null => {
  try {
    mathMarkup(formula, false);
    return null;
  } catch (error) {
    const says = error instanceof Error ? error.message : String(error);
    return says.split(/ at (?:end of input|position \d+)/)[0]?.trim() ?? says;
  }
};

/** Closing brackets that are missing at the end of a formula. */
const stillOpen = (formula: string): number =>
  Math.max(0, [...formula.replaceAll(/\\[{}]/g, "")].reduce((open, letter) => open + Number(letter === "{") - Number(letter === "}"), 0));

/** With the brackets closed that are open, or without the backslash of a word that is none; null where neither helps. */
const mended = (formula: string): string | null => {
  const first = formula.replace(/(\\d?frac\{\w+)(\{)/, "$1}$2");
  const plain = formula.replace(/\\([A-Za-z]+)/g, (whole, word: string) => (faultOf(`${whole} x`)?.startsWith("Unsupported") === true ? `\\text{${word}}` : whole));
  return [first, formula + "}".repeat(stillOpen(formula)), plain].find((each) => each !== formula && faultOf(each) === null) ?? null;
};

/** Every formula can be written, since one that cannot stops the building of the whole site. */
export const formulas: FileRule = (file) =>
  file.formulas.flatMap(({ value, start, stop }): readonly Finding[] => {
    const fault = faultOf(value);
    if (fault === null) return [];
    const head = { source: file, offset: start, rule: "formula", found: quoted(file.text.slice(start, stop)) };
    const text = mended(value);
    return [text === null
      ? { ...head, expected: `a formula that can be written (${fault}); a dollar sign that is none stands as \\$`, write: "$a = \\frac{b}{c}$" }
      : { ...head, expected: `a formula that can be written (${fault})`, edits: [{ start, end: stop, text: file.text.slice(start, stop).replace(value, () => text) }] }];
  });
