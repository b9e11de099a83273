import type { Edit, Finding } from "./finding.ts";
import type { JsonFile } from "./json-file.ts";
import { LEAVE_OUT, quoted } from "./rule.ts";

/** What is wrong at a place of a text that is no JSON, and how it is mended. */
interface Form {
  readonly offset: number;
  readonly expected: string;
  readonly edits?: readonly Edit[];
  readonly write?: string;
}

const TOKEN = /"(?:[^"\\\n]|\\.)*"|[{}[\]:,]/g;

interface Key {
  readonly key: string;
  readonly offset: number;
}

/** Every key of a text with the place where its object opens. */
const keysIn = (text: string): readonly (Key & { readonly inside: number })[] => {
  const open: number[] = [];
  const keys: (Key & { readonly inside: number })[] = [];
  let word: Key = { key: "", offset: 0 };
  for (const { 0: token, index } of text.matchAll(TOKEN)) {
    if (token === "{" || token === "[") open.push(index);
    else if (token === "}" || token === "]") open.pop();
    else if (token === ":") keys.push({ ...word, inside: open.at(-1) ?? 0 });
    else word = { key: token, offset: index };
  }
  return keys;
};

/** Keys that stand twice in one object: the reader would keep the last and lose the first without a word. */
const twiceIn = (text: string): readonly Key[] => {
  const seen = new Set<string>();
  return keysIn(text).filter(({ key, inside }) => {
    const name = `${inside} ${key}`;
    return seen.has(name) || !seen.add(name);
  });
};

const lineEndAt = (text: string, from: number): number => {
  const end = text.indexOf("\n", from);
  return end < 0 ? text.length : end;
};

/** Offset where the reader stopped; the end of the text where it says none. */
const stoppedAt = (text: string): number => {
  try {
    JSON.parse(text);
    return text.length;
  } catch (error) {
    const at = /position (\d+)/.exec(error instanceof Error ? error.message : "")?.[1];
    return at === undefined ? text.length : Number(at);
  }
};

/** Brackets that are still open at the end, innermost first, as they must be closed. */
const stillOpen = (text: string): string => {
  const open: string[] = [];
  for (const { 0: token } of text.matchAll(TOKEN)) {
    if (token === "{") open.unshift("}");
    if (token === "[") open.unshift("]");
    if (token === "}" || token === "]") open.shift();
  }
  return open.join("");
};

const quotesMended = (text: string, offset: number): Form => {
  const start = text.lastIndexOf("\n", offset - 1) + 1;
  const end = lineEndAt(text, offset);
  const line = text.slice(start, end);
  const mended = line.replace(/[“”„]/g, '"').replace(/'([^'"]*)'/g, '"$1"').replace(/([{,]\s*|^\s*)([A-Za-z]\w*)(\s*:)/g, '$1"$2"$3');
  const edits = mended === line ? [] : [{ start, end, text: mended }];
  return { offset, expected: 'straight double quotes around every name and text: "…"', ...(edits.length > 0 ? { edits } : { write: quoted(line) }) };
};

const openQuote = (text: string, offset: number): Form => {
  const end = lineEndAt(text, offset);
  const start = text.lastIndexOf("\n", end - 1) + 1;
  const bare = text.slice(start, end).replace(/,?\s*$/, "");
  const edits = [{ start: start + bare.length, end: start + bare.length, text: '"' }];
  return { offset: start + bare.length, expected: 'a closing quote: "', edits };
};

/** The fault at the place where the reader stopped. */
const formAt = (text: string, offset: number): Form => {
  const before = text.slice(0, offset).trimEnd();
  const letter = text[offset] ?? "";
  const last = before.length - 1;
  if (before.endsWith(",") && (letter === "}" || letter === "]")) return { offset: last, expected: `no comma before ${letter}`, edits: [{ start: last, end: last + 1, text: "" }] };
  if (letter === "/") return { offset, expected: "no comment; JSON has none", write: LEAVE_OUT };
  if (letter === "" || offset >= text.trimEnd().length) {
    const closing = stillOpen(text);
    return { offset: last, expected: `${closing} at the end`, edits: [{ start: before.length, end: before.length, text: closing }] };
  }
  const inner = stillOpen(before)[0];
  if ("}]".includes(letter) && inner !== undefined && inner !== letter) return { offset, expected: `${inner} before ${letter}`, edits: [{ start: before.length, end: before.length, text: ` ${inner}` }] };
  if (/["{[\d]/.test(letter) && /["}\]\dle]$/.test(before)) return { offset: last, expected: "a comma between two fields", edits: [{ start: before.length, end: before.length, text: "," }] };
  if (letter === "\n" || letter === "\r") return openQuote(text, offset);
  return quotesMended(text, offset);
};

/** Faults of form in a JSON file: text that cannot be read, or a field written twice in one place. */
export const jsonFaults = (file: JsonFile, rule: string): readonly Finding[] => {
  if (file.missing) return [];
  if (file.value === undefined) {
    const form = formAt(file.text, stoppedAt(file.text));
    const start = file.text.lastIndexOf("\n", form.offset - 1) + 1;
    return [{ source: file, rule, found: `text that is no JSON: ${quoted(file.text.slice(start, lineEndAt(file.text, form.offset)))}`, ...form }];
  }
  return twiceIn(file.text).map(({ key, offset }) => ({
    source: file,
    offset,
    rule,
    found: `the field ${key} twice in one place`,
    expected: "each field once; only the last would be read",
    write: LEAVE_OUT,
  }));
};
