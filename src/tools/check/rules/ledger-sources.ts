import { idsIn } from "../course.ts";
import type { Finding } from "../finding.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";

/** States in which a number was seen in print and so has a source of its own. */
const NEED_A_SOURCE: ReadonlySet<string> = new Set(["read", "quoted"]);

/** A number that was read has its source, and every source named is in the list. */
export const ledgerSources: CourseRule = (course) => {
  const known = idsIn(course.sources);
  return course.records.flatMap(({ file, index, key, revisions }) =>
    revisions.flatMap(({ source, state }, place): readonly Finding[] => {
      if (source === "" ? !NEED_A_SOURCE.has(state) : known.includes(source)) return [];
      const path = ["entries", index, "revisions", place];
      const span = file.located().spanOf(source === "" ? path : [...path, "source"]);
      const meant = source === "" ? null : nearest(source, known);
      const head = { source: file, offset: span.start, rule: source === "" ? "missing source" : "unknown source" };
      if (source === "") return [{ ...head, found: `"${key}" in state "${state}" without a source`, expected: "the key of the paper in content/sources.json", write: '"source": "author-2020"' }];
      const expected = meant === null ? "a key of content/sources.json; none is near" : `a key of content/sources.json; the nearest is "${meant}"`;
      return [{ ...head, found: `"${source}"`, expected, ...(meant === null ? { write: `{ "id": "${source}", … } in content/sources.json` } : { edits: [{ ...span, text: `"${meant}"` }] }) }];
    }),
  );
};
