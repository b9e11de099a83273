import { expect } from "vitest";

/** Stands in for the test runner while changes are tried: collects the checks of one file, so that they run in this thread and stop at the first that fails. */

export interface Check {
  readonly title: string;
  readonly run: () => unknown;
}

type Body = (...values: never[]) => unknown;
type Each = (rows: readonly unknown[]) => (title: string, body: Body) => void;
type Declare = ((title: string, body: Body) => void) & { readonly each: Each };

let collected: Check[] = [];

/** A row that is a list fills several parameters, any other row fills one, as in the runner itself. */
const valuesOf = (row: unknown): never[] => (Array.isArray(row) ? row : [row]) as never[];

const withEach = (declare: (title: string, body: Body) => void): Declare => {
  const each: Each = (rows) => (title, body) => {
    for (const row of rows) declare(title, () => body(...valuesOf(row)));
  };
  return Object.assign(declare, { each });
};

export const it: Declare = withEach((title, body) => {
  collected.push({ title, run: body });
});
export const describe: Declare = withEach((_, body) => {
  body();
});
export { expect };

/** The checks declared since the last call. */
export const taken = (): readonly Check[] => {
  const checks = collected;
  collected = [];
  return checks;
};
