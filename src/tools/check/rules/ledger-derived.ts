import type { Finding } from "../finding.ts";
import { recordNamed } from "../json-file.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";

/** A derived number says from which entries and how, and those entries exist. */
export const ledgerDerived: CourseRule = (course) => {
  const pins = course.records.flatMap(({ key, revisions }) => revisions.map(({ revision }) => `${key}@${revision}`));
  return course.records.flatMap(({ file, index, key, revisions }) =>
    revisions.flatMap(({ state, parents, formula }, place): readonly Finding[] => {
      const path = ["entries", index, "revisions", place];
      const at = (rest: readonly PropertyKey[]) => file.located().spanOf([...path, ...rest]);
      const head = { source: file, rule: "derived number" };
      const lacks = state !== "derived" ? [] : [
        ...(parents.length > 0 ? [] : [{ ...head, offset: at([]).start, found: `"${key}" is derived, without parents`, expected: "the entries it comes from, each with its revision", write: '"parents": ["zone-width.8-10@1"]' }]),
        ...(formula !== "" ? [] : [{ ...head, offset: at([]).start, found: `"${key}" is derived, without a formula`, expected: "how it was worked out, as text", write: '"formula": "mean − 1.645 × sd"' }]),
      ];
      const strangers = parents.map((parent, number) => ({ parent, number })).filter(({ parent }) => !parent.includes("@") || recordNamed(course.records, parent).revision === undefined);
      return [...lacks, ...strangers.map(({ parent, number }): Finding => {
        const span = at(["parents", number]);
        const meant = nearest(parent, pins);
        const expected = meant === null ? "a ledger key with its revision; none is near" : `a ledger key with its revision; the nearest is "${meant}"`;
        return { ...head, offset: span.start, found: `parent "${parent}"`, expected, edits: [{ ...span, text: `"${meant ?? parent}"` }] };
      })];
    }),
  );
};
