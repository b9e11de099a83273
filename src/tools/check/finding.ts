/** A text file as it was read: the name that is printed, and what stands in it. */
export interface SourceText {
  readonly file: string;
  readonly text: string;
}

/** Replaces the characters from `start` up to `end` of a source text. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** `problem` fails the check, `warning` is printed, `note` is printed on request. */
export type Level = "problem" | "warning" | "note";

/** What a rule sees: a place by offset, and either edits of the file or the line to write. */
export interface Finding {
  readonly source: SourceText;
  readonly offset: number;
  readonly rule: string;
  readonly level?: Level;
  readonly found: string;
  readonly expected: string;
  readonly edits?: readonly Edit[];
  readonly write?: string;
}

/** What is printed: a place by line and column (both from 1) and the corrected line. */
export interface Problem {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly rule: string;
  readonly level: Level;
  readonly found: string;
  readonly expected: string;
  readonly corrected: string;
  /** First and last line that `corrected` takes the place of; null where it is to be written somewhere else. */
  readonly replaces: readonly [first: number, last: number] | null;
}

/** Line and column, both from 1, of an offset in a text. */
export const placeAt = (text: string, offset: number): { readonly line: number; readonly column: number } => {
  const before = text.slice(0, offset).split("\n");
  return { line: before.length, column: (before.at(-1) ?? "").length + 1 };
};

/** Offset of a line and column, both from 1; the end of the text where the line does not exist. */
export const offsetAt = (text: string, line: number, column: number): number => {
  const before = text.split("\n").slice(0, line - 1);
  const start = before.reduce((sum, each) => sum + each.length + 1, 0);
  return Math.min(start + column - 1, text.length);
};

/** First and last offset of the lines that a span touches. */
export const linesAround = (text: string, start: number, end: number): { readonly start: number; readonly end: number } => {
  const stop = text.indexOf("\n", Math.max(start, end - 1));
  return { start: text.lastIndexOf("\n", start - 1) + 1, end: stop < 0 ? text.length : stop };
};
