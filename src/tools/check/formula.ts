import type { RevisionRecord } from "./json-file.ts";

/** What a formula's words stand for: the revisions that it names as parents. */
type Parents = readonly RevisionRecord[];

const OPERATORS = /\s+([−+×/÷*]|-)\s+/;

const numberOf = (value: RevisionRecord["value"] | undefined): number | null => {
  const text = value?.["mean"] ?? value?.["value"] ?? value?.["median"];
  return text === undefined ? null : Number(text);
};

/** One operand: a number as written, a part of the first parent, or a phrase that stands for a parent. */
const operandOf = (phrase: string, parents: Parents, phrases: readonly string[]): number | null => {
  const written = /(?:^|\s)(\d+(?:\.\d+)?)$/.exec(phrase)?.[1];
  if (written !== undefined) return Number(written);
  const part = parents[0]?.value[phrase.toLowerCase()];
  if (part !== undefined) return Number(part);
  return phrases.length === parents.length ? numberOf(parents[phrases.indexOf(phrase)]?.value) : null;
};

const isPhrase = (text: string, parents: Parents): boolean => !/\d$/.test(text) && parents[0]?.value[text.toLowerCase()] === undefined;

const apply = (operator: string, first: number, second: number): number => {
  if (operator === "×" || operator === "*") return first * second;
  if (operator === "/" || operator === "÷") return first / second;
  return operator === "+" ? first + second : first - second;
};

/** Works out products and quotients before sums and differences, from left to right. */
const worked = (numbers: readonly number[], operators: readonly string[]): number => {
  const terms: number[] = [numbers[0] ?? 0];
  const signs: string[] = [];
  operators.forEach((operator, index) => {
    const next = numbers[index + 1] ?? 0;
    const last = terms.length - 1;
    if ("×*/÷".includes(operator)) terms[last] = apply(operator, terms[last] ?? 0, next);
    else {
      signs.push(operator);
      terms.push(next);
    }
  });
  return signs.reduce((sum, sign, index) => apply(sign, sum, terms[index + 1] ?? 0), terms[0] ?? 0);
};

/**
 * The value of a formula such as "mean − 2 × SD" or "free edge to bundle − junction to bundle"; null where it is
 * words only, or where its words cannot be told apart. What stands in brackets is a remark.
 */
export const resultOf = (formula: string, parents: Parents): number | null => {
  const pieces = formula.replace(/\([^)]*\)/g, "").trim().split(OPERATORS);
  const operands = pieces.filter((_, index) => index % 2 === 0).map((piece) => piece.trim());
  if (operands.length < 2) return null;
  const phrases = [...new Set(operands.filter((operand) => isPhrase(operand, parents)))];
  const numbers = operands.map((operand) => operandOf(operand, parents, phrases));
  if (numbers.some((each) => each === null || !Number.isFinite(each))) return null;
  return worked(numbers.map(Number), pieces.filter((_, index) => index % 2 === 1));
};
