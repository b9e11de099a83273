import { mdxToMdast } from "satteri";
import type { Edit, Finding, SourceText } from "./finding.ts";
import { offsetAt } from "./finding.ts";
import { openingTagAt } from "./opening-tag.ts";
import { sampleOf, TAGS } from "./tags.ts";

export type Tree = ReturnType<typeof mdxToMdast>;

/** Stands for one character that is no prose; it is neither a space nor a letter. */
export const FILLER = "\uFFFC";

/** Blanks a span without moving anything: lines stay lines. */
export const blank = (text: string, start: number, end: number): string =>
  text.slice(0, start) + text.slice(start, end).replace(/[^\n]/g, FILLER) + text.slice(end);

interface Fault {
  readonly offset: number;
  readonly found: string;
  readonly expected: string;
  readonly edits: readonly Edit[];
  /** Spans to blank so that the rest of the file can be read. */
  readonly blanks: readonly (readonly [number, number])[];
}

const MOST_FAULTS = 40;

const lineEnd = (text: string, from: number): number => {
  const end = text.indexOf("\n", from);
  return end < 0 ? text.length : end;
};

/** `<5 mm`: the parser takes it for a tag. */
const lessThan = (text: string, offset: number): Fault => {
  const gap = /^ */.exec(text.slice(offset + 1))?.[0].length ?? 0;
  const found = /^< ?[-−]?(?:\d+(?:[.,]\d+)*(?:[^\S\n]?[A-Za-z°%]+)?)?/.exec(text.slice(offset))?.[0] ?? "<";
  const value = found.slice(1).trim() || "5 mm";
  return {
    offset,
    found,
    expected: `no "<" before a number, since it opens a tag; write "less than ${value}", or &lt;${value} where there is no room`,
    edits: [{ start: offset, end: offset + 1 + gap, text: "less than " }],
    blanks: [[offset, offset + 1]],
  };
};

const comment = (text: string, offset: number): Fault => {
  const close = text.indexOf("-->", offset);
  const end = close < 0 ? lineEnd(text, offset) : close + 3;
  const inside = text.slice(offset + 4, close < 0 ? end : close).trim();
  return {
    offset,
    found: text.slice(offset, end),
    expected: "a comment between {/* and */}",
    edits: [{ start: offset, end, text: `{/* ${inside} */}` }],
    blanks: [[offset, end]],
  };
};

const bareAddress = (offset: number, address: string): Fault => ({
  offset,
  found: address,
  expected: "a link with words that say where it leads",
  edits: [{ start: offset, end: offset + address.length, text: `[where it leads](${address.slice(1, -1)})` }],
  blanks: [[offset, offset + address.length]],
});

/** A tag whose attributes cannot be read: quotes or braces are missing. */
const brokenTag = (text: string, offset: number): Fault => {
  const close = text.indexOf(">", offset);
  const end = close < 0 || close > lineEnd(text, offset) ? lineEnd(text, offset) : close + 1;
  const written = text.slice(offset, end);
  const quoted = written.replace(/[“”„‟]/g, '"').replace(/(\w+)=([^\s"'{}/>]+)/g, (_, key: string, value: string) =>
    /^-?\d+(\.\d+)?$/.test(value) ? `${key}={${value}}` : `${key}="${value}"`,
  );
  const name = /^<(\w+)/.exec(written)?.[1] ?? "";
  return {
    offset,
    found: written,
    expected: "an attribute with its value in straight quotes, or a number in braces",
    edits: [{ start: offset, end, text: quoted === written ? sampleOf(name) : quoted }],
    blanks: [[offset, end]],
  };
};

const afterLess = (text: string, offset: number): Fault => {
  const rest = text.slice(offset);
  const address = /^<(?:https?:|mailto:)[^>\s]*>/.exec(rest)?.[0];
  if (rest.startsWith("<!--")) return comment(text, offset);
  if (address !== undefined) return bareAddress(offset, address);
  return /^<[A-Za-z]/.test(rest) ? brokenTag(text, offset) : lessThan(text, offset);
};

const brace = (text: string, offset: number): Fault => {
  const open = text[offset] === "{" ? offset : Math.max(0, text.lastIndexOf("{", offset));
  const close = text.indexOf("}", open);
  const end = close < 0 || close > lineEnd(text, offset) ? open + 1 : close + 1;
  const found = text.slice(open, end);
  return {
    offset: open,
    found,
    expected: "no brace in the text; where one is meant, write \\{",
    edits: [{ start: open, end, text: end > open + 1 ? found.slice(1, -1) : "" }],
    blanks: [[open, end]],
  };
};

/** A tag that is opened and never closed. */
const unclosed = (text: string, offset: number, closeAt?: number): Fault => {
  const tag = openingTagAt(text, offset);
  const holdsText = TAGS[tag.name]?.holdsText === true || TAGS[tag.name] === undefined;
  const stop = lineEnd(text, tag.end);
  const alone = text.slice(tag.end, stop).trim() === "";
  const place = closeAt ?? (alone ? tag.end : stop);
  const close = { start: place, end: place, text: `${alone && closeAt === undefined ? "…" : ""}</${tag.name}>` };
  return {
    offset,
    found: text.slice(offset, tag.end),
    expected: holdsText ? `a closing </${tag.name}> behind its text` : 'a tag that closes itself with "/>"',
    edits: [holdsText ? close : { start: offset, end: tag.end, text: `${text.slice(offset, tag.end - 1).trimEnd()} />` }],
    blanks: [[offset, tag.end]],
  };
};

const closingTag = (text: string, offset: number, opened: number | null): Fault => {
  const end = Math.max(offset + 1, text.indexOf(">", offset) + 1);
  const name = text.slice(offset + 2, end - 1).trim();
  const open = opened === null ? null : openingTagAt(text, opened);
  if (opened !== null && open !== null && open.name.toLowerCase() !== name.toLowerCase()) return unclosed(text, opened, offset);
  return {
    offset,
    found: text.slice(offset, end),
    expected: open === null ? `an opening <${name}> before it, or no closing tag` : `</${open.name}>, which closes <${open.name}>`,
    edits: [{ start: offset, end, text: open === null ? "" : `</${open.name}>` }],
    blanks: opened === null || open === null ? [[offset, end]] : [[offset, end], [opened, open.end]],
  };
};

const anythingElse = (offset: number, message: string): Fault => ({
  offset,
  found: message,
  expected: "text or a tag that can be read",
  edits: [{ start: offset, end: offset + 1, text: "" }],
  blanks: [[offset, offset + 1]],
});

const faultIn = (text: string, message: string): Fault => {
  const [, line, column, says] = /^(\d+):(\d+): (.*?)(?: \(mdx[^)]*\))?$/s.exec(message) ?? ["", "1", "1", message];
  const offset = offsetAt(text, Number(line), Number(column));
  const opened = /closing tag for `<[^>]*>` \((\d+):(\d+)\)/.exec(message);
  const openedAt = opened === null ? null : offsetAt(text, Number(opened[1]), Number(opened[2]));
  if (/closing tag `/.test(message)) return closingTag(text, offset, openedAt);
  if (openedAt !== null) return unclosed(text, openedAt);
  if (/expression|brace/.test(message)) return brace(text, offset);
  return text[offset] === "<" ? afterLess(text, offset) : anythingElse(offset, says ?? message);
};

/**
 * The tree of a file. The parser stops at its first syntax error; that place is then blanked and the
 * file read again, so that one run names every error. `text` is the file as it could be read.
 */
export const readTree = (source: SourceText): { readonly tree: Tree | null; readonly findings: readonly Finding[]; readonly text: string } => {
  const findings: Finding[] = [];
  let text = source.text;
  while (findings.length < MOST_FAULTS) {
    try {
      return { tree: mdxToMdast(text, { features: { math: true } }), findings, text };
    } catch (error) {
      const { blanks, ...fault } = faultIn(text, error instanceof Error ? error.message : String(error));
      const next = blanks.reduce((sum, [start, end]) => blank(sum, start, end), text);
      findings.push({ source, rule: "syntax", ...fault });
      if (next === text) break;
      text = next;
    }
  }
  return { tree: null, findings, text };
};
