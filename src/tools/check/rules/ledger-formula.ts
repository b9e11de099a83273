import type { Finding } from "../finding.ts";
import { type LedgerRecord, recordNamed } from "../json-file.ts";
import { resultOf } from "../formula.ts";
import type { CourseRule } from "../rule.ts";

const rule = "derived number";

const placesIn = (text: string): number => text.split(".")[1]?.length ?? 0;

/** A derived number is what its formula gives, to the digits that it shows. */
const wrongResults = (record: LedgerRecord, records: readonly LedgerRecord[]): readonly Finding[] =>
  record.revisions.flatMap(({ state, formula, parents, value }, place): readonly Finding[] => {
    const text = value["value"];
    const named = parents.flatMap((parent) => recordNamed(records, parent).revision ?? []);
    if (state !== "derived" || text === undefined || named.length < parents.length) return [];
    const result = resultOf(formula, named);
    const places = placesIn(text);
    // Half a step of the last digit, and a little for the digits that the parents do not show.
    if (result === null || Math.abs(result - Number(text)) <= 0.51 / 10 ** places) return [];
    const span = record.file.located().spanOf(["entries", record.index, "revisions", place, "value", "value"]);
    return [{
      source: record.file,
      offset: span.start,
      rule,
      found: `"${record.key}" is ${text}`,
      expected: `${result.toFixed(places)}, which is what "${formula}" gives from ${parents.join(" and ")}`,
      edits: [{ ...span, text: `"${result.toFixed(places)}"` }],
    }];
  });

const bareKey = (pin: string): string => pin.split("@")[0] ?? pin;

/** Keys that a key is derived from, and theirs, and so on. */
const ancestors = (key: string, records: readonly LedgerRecord[], seen: Set<string> = new Set()): ReadonlySet<string> => {
  const parents = records.find((record) => record.key === key)?.revisions.flatMap((revision) => revision.parents.map(bareKey)) ?? [];
  for (const parent of parents) {
    if (seen.has(parent)) continue;
    seen.add(parent);
    ancestors(parent, records, seen);
  }
  return seen;
};

const circles = (record: LedgerRecord, records: readonly LedgerRecord[]): readonly Finding[] => {
  if (!record.revisions.some(({ parents }) => parents.length > 0) || !ancestors(record.key, records).has(record.key)) return [];
  const place = record.revisions.findIndex(({ parents }) => parents.length > 0);
  const span = record.file.located().spanOf(["entries", record.index, "revisions", place, "parents"]);
  return [{
    source: record.file,
    offset: span.start,
    rule,
    found: `"${record.key}" is derived from itself, by ${record.revisions[place]?.parents.join(" and ")}`,
    expected: "parents that were measured, or derived from what was",
    write: '"parents": ["zone-width.8-10@1"]',
  }];
};

/** A derived number equals its formula, and no number is derived from itself. */
export const ledgerFormula: CourseRule = (course) =>
  course.records.filter(({ file }) => file.value !== undefined).flatMap((record) => [...wrongResults(record, course.records), ...circles(record, course.records)]);
