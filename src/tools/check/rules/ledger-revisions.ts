import type { Course } from "../course.ts";
import type { Finding } from "../finding.ts";
import type { LedgerRecord, RevisionRecord } from "../json-file.ts";
import type { CourseRule } from "../rule.ts";

const rule = "revision";

/** A revision on one line, as it is held: its numbers, unit, state and source. */
export const heldText = ({ unit }: LedgerRecord, { value, state, source }: RevisionRecord): string =>
  [...Object.entries(value).map(([part, text]) => `${part} ${text}`), unit, state, source].filter((part) => part !== "").join(", ");

/** Every revision of a course by its pin, as one line. */
export const heldLines = (records: readonly LedgerRecord[]): Readonly<Record<string, string>> =>
  Object.fromEntries(records.flatMap((record) => record.revisions.map((revision) => [`${record.key}@${revision.revision}`, heldText(record, revision)] as const)));

const heldIn = (course: Course): readonly (readonly [string, string])[] => {
  const { value } = course.held;
  return typeof value === "object" && value !== null ? Object.entries(value as Readonly<Record<string, string>>) : [];
};

const edited = (course: Course): readonly Finding[] => {
  const lines = heldLines(course.records);
  return heldIn(course).flatMap(([pin, held]): readonly Finding[] => {
    const now = lines[pin];
    if (now === held) return [];
    const [key, number] = pin.split("@");
    const record = course.records.find((each) => each.key === key);
    const place = record?.revisions.findIndex((each) => String(each.revision) === number) ?? -1;
    const expected = `revision ${number} as it was held (${held}); a correction is a new revision, and the old one gets "replacedBy"`;
    const write = `{ "revision": ${(record?.revisions.length ?? 1) + 1}, "state": "read", "value": { … }, "source": "…", "readIn": "…" }`;
    if (record === undefined || place < 0) {
      const text = course.held.text;
      return [{ source: course.held, offset: Math.max(0, text.indexOf(`"${pin}"`)), rule, found: `"${pin}" is gone from the ledger`, expected, write: `"key": "${key}"` }];
    }
    const span = record.file.located().spanOf(["entries", record.index, "revisions", place]);
    return [{ source: record.file, offset: span.start, rule, found: `"${pin}" was changed: ${now ?? "nothing"}`, expected, write }];
  });
};

const misnumbered = ({ file, index, key, revisions }: LedgerRecord): readonly Finding[] =>
  revisions.flatMap(({ revision }, place): readonly Finding[] => {
    if (revision === place + 1 || !Number.isInteger(revision)) return [];
    const span = file.located().spanOf(["entries", index, "revisions", place, "revision"]);
    return [{ source: file, offset: span.start, rule, found: `"${key}" with revision ${revision} at place ${place + 1}`, expected: "revisions 1, 2, 3 … in their order, the newest last", edits: [{ ...span, text: String(place + 1) }] }];
  });

const unreplaced = ({ file, index, key, revisions }: LedgerRecord): readonly Finding[] =>
  revisions.flatMap(({ replacedBy, revision }, place): readonly Finding[] => {
    const isLast = place === revisions.length - 1;
    const isLater = revisions.some((each) => each.revision === replacedBy && each.revision > revision);
    if (replacedBy === null ? isLast : isLater) return [];
    const path = ["entries", index, "revisions", place];
    // Places are looked up only for a fault: that reads the whole file again.
    const span = file.located().spanOf(path);
    const head = { source: file, rule, offset: span.start };
    if (replacedBy === null) {
      const end = span.start + file.text.slice(span.start, span.end).lastIndexOf("}");
      const at = file.text.slice(0, end).trimEnd().length;
      return [{ ...head, found: `"${key}@${revision}" stands before a newer one without "replacedBy"`, expected: `"replacedBy": ${revision + 1}`, edits: [{ start: at, end: at, text: `, "replacedBy": ${revision + 1}` }] }];
    }
    const own = file.located().spanOf([...path, "replacedBy"]);
    const newest = revisions.at(-1)?.revision ?? revision;
    const expected = isLast ? "the revision that replaces it, or no \"replacedBy\"" : `a later revision of the same entry, such as ${newest}`;
    const lineStart = file.text.lastIndexOf(",", own.start);
    const edits = isLast ? [{ start: lineStart, end: own.start + String(replacedBy).length, text: "" }] : [{ ...own, text: String(newest) }];
    return [{ ...head, offset: own.start, found: `"${key}@${revision}" replaced by ${replacedBy}, which is no later revision`, expected, edits }];
  });

/** Revisions are added and never edited, numbered in their order, and each but the newest names what replaced it. */
export const ledgerRevisions: CourseRule = (course) => [
  ...edited(course),
  ...course.records.filter(({ file }) => file.value !== undefined).flatMap((record) => [...misnumbered(record), ...unreplaced(record)]),
];
