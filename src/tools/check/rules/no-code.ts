import type { Finding } from "../finding.ts";
import { type FileRule, LEAVE_OUT, quoted } from "../rule.ts";

/** A module holds text and tags, no program: no import, no export, no {expression}; comments may stand. */
export const noCode: FileRule = (file) =>
  file.code.map(({ kind, value, start, stop }): Finding => {
    const head = { source: file, offset: start, rule: "program in a text", found: quoted(file.text.slice(start, stop)) };
    if (kind === "esm") {
      const word = /^\w+/.exec(value)?.[0] ?? "import";
      return { ...head, expected: `no ${word}: the tags are known in every module; a sentence that starts so has a capital letter`, write: LEAVE_OUT };
    }
    const text = value.trim().replace(/^(["'`])(.*)\1$/s, "$2");
    return { ...head, expected: "the text itself, without braces; where a brace is meant, write \\{", edits: [{ start, end: stop, text }] };
  });
