import { fileURLToPath } from "node:url";

/** Where a program stopped that could not be read or loaded: the head of its trace, or the first of its own lines in it. */
const PLACE = /^(file:\/\/\/[^\n]+?\.ts):(\d+)/;
const OWN_LINE = /(file:\/\/\/[^\s)]*\/src\/bank\/[^\s)]*?\.ts):(\d+)/;

const unhelpful = new Set(["", "null", "undefined"]);

const saysOf = (cause: unknown): string => (cause instanceof Error ? cause.message : String(cause)).split("\n")[0]?.trim() ?? "";

/** The line under which the reader puts its mark, or the first of those that it shows. */
const lineAboveMark = (lines: readonly string[]): string => {
  const mark = lines.findIndex((line) => /^\s*\^+\s*$/.test(line));
  return (lines[mark - 1] ?? lines[0] ?? "").trim();
};

/** A file of the bank that Node cannot load, said as every other mistake: place, what was found, what is to be there. */
export const loadFault = (cause: unknown, shown: (path: string) => string): string => {
  const trace = cause instanceof Error ? (cause.stack ?? "") : "";
  const [, address, line = "1"] = PLACE.exec(trace) ?? OWN_LINE.exec(trace) ?? [];
  const snippet = PLACE.test(trace) ? lineAboveMark(trace.split("\n").slice(1)) : "";
  const place = address === undefined ? "src/bank" : `${shown(fileURLToPath(address))}:${line}`;
  const says = saysOf(cause);
  return [
    `${place}  program`,
    `  found     ${snippet || (unhelpful.has(says) ? "a file that cannot be loaded" : says)}`,
    `  expected  ${snippet === "" ? "a file that can be loaded" : `a line that can be read: ${says}`}`,
    "  write     the bracket, comma or quote that is missing there or in the lines above; an editor that knows TypeScript marks it",
  ].join("\n");
};
