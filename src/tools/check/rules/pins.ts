import { type Course, type FamilyFacts, idsIn } from "../course.ts";
import type { Finding } from "../finding.ts";
import { recordNamed } from "../json-file.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";
import { placeOfFamily } from "./served-objectives.ts";

const pinFault = (course: Course, family: FamilyFacts, pin: string): readonly Finding[] => {
  const { record, revision } = recordNamed(course.records, pin);
  const head = { ...placeOfFamily(family, pin), rule: "pinned number", found: `family "${family.id}" reads "${pin}"` };
  const pins = course.records.flatMap(({ key, revisions }) => revisions.map((each) => `${key}@${each.revision}`));
  if (revision === undefined || !pin.includes("@")) {
    const meant = nearest(pin, pins);
    const expected = meant === null ? "a ledger key with its revision; none is near" : `a ledger key with its revision; the nearest is "${meant}"`;
    return [{ ...head, expected, write: `reads: ["${meant ?? "key@1"}"]` }];
  }
  if (revision.replacedBy === null) return [];
  const now = `${record?.key}@${revision.replacedBy}`;
  return [{ ...head, expected: `"${now}", which replaced it, in a new version of the family`, write: `reads: ["${now}"]` }];
};

const sourceFault = (course: Course, family: FamilyFacts, source: string): readonly Finding[] => {
  const known = idsIn(course.sources);
  if (known.includes(source)) return [];
  const meant = nearest(source, known);
  const expected = meant === null ? "a key of content/sources.json; none is near" : `a key of content/sources.json; the nearest is "${meant}"`;
  return [{ ...placeOfFamily(family, source), rule: "unknown source", found: `family "${family.id}" cites "${source}"`, expected, write: `source: "${meant ?? "author-2020"}"` }];
};

/** A source that is no pair of work and entry: mostly its key alone, in quotes. */
const formFault = (family: FamilyFacts, written: unknown): readonly Finding[] => {
  if (typeof (written as { source?: unknown } | null)?.source === "string") return [];
  const key = typeof written === "string" ? written : "author-2020";
  return [{ ...placeOfFamily(family, key), rule: "source", found: `family "${family.id}" cites ${JSON.stringify(written) ?? "nothing"}`, expected: "the work and the ledger entry that is cited from it", write: `sources: [{ source: "${key}", entry: "${family.reads?.[0] ?? "key@1"}" }],` }];
};

const worksOf = ({ sources = [] }: FamilyFacts): readonly string[] => [...new Set(sources.map(({ source }) => source).filter((source) => typeof source === "string"))];

/** What a family reads from the ledger exists and has not been replaced; what it cites is in the list. */
export const pins: CourseRule = (course) =>
  course.families.flatMap((family) => [
    ...(family.reads ?? []).flatMap((pin) => pinFault(course, family, pin)),
    ...(family.sources ?? []).flatMap((written) => formFault(family, written)),
    ...worksOf(family).flatMap((source) => sourceFault(course, family, source)),
  ]);
