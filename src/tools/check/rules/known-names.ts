import { type Course, idsIn, termsOf } from "../course.ts";
import type { Finding } from "../finding.ts";
import { recordNamed } from "../json-file.ts";
import type { MdxFile, Tag } from "../mdx-file.ts";
import { alike, anyOf, nearest } from "../nearest.ts";
import { isUnitId, UNITS, unitNamed } from "../../../engine/quantity/units.ts";
import type { FileRule } from "../rule.ts";

interface NameRule {
  readonly tag: string;
  readonly attribute: string;
  readonly rule: string;
  readonly where: string;
  readonly names: (course: Course) => readonly string[];
  readonly isKnown: (course: Course, name: string) => boolean;
}

const among = (names: (course: Course) => readonly string[]): Pick<NameRule, "names" | "isKnown"> => ({
  names,
  isKnown: (course, name) => names(course).includes(name),
});

/** Attributes that name something which stands elsewhere. */
const NAME_RULES: readonly NameRule[] = [
  {
    tag: "Num",
    attribute: "of",
    rule: "unknown ledger key",
    where: "a key of content/ledger",
    names: (course) => course.records.flatMap(({ key, revisions }) => [key, ...revisions.map((each) => `${key}@${each.revision}`)]),
    isKnown: (course, name) => recordNamed(course.records, name).revision !== undefined,
  },
  { tag: "Ask", attribute: "family", rule: "unknown family", where: "the name of a question family in src/bank", ...among((course) => course.families.map(({ id }) => id)) },
  { tag: "Term", attribute: "of", rule: "unknown term", where: "an id of content/glossary.json", ...among(termsOf) },
  { tag: "Caution", attribute: "id", rule: "unknown caution", where: "an id of content/cautions.json", ...among((course) => idsIn(course.cautions)) },
  { tag: "Ours", attribute: "unit", rule: "unknown unit", where: "a unit of src/engine/quantity/units.ts", names: () => Object.keys(UNITS), isKnown: (_, name) => isUnitId(name) },
];

/** What may be meant where nothing is near: all units, else names that share a word. A value that was guessed would be pasted in. */
const mayBe = (from: NameRule, written: string, course: Course): string => {
  const names = from.names(course);
  if (from.rule === "unknown unit") return `none is near; there are ${anyOf(names)}`;
  const found = alike(written, names);
  return found.length === 0 ? "none is near" : `none is near; with a word of it: ${found.join(", ")}`;
};

const unknownName = (file: MdxFile, tag: Tag, from: NameRule, course: Course): readonly Finding[] => {
  const attribute = tag.attributes.find(({ name, form }) => name === from.attribute && form === "text");
  if (attribute === undefined || from.isKnown(course, attribute.value)) return [];
  const meant = (from.rule === "unknown unit" ? unitNamed(attribute.value) : null) ?? nearest(attribute.value, from.names(course));
  const start = attribute.end - 1 - attribute.value.length;
  const head = { source: file, offset: attribute.start, rule: from.rule, found: `"${attribute.value}"` };
  return [meant === null
    ? { ...head, expected: `${from.where}; ${mayBe(from, attribute.value, course)}`, write: `${file.text.slice(tag.start, start)}…${file.text.slice(attribute.end - 1, tag.stop)}` }
    : { ...head, expected: `${from.where}; the nearest is "${meant}"`, edits: [{ start, end: attribute.end - 1, text: meant }] }];
};

/** What a tag names exists: ledger key, family, term, caution, unit. */
export const knownNames: FileRule = (file, course) =>
  file.tags.flatMap((tag) =>
    NAME_RULES.filter((each) => each.tag === tag.name).flatMap((each) => unknownName(file, tag, each, course)),
  );
