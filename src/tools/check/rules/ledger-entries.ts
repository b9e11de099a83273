import type { Finding } from "../finding.ts";
import type { JsonFile, LedgerRecord } from "../json-file.ts";
import { recordsIn } from "../json-file.ts";
import type { CourseRule } from "../rule.ts";

const rule = "ledger";
/** From this age on a population is one of adults. */
const ADULT_FROM_YEARS = 18;

const populationFaults = ({ file, index, key, ages, adult }: LedgerRecord): readonly Finding[] => {
  if (ages === null) return [];
  const at = (part: readonly PropertyKey[]) => file.located().spanOf(["entries", index, "population", ...part]);
  const head = { source: file, rule };
  if (ages.from > ages.to) {
    const span = at(["ages"]);
    return [{ ...head, offset: span.start, found: `"${key}" in ages ${ages.from} to ${ages.to}`, expected: "the younger age first", edits: [{ ...span, text: `{ "from": ${ages.to}, "to": ${ages.from} }` }] }];
  }
  const isWrong = adult ? ages.to < ADULT_FROM_YEARS : ages.from >= ADULT_FROM_YEARS;
  if (!isWrong) return [];
  const span = at(["adult"]);
  const expected = adult ? "false: these are children" : "true: nobody in it was a child, and the value carries caution C9";
  return [{ ...head, offset: span.start, found: `"adult": ${adult} of "${key}", aged ${ages.from} to ${ages.to}`, expected, edits: [{ ...span, text: String(!adult) }] }];
};

const topicFault = (file: JsonFile): readonly Finding[] => {
  const topic = (file.value as { readonly topic?: unknown } | undefined)?.topic;
  const name = /([^/]+)\.json$/.exec(file.file)?.[1] ?? "";
  if (typeof topic !== "string" || topic === name) return [];
  const span = file.located().spanOf(["topic"]);
  return [{ source: file, offset: span.start, rule, found: `topic "${topic}" in a file named ${name}.json`, expected: "the name of the file, by which its reader finds it", edits: [{ ...span, text: `"${name}"` }] }];
};

const readWhere = ({ file, index, key, revisions }: LedgerRecord): readonly Finding[] => {
  const entry = (file.value as { readonly entries?: readonly { readonly revisions?: readonly { readonly readIn?: unknown }[] }[] }).entries?.[index];
  return revisions.flatMap(({ state, source }, place): readonly Finding[] => {
    const readIn = entry?.revisions?.[place]?.readIn;
    if (state !== "read" || source === "" || (readIn !== undefined && readIn !== null)) return [];
    const span = file.located().spanOf(["entries", index, "revisions", place, "source"]);
    return [{ source: file, offset: span.start, rule, found: `"${key}" is read, without the place where it was read`, expected: "the table, figure or page of the source, so that another person finds it", edits: [{ start: span.end, end: span.end, text: ', "readIn": "table 1"' }] }];
  });
};

/** Ages in their order, adults told from children, the topic named as its file, and the place where a number was read. */
export const ledgerEntries: CourseRule = (course) =>
  course.ledger.filter(({ value }) => value !== undefined).flatMap((file) => [
    ...topicFault(file),
    ...recordsIn(file).flatMap((record) => [...populationFaults(record), ...readWhere(record)]),
  ]);
