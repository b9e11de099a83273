import { pathsSchema } from "../../../schemas/path.ts";
import type { Course } from "../course.ts";
import type { Finding } from "../finding.ts";
import { factsOf } from "../matter.ts";
import { nearest } from "../nearest.ts";
import { type CourseRule, LEAVE_OUT } from "../rule.ts";
import { type DataFile, schemaFindings } from "../schema-findings.ts";

const RULE = "path";

const PATHS_FILE: DataFile = {
  rule: RULE,
  schema: pathsSchema,
  whole: "a path",
  help: {
    id: ["small letters, numbers and hyphens", '"id": "nurse-core"'],
    title: ["a title as text", '"title": "Two weeks before"'],
    who: ["whom it is for, as text", '"who": "Resident"'],
    lead: ["one to three sentences", '"lead": "…"'],
    fullFor: ["resident, nurse or director", '"fullFor": "resident"'],
    obligatory: ["a list of module codes; [] where there are none", '"obligatory": ["M10"]'],
    cautions: ['a list of cautions, "C" and a number each', '"cautions": ["C6"]'],
    sittings: ["a list of sittings", '"sittings": []'],
    name: ["the name of the sitting", '"name": "Day 1: what grows"'],
    why: ["one sentence that says why it stands here", '"why": "…"'],
    steps: ['a list of steps, each { "module": "M10" } or { "page": "/sheet/", "text": "…" }', '"steps": [{ "module": "M10" }]'],
  },
  repair: () => null,
};

interface StepRow {
  readonly module?: string;
  readonly families?: readonly string[];
}
interface PathRow {
  readonly id: string;
  readonly fullFor?: string;
  readonly obligatory: readonly string[];
  readonly sittings: readonly { readonly steps: readonly StepRow[] }[];
}

/** A place in the file, from the outside in. */
type Place = readonly (string | number)[];

const finding = (course: Course, place: Place, rest: Omit<Finding, "source" | "offset" | "rule">): Finding => ({ source: course.paths, offset: course.paths.located().spanOf(place).start, rule: RULE, ...rest });

/** A name that should be one of a list: the finding, with the nearest written in its place. */
const unknown = (course: Course, place: Place, { name, names, what }: { readonly name: string; readonly names: readonly string[]; readonly what: string }): readonly Finding[] => {
  if (names.includes(name)) return [];
  const meant = nearest(name, names);
  return [finding(course, place, meant === null ? { found: `"${name}"`, expected: `${what}; none is near`, write: LEAVE_OUT } : { found: `"${name}"`, expected: `${what}; the nearest is "${meant}"`, edits: [{ ...course.paths.located().spanOf(place), text: `"${meant}"` }] })];
};

const modulesOf = ({ sittings }: PathRow): readonly string[] => sittings.flatMap(({ steps }) => steps.flatMap(({ module }) => (module === undefined ? [] : [module])));

/** Modules and questions that a step names are there, and the questions are the module's own. */
const unknownSteps = (course: Course, path: PathRow, index: number): readonly Finding[] => {
  const planned = Object.keys((course.curriculum.value ?? {}) as object);
  return path.sittings.flatMap(({ steps }, sitting) => steps.flatMap(({ module, families = [] }, step) => {
    if (module === undefined) return [];
    const place = [index, "sittings", sitting, "steps", step];
    const own = course.families.filter((family) => family.module === module).map(({ id }) => id);
    return [
      ...unknown(course, [...place, "module"], { name: module, names: planned, what: "the code of a module of content/curriculum.json" }),
      ...families.flatMap((name, at) => unknown(course, [...place, "families", at], { name, names: own, what: `a question family of ${module}` })),
    ];
  }));
};

/** What is obligatory stands on the path. */
const missingMust = (course: Course, path: PathRow, index: number): readonly Finding[] =>
  path.obligatory.flatMap((code, at) => (modulesOf(path).includes(code) ? [] : [finding(course, [index, "obligatory", at], { found: `"${code}" obligatory, and not on the path`, expected: "a module of one of its sittings", write: `{ "module": "${code}" }` })]));

/** Every module that is core for a role stands on the path that is whole for that role. */
const missingCore = (course: Course, path: PathRow, index: number): readonly Finding[] => {
  const { fullFor } = path;
  if (fullFor === undefined) return [];
  const core = course.files.filter((file) => file.kind === "module" && (file.matter?.located.value as { readonly roles?: Readonly<Record<string, unknown>> } | undefined)?.roles?.[fullFor] === "core").map((file) => factsOf(file).code);
  return core.filter((code) => !modulesOf(path).includes(code)).map((code) => finding(course, [index, "fullFor"], { found: `path "${path.id}" without ${code}`, expected: `every module that is core for a ${fullFor}`, write: `{ "module": "${code}" }` }));
};

const twice = (course: Course, paths: readonly PathRow[]): readonly Finding[] => {
  const ids = paths.map(({ id }) => id);
  return ids.flatMap((id, index) => (ids.indexOf(id) === index ? [] : [finding(course, [index, "id"], { found: `path "${id}", for the second time`, expected: "each path once", write: LEAVE_OUT })]));
};

/** Paths hold to their schema, name what is there, and leave no core module of their role out. */
export const paths: CourseRule = (course) => {
  const faults = schemaFindings(course.paths, PATHS_FILE);
  if (faults.length > 0 || course.paths.missing) return faults;
  const all = course.paths.value as readonly PathRow[];
  return [...twice(course, all), ...all.flatMap((path, index) => [unknownSteps, missingMust, missingCore].flatMap((rule) => rule(course, path, index)))];
};
