import { groupedBy } from "./first-marks.ts";
import type { JudgedItem } from "./cut-score.ts";

/** What is wrong with a table of estimates, and in which line. */
export interface EstimateFault {
  readonly line: number;
  readonly fault: "too-long" | "no-family" | "unknown-family" | "twice" | "no-estimate" | "not-a-share" | "other-count";
  readonly found: string;
}

export type EstimateReading = { readonly judged: readonly JudgedItem[]; readonly faults: readonly EstimateFault[] };

const MOST_SIGNS = 20_000;
const MOST_SHOWN = 40;
const SHARE = /^(?:0?[.,]\d{1,4}|[01](?:[.,]0{1,4})?|\d{1,3}%)$/;

/** A share as it is written: 0.6, 0,6 or 60 %; null for anything else. */
const shareIn = (text: string): number | null => {
  if (!SHARE.test(text)) return null;
  const share = text.endsWith("%") ? Number(text.slice(0, -1)) / 100 : Number(text.replace(",", "."));
  return share <= 1 ? share : null;
};

const readLine = (text: string, line: number, families: readonly string[]): JudgedItem | EstimateFault => {
  const [family = "", ...cells] = text.trim().split(/[\s;]+/);
  const fault = (code: EstimateFault["fault"], found: string): EstimateFault => ({ line, fault: code, found: found.slice(0, MOST_SHOWN) });
  if (!/^[a-z][a-z0-9-]*$/.test(family)) return fault("no-family", family);
  if (!families.includes(family)) return fault("unknown-family", family);
  if (cells.length === 0) return fault("no-estimate", family);
  const bad = cells.find((cell) => shareIn(cell) === null);
  return bad === undefined ? { family, shares: cells.map((cell) => shareIn(cell) ?? 0) } : fault("not-a-share", bad);
};

/** Judges' estimates as they are typed: a line for each family, its name and then one share per judge, in the same order. */
export const readEstimates = (text: string, families: readonly string[]): EstimateReading => {
  if (text.length > MOST_SIGNS) return { judged: [], faults: [{ line: 1, fault: "too-long", found: "" }] };
  const read = text.split(/\r\n|\r|\n/).flatMap((line, index) => (line.trim() === "" ? [] : [{ line: index + 1, entry: readLine(line, index + 1, families) }]));
  const judged = read.flatMap(({ line, entry }) => ("shares" in entry ? [{ line, entry }] : []));
  const faults = read.flatMap(({ entry }) => ("fault" in entry ? [entry] : []));
  const twice = [...groupedBy(judged, ({ entry }) => entry.family).values()].flatMap(([, ...again]) => again).map(({ line, entry }): EstimateFault => ({ line, fault: "twice", found: entry.family }));
  const count = judged[0]?.entry.shares.length ?? 0;
  const other = judged.filter(({ entry }) => entry.shares.length !== count).map(({ line, entry }): EstimateFault => ({ line, fault: "other-count", found: entry.family }));
  return { judged: judged.map(({ entry }) => entry), faults: [...faults, ...twice, ...other].toSorted((one, next) => one.line - next.line) };
};
