import type { Course } from "../course.ts";
import type { Edit, Finding } from "../finding.ts";
import type { MdxFile } from "../mdx-file.ts";
import { factsOf } from "../matter.ts";
import type { CourseRule } from "../rule.ts";

const rule = "needed module";

type Needs = ReadonlyMap<string, readonly string[]>;

/** The way from one module by its needs back to another; null where there is none. */
const wayTo = (needs: Needs, from: string, goal: string, seen: ReadonlySet<string> = new Set()): readonly string[] | null => {
  if (from === goal) return [from];
  if (seen.has(from)) return null;
  for (const next of needs.get(from) ?? []) {
    const rest = wayTo(needs, next, goal, new Set([...seen, from]));
    if (rest !== null) return [from, ...rest];
  }
  return null;
};

/** The list of needs without one of them. */
export const withoutNeed = (file: MdxFile, needed: readonly string[], index: number): readonly Edit[] => {
  const span = file.matter?.located.spanOf(["needs"]);
  const text = `[${needed.filter((_, place) => place !== index).join(", ")}]`;
  return span === undefined ? [] : [{ start: span.start, end: span.start + file.text.slice(span.start, span.end).trimEnd().length, text }];
};

const faultsOf = (file: MdxFile, needs: Needs): readonly Finding[] => {
  const { code, needs: needed } = factsOf(file);
  return needed.flatMap((each, index): readonly Finding[] => {
    const offset = file.matter?.located.spanOf(["needs", index]).start ?? 0;
    const head = { source: file, offset, rule, edits: withoutNeed(file, needed, index) };
    if (each === code) return [{ ...head, found: `${code} needs itself`, expected: "modules that are read before this one" }];
    if (needed.indexOf(each) < index) return [{ ...head, found: `${each} twice among the needs`, expected: "each module once" }];
    const way = wayTo(needs, each, code);
    if (way === null) return [];
    return [{ ...head, found: `a circle: ${[code, ...way].join(" needs ")}`, expected: "an order in which the modules can be read; take out one of these needs" }];
  });
};

/** Modules can be read in some order: none needs itself, not even by way of others. */
export const moduleCircle: CourseRule = (course: Course) => {
  const modules = course.files.filter(({ kind }) => kind === "module");
  const needs: Needs = new Map(modules.map((file) => [factsOf(file).code, factsOf(file).needs]));
  return modules.flatMap((file) => faultsOf(file, needs));
};
