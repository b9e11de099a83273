import type { FileRule } from "../rule.ts";

/** A closing brace alone is no error to the parser, but it is one to a reader. */
export const strayBrace: FileRule = (file) =>
  [...file.prose.matchAll(/(?<!\\)\}/g)].map(({ index }) => ({
    source: file,
    offset: index,
    rule: "stray brace",
    found: "}",
    expected: "no brace in the text; where one is meant, write \\}",
    edits: [{ start: index, end: index + 1, text: "" }],
  }));
