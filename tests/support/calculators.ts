import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

/** One calculator with a legal call; `run` takes one object of options. */
export interface Calculator {
  /** Below src/engine. */
  readonly file: string;
  readonly run: (given: never) => unknown;
  readonly legal: object;
}

export type Calculators = Readonly<Record<string, Calculator>>;
type Path = readonly (string | number)[];

const ENGINE = new URL("../../src/engine/", import.meta.url);
const EXAMPLE = /@example (.+?) \/\/ => (.+)$/gm;
const read = (file: string): string => readFileSync(new URL(file, ENGINE), "utf8");

const numbersIn = (value: unknown, path: Path = []): Path[] => {
  if (typeof value === "number") return [path];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, part]) => numbersIn(part, [...path, Array.isArray(value) ? Number(key) : key]));
};

const withValue = (whole: unknown, [key, ...rest]: Path, value: unknown): unknown => {
  if (key === undefined) return value;
  const copy = structuredClone(whole) as Record<string | number, unknown>;
  copy[key] = withValue(copy[key], rest, value);
  return copy;
};

const spoken = (path: Path): string => {
  const last = path.findLastIndex((key) => typeof key === "string");
  return `${path[last]}${path.slice(last + 1).map((place) => `[${place}]`).join("")}`;
};

const messageOf = (call: () => unknown): string => {
  try {
    return `nothing refused, came ${JSON.stringify(call())}`;
  } catch (error) {
    return error instanceof RangeError ? error.message : `no RangeError: ${String(error)}`;
  }
};

/** Every number of every legal call, one at a time, replaced by what is no number of that kind. */
export const describeRefusals = (calculators: Calculators, signed: readonly string[] = []): void => {
  const leaves = Object.entries(calculators).flatMap(([name, { run, legal }]) =>
    numbersIn(legal).map((path) => ({ name, parameter: spoken(path), path, run, legal })));
  describe("the guards", () => {
    it("take the legal calls", () => {
      expect(leaves.length).toBeGreaterThan(Object.keys(calculators).length);
      for (const { run, legal } of Object.values(calculators)) expect(() => run(legal as never)).not.toThrow();
    });

    it.each(leaves)("of $name refuse what is no number for $parameter, and say so", ({ name, parameter, path, run, legal }) => {
      const below = signed.includes(`${name} ${parameter}`) ? [] : [-1];
      for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, "5", ...below]) {
        const message = messageOf(() => run(withValue(legal, path, value) as never));
        expect(message).toContain(`${parameter} must be `);
        expect(message.endsWith(`, got ${String(value)}`)).toBe(true);
      }
    });
  });
};

/** Every number becomes a text with the digits that the example prints; everything else stays as it is. */
const asPrinted = (value: unknown, digits: string[]): unknown => {
  if (typeof value === "number") return value.toFixed((digits.shift() ?? "").split(".")[1]?.length ?? 0);
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, asPrinted(part, digits)]));
};

/** Runs the example in the doc comment of each calculator; none of the room may be missing here and on the public face. */
export const describeExamples = (room: string, calculators: Calculators): void => {
  const names = Object.keys(calculators);
  const evaluate = (code: string): unknown =>
    new Function(...names, `return (${code});`)(...Object.values(calculators).map(({ run }) => run));
  const examples = Object.entries(calculators).flatMap(([name, { file }]) =>
    [...read(file).matchAll(EXAMPLE)].map(([, call = "", printed = ""]) => ({ name, call, printed })));

  describe("the examples in the doc comments", () => {
    it(`stand at every calculator of ${room} that is not on the public face`, () => {
      const face = read("index.ts");
      const withExample = readdirSync(new URL(`${room}/`, ENGINE)).filter((file) => read(`${room}/${file}`).includes("@example"));
      const others = withExample.map((file) => `${room}/${file}`).filter((file) => !face.includes(`"./${file}"`));
      expect(Object.values(calculators).map(({ file }) => file).sort()).toEqual(others.sort());
      expect(examples.map(({ name }) => name)).toEqual(names);
    });

    it.each(examples)("$call gives $printed", ({ name, call, printed }) => {
      expect(call.startsWith(`${name}({`)).toBe(true);
      const digits = (): string[] => printed.match(/-?\d+(?:\.\d+)?/g) ?? [];
      expect(asPrinted(evaluate(call), digits())).toEqual(asPrinted(evaluate(printed), digits()));
    });
  });
};
