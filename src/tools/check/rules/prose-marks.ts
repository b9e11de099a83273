import type { Finding } from "../finding.ts";
import { FILLER } from "../syntax.ts";
import { type FileRule, quoted } from "../rule.ts";

/** No exclamation mark: an urgent thing is said, not shouted. */
const exclamations: FileRule = (file) =>
  [...file.prose.matchAll(/!+/g)].map(({ 0: marks, index }): Finding => ({
    source: file,
    offset: index,
    rule: "exclamation mark",
    found: marks,
    expected: "a full stop; what is urgent is said in words",
    edits: [{ start: index, end: index + marks.length, text: /[.?]/.test(file.prose[index + marks.length] ?? "") ? "" : "." }],
  }));

/** Dollar signs of formulas come in pairs; one alone would swallow the text up to the next. */
const openFormula: FileRule = (file) => {
  const body = file.text.slice(file.bodyStart).replace(/`[^`\n]*`/g, (code) => FILLER.repeat(code.length));
  const signs = [...body.matchAll(/\$\$/g)];
  const last = signs.at(-1);
  if (last === undefined || signs.length % 2 === 0) return [];
  const offset = file.bodyStart + last.index;
  const stop = /\n[ \t]*\r?\n|$/.exec(file.text.slice(offset))?.index ?? 0;
  const written = file.text.slice(offset, offset + stop).trimEnd();
  const end = offset + written.length;
  const edits = [{ start: end, end, text: written.startsWith("$$\n") ? "\n$$" : "$$" }];
  return [{ source: file, offset, rule: "open formula", found: quoted(written), expected: "two dollar signs before a formula and two behind it", edits }];
};

/** Marks that the site does not use, or that must come in pairs. */
export const proseMarks: FileRule = (file, course) => [...exclamations(file, course), ...openFormula(file, course)];
