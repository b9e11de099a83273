import type { z } from "zod";
import type { Edit, Finding } from "./finding.ts";
import { jsonFaults } from "./json-form.ts";
import type { JsonFile } from "./json-file.ts";
import { nearest } from "./nearest.ts";
import { LEAVE_OUT, quoted } from "./rule.ts";

/** What a field is, in an author's words, and how it is written. */
export type Help = Readonly<Record<string, readonly [is: string, sample: string]>>;

/** A JSON file with its schema and what to say about each field. */
export interface DataFile {
  readonly rule: string;
  readonly schema: z.ZodType;
  readonly help: Help;
  /** Names of fields that need no help of their own but may be meant. */
  readonly alsoFields?: readonly string[];
  /** What the whole file holds, for a message. */
  readonly whole: string;
  /** A wrong value as it should be written, in JSON; null where it cannot be told. */
  readonly repair: (field: string, written: unknown) => string | null;
}

const unknownKey = (file: JsonFile, data: DataFile, { path, key }: { path: readonly PropertyKey[]; key: string }): Finding => {
  const span = file.located().keySpanOf(path, key);
  const meant = nearest(key, [...Object.keys(data.help), ...(data.alsoFields ?? [])]);
  const head = { source: file, offset: span.start, rule: data.rule, found: `the field "${key}"` };
  return meant === null
    ? { ...head, expected: `only the fields of ${data.whole}`, write: LEAVE_OUT }
    : { ...head, expected: `a known field; the nearest is "${meant}"`, edits: [{ ...span, text: `"${meant}"` }] };
};

const valueAt = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((part, key) => (typeof part === "object" && part !== null ? (part as Record<PropertyKey, unknown>)[key] : undefined), value);

/** The nearest step of a path that there is something to say about. */
const fieldOf = (help: Help, path: readonly PropertyKey[]): string =>
  String(path.findLast((step) => typeof step === "string" && help[step] !== undefined) ?? Object.keys(help)[0] ?? "");

const wrongValue = (file: JsonFile, data: DataFile, path: readonly PropertyKey[]): Finding => {
  const field = fieldOf(data.help, path);
  const depth = path.lastIndexOf(field);
  const own = depth < 0 ? path : path.slice(0, depth + 1);
  const written = valueAt(file.value, own);
  const [is, sample] = data.help[field] ?? ["", ""];
  const span = file.located().spanOf(written === undefined ? own.slice(0, -1) : own);
  const head = { source: file, offset: span.start, rule: data.rule, expected: is };
  if (written === undefined) return { ...head, found: `no field "${field}"`, write: sample };
  const text = file.text.slice(span.start, span.end).trimEnd();
  const mended = data.repair(field, written);
  const edits: readonly Edit[] = mended === null ? [] : [{ start: span.start, end: span.start + text.length, text: mended }];
  return { ...head, found: `${field}: ${quoted(text)}`, ...(edits.length > 0 ? { edits } : { write: sample }) };
};

/** Everything in which a JSON file departs from its schema, each with the line to write. */
export const schemaFindings = (file: JsonFile, data: DataFile): readonly Finding[] => {
  const faults = jsonFaults(file, data.rule);
  if (file.missing || file.value === undefined) return faults;
  const result = data.schema.safeParse(file.value);
  const issues = result.success ? [] : result.error.issues;
  const findings = issues.flatMap((issue): readonly Finding[] =>
    issue.code === "unrecognized_keys" ? issue.keys.map((key) => unknownKey(file, data, { path: issue.path, key })) : [wrongValue(file, data, issue.path)],
  );
  const places = new Map(findings.map((finding) => [`${finding.offset} ${finding.found}`, finding]));
  return [...faults, ...places.values()];
};
