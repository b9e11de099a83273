import { idsIn } from "../course.ts";
import type { Finding } from "../finding.ts";
import type { JsonFile } from "../json-file.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";

/** States in which a number was seen in print and so has a source of its own. */
const NEED_A_SOURCE: ReadonlySet<string> = new Set(["read", "quoted"]);

const withoutSource = (file: JsonFile, path: readonly PropertyKey[], { key, state }: { key: string; state: string }): Finding => ({
  source: file,
  offset: file.located().spanOf(path).start,
  rule: "missing source",
  found: `"${key}" in state "${state}" without a source`,
  expected: "the key of the paper in content/sources.json",
  write: '"source": "author-2020"',
});

const unknownSource = (file: JsonFile, path: readonly PropertyKey[], { source, known }: { source: string; known: readonly string[] }): Finding => {
  const span = file.located().spanOf([...path, "source"]);
  const meant = nearest(source, known);
  const head = { source: file, offset: span.start, rule: "unknown source", found: `"${source}"` };
  return meant === null
    ? { ...head, expected: "a key of content/sources.json; none is near", write: `{ "id": "${source}", … } in content/sources.json` }
    : { ...head, expected: `a key of content/sources.json; the nearest is "${meant}"`, edits: [{ ...span, text: `"${meant}"` }] };
};

/** A number that was read has its source, and every source named is in the list. */
export const ledgerSources: CourseRule = (course) => {
  const known = idsIn(course.sources);
  return course.records.flatMap(({ file, index, key, revisions }) =>
    revisions.flatMap(({ source, state }, place): readonly Finding[] => {
      const path = ["entries", index, "revisions", place];
      if (source === "") return NEED_A_SOURCE.has(state) ? [withoutSource(file, path, { key, state })] : [];
      return known.includes(source) ? [] : [unknownSource(file, path, { source, known })];
    }),
  );
};
