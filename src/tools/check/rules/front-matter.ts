import type { z } from "zod";
import { MEASURABLE_VERBS, moduleSchema } from "../../../schemas/module.ts";
import type { Finding } from "../finding.ts";
import type { Located } from "../located.ts";
import type { MdxFile } from "../mdx-file.ts";
import { anyOf, nearest } from "../nearest.ts";
import { type FileRule, LEAVE_OUT, quoted } from "../rule.ts";
import { FIELDS, fieldName, fieldsUnder } from "./front-matter-fields.ts";

const rule = "front matter";

const fieldsAnywhere: ReadonlySet<string> = new Set(Object.keys(FIELDS).flatMap((name) => name.split(".").at(-1) ?? []));

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

const valueAt = (value: unknown, path: Path): unknown =>
  path.reduce<unknown>((part, key) => (typeof part === "object" && part !== null ? (part as Record<PropertyKey, unknown>)[key] : undefined), value);

/** A field left out: the whole line where it starts one, otherwise the field with the comma before it. */
const without = (file: MdxFile, start: number, end: number): Pick<Finding, "write" | "edits"> => {
  const line = file.text.slice(file.text.lastIndexOf("\n", start - 1) + 1, start);
  if (line.trim() === "") return { write: LEAVE_OUT };
  const comma = /,?\s*$/.exec(line)?.[0].length ?? 0;
  return { edits: [{ start: start - comma, end: start + file.text.slice(start, end).trimEnd().length, text: "" }] };
};

/** A field that is not known, with the known field that was probably meant. */
const unknownField = (file: MdxFile, located: Located, path: Path, key: string): Finding => {
  const span = located.keySpanOf(path, key);
  const known = fieldsUnder(path);
  const meant = nearest(key, known);
  const head = { source: file, offset: span.start, rule, found: `the field "${key}"` };
  return meant === null
    ? { ...head, expected: `one of the fields ${anyOf(known)}`, ...without(file, span.start, located.spanOf([...path, key]).end) }
    : { ...head, expected: `a known field; the nearest is "${meant}"`, edits: [{ ...span, text: meant }] };
};

const unknownFields = (file: MdxFile, located: Located, issue: Issue): readonly Finding[] =>
  issue.code === "unrecognized_keys" ? issue.keys.map((key) => unknownField(file, located, issue.path, key)) : [];

/** A value that can stand in the wrong one's place: the nearest allowed word, the number without quotes, or a sample. */
const replacement = (written: unknown, name: string): string => {
  const text = String(written);
  const words: Readonly<Record<string, readonly string[]>> = {
    "objectives.*.verb": MEASURABLE_VERBS,
    "review.state": ["none", "reviewed"],
    language: ["en"],
  };
  const allowed = words[name] ?? (name.startsWith("roles.") ? ["core", "optional"] : []);
  const digits = /^\s*M?-?\s*(\d{1,2})\s*$/i.exec(text)?.[1];
  if (name === "minutes" && /^[1-9]\d*$/.test(text)) return text;
  if (name === "code" && digits !== undefined) return `M${digits.padStart(2, "0")}`;
  if (name === "needs" && /M\d\d|DX/.test(text)) return `[${(text.match(/M\d\d|DX/g) ?? []).join(", ")}]`;
  if (name === "objectives.*.id" && /^[\w -]+$/.test(text)) return text.trim().toLowerCase().replace(/[ _]+/g, "-");
  return nearest(text, allowed) ?? FIELDS[name]?.instead ?? text;
};

const helpFor = (path: Path): { readonly name: string; readonly path: Path } => {
  const name = fieldName(path);
  return FIELDS[name] === undefined && path.length > 1 ? helpFor(path.slice(0, -1)) : { name, path };
};

const wrongValue = (file: MdxFile, located: Located, issue: Issue): Finding => {
  const { name, path } = helpFor(issue.path);
  const help = FIELDS[name];
  const written = valueAt(located.value, path);
  const key = String(path.at(-1) ?? "front matter");
  const expected = help?.is ?? issue.message;
  const span = path.length === 1 && written === undefined ? { start: 0, end: 0 } : located.spanOf(path);
  const head = { source: file, offset: span.start, rule, expected };
  if (written === undefined) return { ...head, found: `no field "${key}"`, write: help?.sample ?? key };
  const text = file.text.slice(span.start, span.end);
  const found = `${key}: ${quoted(text) || "nothing"}`;
  return { ...head, found, edits: [{ start: span.start, end: span.start + text.trimEnd().length, text: replacement(written, name) }] };
};

/** The quote or bracket that the reader missed. */
const missingClose = (message: string): string | null => {
  if (message.includes('Missing closing "quote')) return '"';
  if (message.includes("Missing closing 'quote")) return "'";
  return /end with a ([\]}])/.exec(message)?.[1] ?? null;
};

/** A line that lacks the colon behind its field, or the space behind a hyphen. */
const missingMark = (line: string): { readonly expected: string; readonly text: string } | null => {
  const [, lead = "", name = "", rest = ""] = /^(\s*(?:- )?)(\w+)\s+([^:\s{[][^:]*)$/.exec(line) ?? [];
  if (fieldsAnywhere.has(name)) return { expected: `a colon and a space behind "${name}"`, text: `${lead}${name}: ${rest}` };
  const tight = /^(\s*(?:- )?)(\w+):([^\s].*)$/.exec(line);
  if (tight !== null && fieldsAnywhere.has(tight[2] ?? "")) return { expected: `a space behind the colon of "${tight[2]}"`, text: `${tight[1]}${tight[2]}: ${tight[3]}` };
  const hyphen = /^(\s*)-([{\w].*)$/.exec(line);
  return hyphen === null ? null : { expected: "a space behind the hyphen of a list", text: `${hyphen[1]}- ${hyphen[2]}` };
};

/** The first line of front matter in which a mark is missing: what the reader says of it is often said of the next. */
const markMissing = (file: MdxFile): Finding | null => {
  const matter = file.matter;
  if (matter === null) return null;
  let start = matter.start;
  for (const line of matter.text.split("\n")) {
    const fault = missingMark(line.replace(/\r$/, ""));
    if (fault !== null) return { source: file, offset: start, rule, found: quoted(line), expected: fault.expected, edits: [{ start, end: start + line.length, text: fault.text }] };
    start += line.length + 1;
  }
  return null;
};

/** The last line up to a place that opens a bracket and does not close it: the reader notices it only on the next line. */
const openLine = (file: MdxFile, closing: string, upTo: number): { readonly start: number; readonly stop: number; readonly text: string } | null => {
  const opening = { "]": "[", "}": "{" }[closing];
  if (file.matter === null || opening === undefined) return null;
  let start = file.matter.start;
  let last = null;
  for (const line of file.text.slice(start, upTo).split("\n")) {
    const text = line.replace(/\r$/, "");
    if (text.split(opening).length > text.split(closing).length) last = { start, stop: start + text.trimEnd().length, text };
    start += line.length + 1;
  }
  return last;
};

/** Errors of the form itself, before any field can be looked at. */
const formError = (file: MdxFile, error: Located["errors"][number]): Finding => {
  const start = file.text.lastIndexOf("\n", error.start - 1) + 1;
  const stop = file.text.indexOf("\n", start);
  const line = file.text.slice(start, stop);
  const colon = /^(\s*(?:- )?\w+:\s+)([^"'[{].*:.*)$/.exec(line);
  const head = { source: file, offset: error.start, rule, found: quoted(line) };
  if (colon !== null) {
    const text = `${colon[1]}"${(colon[2] ?? "").replaceAll('"', "'").trimEnd()}"`;
    return { ...head, expected: "a text with a colon in it between straight quotes", edits: [{ start, end: stop, text }] };
  }
  const closing = missingClose(error.message);
  const open = closing === null ? null : openLine(file, closing, stop);
  if (closing !== null && open !== null) return { ...head, offset: open.start, found: quoted(open.text), expected: `a closing ${closing}`, edits: [{ start: open.stop, end: open.stop, text: closing }] };
  if (closing !== null) return { ...head, expected: `a closing ${closing}`, edits: [{ start: stop, end: stop, text: closing }] };
  if (error.code === "DUPLICATE_KEY") return { ...head, expected: "each field once", write: LEAVE_OUT };
  if (line.includes("\t")) {
    return { ...head, expected: "spaces, not tabs, before a field", edits: [{ start, end: stop, text: line.replaceAll("\t", "  ") }] };
  }
  const field = FIELDS[/^(\w+):/.exec(line)?.[1] ?? ""];
  return { ...head, expected: `front matter that can be read (${error.message.split(" at line")[0]?.replace(/\.$/, "")})`, write: field?.sample ?? line };
};

const misspelt = (issues: readonly Issue[]): ReadonlySet<string> =>
  new Set(
    issues.flatMap((issue) =>
      issue.code === "unrecognized_keys"
        ? issue.keys.flatMap((key) => {
            const meant = nearest(key, fieldsUnder(issue.path));
            return meant === null ? [] : [fieldName([...issue.path, meant])];
          })
        : [],
    ),
  );

/** The front matter of a module holds to the schema; a misspelt field is named once, not also as missing. */
export const frontMatter: FileRule = (file) => {
  if (file.kind !== "module") return [];
  if (file.matter === null) {
    const sample = Object.entries(FIELDS).filter(([name]) => !name.includes(".")).map(([, help]) => help.sample);
    return [{ source: file, offset: 0, rule, found: "no front matter", expected: "the fields of a module between two lines of three dashes, at the head of the file", write: ["---", ...sample, "---"].join("\n") }];
  }
  const { located } = file.matter;
  const isBroken = located.errors.length > 0 || typeof located.value !== "object" || located.value === null;
  const missing = isBroken ? markMissing(file) : null;
  if (missing !== null) return [missing];
  if (located.errors.length > 0) return located.errors.slice(0, 1).map((error) => formError(file, error));
  const result = moduleSchema.safeParse(located.value ?? {});
  const issues = result.success ? [] : result.error.issues;
  const meant = misspelt(issues);
  const values = new Map(
    issues
      .filter((issue) => issue.code !== "unrecognized_keys" && !meant.has(fieldName(issue.path)))
      .toReversed()
      .map((issue) => [issue.path.join("."), issue]),
  );
  return [...issues.flatMap((issue) => unknownFields(file, located, issue)), ...[...values.values()].toReversed().map((issue) => wrongValue(file, located, issue))];
};
