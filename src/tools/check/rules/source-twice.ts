import type { Finding } from "../finding.ts";
import type { CourseRule } from "../rule.ts";

/** The same work under two keys would be counted as two papers that agree. */
export const sourceTwice: CourseRule = (course) => {
  const list = Array.isArray(course.sources.value) ? (course.sources.value as readonly { readonly id?: unknown; readonly DOI?: unknown }[]) : [];
  const seen = new Map<string, string>();
  return list.flatMap(({ id, DOI }, index): readonly Finding[] => {
    if (typeof DOI !== "string" || typeof id !== "string") return [];
    const first = seen.get(DOI.toLowerCase());
    seen.set(DOI.toLowerCase(), first ?? id);
    if (first === undefined) return [];
    const span = course.sources.located().spanOf([index, "id"]);
    return [{ source: course.sources, offset: span.start, rule: "source", found: `"${id}" with the DOI of "${first}"`, expected: "each work once, under one key", write: `"source": "${first}" wherever "${id}" is cited` }];
  });
};
