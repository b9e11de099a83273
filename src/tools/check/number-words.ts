import { UNITS } from "../../engine/quantity/units.ts";

/** A number with a unit as it stands in a text, or a range of two. */
export interface WrittenNumber {
  readonly start: number;
  readonly end: number;
  readonly numbers: readonly string[];
  /** What stands between two numbers; empty for one. */
  readonly join: "" | "range" | "plusMinus" | "and";
  readonly unit: string;
  /** True where a comma was read as a decimal point. */
  readonly comma: boolean;
}

/** Spellings that are counts, or words of their own in a sentence. */
const FREE = new Set(["in", '"', "x", "×", "points", "point", "times", "pieces", "piece"]);
const ALSO_IN_PROSE: Readonly<Record<string, string>> = { "mm Hg": "mmHg", "cm H2O": "cmH2O", "cm H₂O": "cmH2O" };

const asPattern = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");

const spellings: readonly string[] = [
  ...Object.entries(UNITS).flatMap(([id, fact]) => [id, ...(fact.also ?? [])]),
  ...Object.keys(ALSO_IN_PROSE),
]
  .filter((name) => !FREE.has(name))
  .sort((first, second) => second.length - first.length);

const SPACE = "(?:[\\s\\u00A0\\u2009\\u202F]|&nbsp;|&thinsp;|&#\\w+;)";
const NUMBER = "(?:\\d{1,3}(?:[\\u00A0\\u2009\\u202F]\\d{3})+(?:[.,]\\d+)?|\\d+(?:[.,]\\d+)*)";
const JOIN = `${SPACE}*(?:[–—-]|±|\\+/-|to)${SPACE}*`;
const UNIT = `(?:${spellings.map(asPattern).join("|")})(?:/[A-Za-z]+)*`;
const MARKS = "[*_]{0,3}";
const PATTERN = new RegExp(
  `(?<![\\w.,/@])(?:(?<=\\bbetween${SPACE}+)(${NUMBER})(${SPACE}+and${SPACE}+)|([−-]?${NUMBER})(${JOIN}))?([−-]?${NUMBER})${MARKS}(?:${SPACE}*|-)${MARKS}(${UNIT})(?![\\w²³₂])`,
  "g",
);

/** Plain decimal text: a comma is a decimal point unless three digits follow it, spaces between digits go. */
const plain = (text: string): string => {
  const tight = text.replace(/[\s\u00A0\u2009\u202F]/g, "").replace("−", "-");
  return /^-?\d{1,3}(,\d{3})+(\.\d+)?$/.test(tight) ? tight.replaceAll(",", "") : tight.replace(",", ".");
};

const joinOf = (join: string | undefined, and: string | undefined): WrittenNumber["join"] => {
  if (and !== undefined) return "and";
  if (join === undefined) return "";
  return /±|\+\//.test(join) ? "plusMinus" : "range";
};

/** All numbers that stand beside a unit in a text. Ages, counts and dates have no unit of the list and are free. */
export const numbersIn = (prose: string): readonly WrittenNumber[] =>
  [...prose.matchAll(PATTERN)]
    .filter((match) => !/^\d+(s|m|g|h|l|L)$/.test(match[0]))
    .map((match) => {
      const [whole, betweenFirst, and, joinFirst, join, last = "", unit = ""] = match;
      const first = betweenFirst ?? joinFirst;
      const written = first === undefined ? [last] : [first, last];
      return {
        start: match.index,
        end: match.index + whole.length,
        numbers: written.map(plain),
        join: joinOf(join, and),
        unit: ALSO_IN_PROSE[unit] ?? unit,
        comma: written.some((each) => each.includes(",") && plain(each).includes(".")),
      };
    });
