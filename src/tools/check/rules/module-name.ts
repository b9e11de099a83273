import type { Course } from "../course.ts";
import type { Finding } from "../finding.ts";
import { factsOf } from "../matter.ts";
import type { CourseRule } from "../rule.ts";

const namesOf = (course: Course): Readonly<Record<string, unknown>> =>
  typeof course.curriculum.value === "object" && course.curriculum.value !== null ? (course.curriculum.value as Readonly<Record<string, unknown>>) : {};

/** A module has the name that the curriculum gives it, since lists and sheets print that one. */
export const moduleName: CourseRule = (course) => {
  const names = namesOf(course);
  return course.files.filter(({ kind }) => kind === "module").flatMap((file): readonly Finding[] => {
    const { code } = factsOf(file);
    const matter = file.matter?.located;
    const title = (matter?.value as Readonly<Record<string, unknown>> | null | undefined)?.["title"];
    const name = names[code];
    if (matter === undefined || typeof title !== "string" || course.curriculum.missing) return [];
    const span = matter.spanOf(["title"]);
    if (name === undefined && /^(M\d\d|DX)$/.test(code)) {
      return [{ source: file, offset: matter.spanOf(["code"]).start, rule: "module name", found: `module ${code}, which content/curriculum.json does not list`, expected: "a line for it there", write: `"${code}": "${title}"` }];
    }
    if (typeof name !== "string" || name === title) return [];
    const text = name.includes(":") ? `"${name}"` : name;
    return [{ source: file, offset: span.start, rule: "module name", found: `"${title}"`, expected: `"${name}", as content/curriculum.json names ${code}`, edits: [{ start: span.start, end: span.start + file.text.slice(span.start, span.end).trimEnd().length, text }] }];
  });
};
