import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as engine from "../../src/engine/index.ts";

const FACE = new URL("../../src/engine/index.ts", import.meta.url);
const EXPORT = /^export \{ (\w+) \} from "(.+)";$/gm;
const EXAMPLE = /@example (.+?) \/\/ => (.+)$/gm;

interface Example {
  readonly name: string;
  readonly call: string;
  readonly printed: string;
}

const examplesOf = (name: string, path: string): Example[] => {
  const source = readFileSync(new URL(path, FACE), "utf8");
  return [...source.matchAll(EXAMPLE)].map(([, call = "", printed = ""]) => ({ name, call, printed }));
};

const exported = [...readFileSync(FACE, "utf8").matchAll(EXPORT)].map(([, name = "", path = ""]) => ({ name, path }));
const examples = exported.flatMap(({ name, path }) => examplesOf(name, path));

const names = Object.keys(engine);
const values: unknown[] = Object.values(engine);
const evaluate = (code: string): unknown => new Function(...names, `return (${code});`)(...values);

/** Every number becomes a text with the digits that the example prints; everything else stays as it is. */
const asPrinted = (value: unknown, digits: string[]): unknown => {
  if (typeof value === "number") {
    const shown = digits.shift() ?? "";
    return value.toFixed(shown.includes(".") ? shown.length - shown.indexOf(".") - 1 : 0);
  }
  if (Array.isArray(value)) return value.map((part) => asPrinted(part, digits));
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, asPrinted(part, digits)]));
};

const numbersIn = (printed: string): string[] => printed.match(/-?\d+(?:\.\d+)?/g) ?? [];

describe("the examples in the doc comments", () => {
  it("stand at every function of the public face", () => {
    expect(exported.map(({ name }) => name).sort()).toEqual([...names].sort());
    expect(new Set(examples.map(({ name }) => name))).toEqual(new Set(names));
  });

  it.each(examples)("$call gives $printed", ({ name, call, printed }) => {
    expect(call.startsWith(`${name}(`)).toBe(true);
    const expected = asPrinted(evaluate(printed), numbersIn(printed));
    expect(asPrinted(evaluate(call), numbersIn(printed))).toEqual(expected);
  });
});
