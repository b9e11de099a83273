import type { Course } from "../course.ts";
import type { Finding } from "../finding.ts";
import { type LedgerRecord, recordNamed } from "../json-file.ts";
import type { MdxFile, Tag } from "../mdx-file.ts";
import type { FileRule } from "../rule.ts";

const rule = "age outside the study";

const holds = (record: LedgerRecord, age: number): boolean => record.ages !== null && record.ages.from <= age && age <= record.ages.to;

const agesOf = ({ ages }: LedgerRecord): string => `${ages?.from} to ${ages?.to} years`;

const outsideNum = (file: MdxFile, tag: Tag, age: number, course: Course): readonly Finding[] => {
  const of = tag.attributes.find(({ name }) => name === "of");
  const { record } = recordNamed(course.records, of?.value ?? "");
  if (of === undefined || record === undefined || record.ages === null || holds(record, age)) return [];
  const group = record.key.split(".")[0];
  const other = course.records.find((each) => each.key.split(".")[0] === group && holds(each, age));
  const head = { source: file, offset: tag.start, rule, found: `"${record.key}" at the age of ${age}` };
  const expected = `an age of ${agesOf(record)}, in which it was measured`;
  return [other === undefined
    ? { ...head, expected: `${expected}; no entry of "${group}" was measured at ${age}`, write: "a sentence that says that no value was found for this age" }
    : { ...head, expected: `${expected}, or "${other.key}"`, edits: [{ start: of.start, end: of.end, text: `of="${other.key}"` }] }];
};

const outsideAsk = (file: MdxFile, tag: Tag, age: number, course: Course): readonly Finding[] => {
  const name = tag.attributes.find((attribute) => attribute.name === "family")?.value;
  const reads = course.families.find(({ id }) => id === name)?.reads ?? [];
  const records = reads.flatMap((pin) => recordNamed(course.records, pin).record ?? []).filter(({ ages }) => ages !== null);
  if (records.length === 0 || records.some((record) => holds(record, age))) return [];
  const from = Math.min(...records.map(({ ages }) => ages?.from ?? 0));
  const to = Math.max(...records.map(({ ages }) => ages?.to ?? 0));
  const attribute = tag.attributes.find((each) => each.name === "age");
  const edits = attribute === undefined ? [] : [{ start: attribute.start, end: attribute.end, text: `age={${age < from ? from : to}}` }];
  return [{ source: file, offset: tag.start, rule, found: `family "${name}" at the age of ${age}`, expected: `an age that the studies behind it measured: ${from} to ${to} years`, edits }];
};

/** A value is shown, and a question asked, only for an age at which somebody measured it. */
export const population: FileRule = (file, course) =>
  file.tags.flatMap((tag) => {
    const age = Number(tag.attributes.find(({ name, form }) => name === "age" && form === "expression")?.value);
    if (Number.isNaN(age)) return [];
    return tag.name === "Num" ? outsideNum(file, tag, age, course) : outsideAsk(file, tag, age, course);
  });
