import { type Course, idsIn } from "../course.ts";
import type { Finding, SourceText } from "../finding.ts";
import type { JsonFile } from "../json-file.ts";
import { factsOf } from "../matter.ts";
import type { CourseRule } from "../rule.ts";

interface Named {
  readonly kind: string;
  readonly name: string;
  readonly source: SourceText;
  /** Looked up only for a name that is reported. */
  readonly offset: () => number;
  /** Length of the name as it stands in the file; 0 where the name is that of the file itself. */
  readonly width: number;
}

const idsOf = (file: JsonFile, kind: string): readonly Named[] =>
  idsIn(file).map((name, index) => ({
    kind,
    name,
    source: file,
    offset: () => file.located().spanOf([index, "id"]).start + 1,
    width: name.length,
  }));

const namesIn = (course: Course): readonly Named[] => [
  ...course.files.map((file) => ({ kind: `${file.kind} file`, name: file.slug, source: file, offset: () => 0, width: 0 })),
  ...course.files.flatMap((file) =>
    factsOf(file).objectives.map(({ id, start }) => ({ kind: "objective", name: id, source: file, offset: () => start, width: id.length })),
  ),
  ...course.files.filter((file) => file.kind === "module" && factsOf(file).code !== "").map((file) => ({
    kind: "module code",
    name: factsOf(file).code,
    source: file,
    offset: () => file.matter?.located.spanOf(["code"]).start ?? 0,
    width: 0,
  })),
  ...course.records.map(({ file, index, key }) => ({
    kind: "ledger key",
    name: key,
    source: file,
    offset: () => file.located().spanOf(["entries", index, "key"]).start + 1,
    width: key.length,
  })),
  ...idsOf(course.sources, "source"),
  ...idsOf(course.cautions, "caution"),
];

const clash = (named: Named, first: Named): Finding => {
  const offset = named.offset();
  const twice = named.name === first.name;
  const found = twice ? `${named.kind} "${named.name}", which ${first.source.file} has already` : `${named.kind} "${named.name}" beside "${first.name}"`;
  const expected = twice ? "each name once" : "names that differ in more than capital letters; the site keeps one page of two such files";
  const head = { source: named.source, offset, rule: "same name", found, expected };
  const other = `${named.name.toLowerCase()}-2`;
  return named.width === 0
    ? { ...head, write: named.kind.endsWith("file") ? `a file named ${other}.mdx` : `code: another code than ${named.name}` }
    : { ...head, edits: [{ start: offset, end: offset + named.width, text: other }] };
};

/** No name is given twice, and no two differ only in capital letters: the site would silently lose one. */
export const sameName: CourseRule = (course) => {
  const seen = new Map<string, Named>();
  return namesIn(course).flatMap((named) => {
    const folded = `${named.kind} ${named.name.toLowerCase()}`;
    const first = seen.get(folded);
    if (first === undefined) seen.set(folded, named);
    return first === undefined ? [] : [clash(named, first)];
  });
};
