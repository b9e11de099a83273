import { textOf } from "./files.ts";

/** One calculator with a legal call: what the loops over refusals and examples need to know of it. */
export interface Calculator {
  /** Path of its file below `src/engine`, without the ending. */
  readonly file: string;
  readonly run: (...values: never[]) => unknown;
  readonly legal: readonly unknown[];
  /** Numbers of the call that may be negative, by their last key. */
  readonly anySign?: readonly string[];
}

type Path = readonly (string | number)[];

/** A place of a legal call: the name that a refusal must say, and the call with another value there. */
export interface Place {
  readonly calculator: string;
  readonly parameter: string;
  readonly mayBeNegative: boolean;
  readonly refusalOf: (value: unknown) => unknown;
}

const pathsIn = (value: unknown, path: Path): Path[] => {
  if (typeof value === "number" || typeof value === "string") return [path];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, part]) => pathsIn(part, [...path, Array.isArray(value) ? Number(key) : key]));
};

const withValue = (whole: unknown, path: Path, value: unknown): unknown => {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const copy = structuredClone(whole) as Record<string | number, unknown>;
  copy[key] = withValue(copy[key], rest, value);
  return copy;
};

const thrownBy = (run: () => unknown): unknown => {
  try {
    return { nothingThrown: run() };
  } catch (error) {
    return error;
  }
};

/** Every number and text in the legal calls; a place in the list of arguments has no name, so any name will do there. */
export const placesOf = (calculators: readonly Calculator[]): readonly Place[] =>
  calculators.flatMap(({ file, run, legal, anySign = [] }) =>
    pathsIn(legal, []).map((path) => {
      const last = path.findLast((key) => typeof key === "string");
      return {
        calculator: file,
        parameter: typeof last === "string" ? last : "",
        mayBeNegative: anySign.includes(String(last)),
        refusalOf: (value: unknown) => thrownBy(() => run(...(withValue(legal, path, value) as never[]))),
      };
    }),
  );

/** Numbers as texts with the digits that an example prints; everything else stays as it is. */
const asPrinted = (value: unknown, digits: string[]): unknown => {
  if (typeof value === "number") {
    const shown = digits.shift() ?? "";
    return value.toFixed(shown.includes(".") ? shown.length - shown.indexOf(".") - 1 : 0);
  }
  if (Array.isArray(value)) return value.map((part) => asPrinted(part, digits));
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, asPrinted(part, digits)]));
};

/** Numbers of a printed value outside its texts, in their order. */
const numbersIn = (printed: string): string[] => printed.replace(/"[^"]*"/g, '""').match(/-?\d+(?:\.\d+)?/g) ?? [];

export interface Example {
  readonly call: string;
  readonly printed: string;
  readonly got: () => unknown;
  readonly expected: () => unknown;
}

/** The example lines in the comment of a calculator, ready to run. */
export const examplesOf = ({ file, run }: Calculator): readonly Example[] =>
  [...textOf(`src/engine/${file}.ts`).matchAll(/@example (\w+)(\(.+\)) \/\/ => (.+)$/gm)].map(([, name = "", call = "", printed = ""]) => ({
    call: `${name}${call}`,
    printed,
    got: () => asPrinted(new Function(name, `return ${name}${call};`)(run), numbersIn(printed)),
    expected: () => asPrinted(new Function(`return (${printed});`)(), numbersIn(printed)),
  }));
