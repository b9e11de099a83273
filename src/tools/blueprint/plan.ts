import type { Course } from "../check/course.ts";
import type { MdxFile } from "../check/mdx-file.ts";
import { factsOf } from "../check/matter.ts";

/** What the blueprint needs of a family. */
export interface PlannedFamily {
  readonly id: string;
  readonly code: string;
  readonly module: string;
  readonly kind: string;
  readonly unsafe: boolean;
  readonly version: number;
  readonly objectives: readonly string[];
}

/** One objective with the questions that serve it. */
export interface ObjectiveRow {
  readonly id: string;
  readonly verb: string;
  readonly families: readonly PlannedFamily[];
  /** How often its module asks one of them. */
  readonly asked: number;
}

export interface ModuleRow {
  readonly code: string;
  readonly name: string;
  /** False for a module of the curriculum that nobody has written. */
  readonly isWritten: boolean;
  /** Role and weight: "resident core". */
  readonly roles: readonly string[];
  readonly objectives: readonly ObjectiveRow[];
  /** Families whose objective no module lists. */
  readonly strays: readonly PlannedFamily[];
  readonly review: "none" | { readonly by: string; readonly due: string; readonly isStale: boolean };
}

type Bag = Readonly<Record<string, unknown>>;
const bag = (value: unknown): Bag => (typeof value === "object" && value !== null ? (value as Bag) : {});
const day = (value: unknown): string => (value instanceof Date ? value.toISOString().slice(0, 10) : String(value ?? ""));

const reviewOf = (matter: Bag, today: string): ModuleRow["review"] => {
  const { state, by, due } = bag(matter["review"]);
  return state === "reviewed" ? { by: String(by ?? "somebody"), due: day(due), isStale: day(due) <= today } : "none";
};

const askedIn = (file: MdxFile): readonly string[] =>
  file.tags.filter(({ name }) => name === "Ask").flatMap(({ attributes }) => attributes.find(({ name }) => name === "family")?.value ?? []);

const objectivesIn = (file: MdxFile, matter: Bag, families: readonly PlannedFamily[]): readonly ObjectiveRow[] => {
  const asked = askedIn(file);
  const written = Array.isArray(matter["objectives"]) ? (matter["objectives"] as readonly unknown[]).map(bag) : [];
  return factsOf(file).objectives.map(({ id }) => {
    const own = families.filter(({ objectives }) => objectives.includes(id));
    const verb = written.find((each) => each["id"] === id)?.["verb"];
    return { id, verb: String(verb ?? ""), families: own, asked: asked.filter((name) => own.some((family) => family.id === name)).length };
  });
};

/** Every module of the curriculum and of the folder, in their order, with what serves its objectives. */
export const blueprint = (course: Course, families: readonly PlannedFamily[]): readonly ModuleRow[] => {
  const names = bag(course.curriculum.value);
  const files = course.files.filter(({ kind }) => kind === "module");
  const byCode = new Map(files.map((file) => [factsOf(file).code, file]));
  const listed = new Set(files.flatMap((file) => factsOf(file).objectives.map(({ id }) => id)));
  const codes = [...new Set([...Object.keys(names), ...byCode.keys()])];
  return codes.map((code) => {
    const file = byCode.get(code);
    const matter = bag(file?.matter?.located.value);
    const own = families.filter(({ module }) => module === code);
    return {
      code,
      name: String(matter["title"] ?? names[code] ?? ""),
      isWritten: file !== undefined,
      roles: Object.entries(bag(matter["roles"])).map(([role, weight]) => `${role} ${String(weight)}`),
      objectives: file === undefined ? [] : objectivesIn(file, matter, families),
      strays: own.filter(({ objectives }) => !objectives.some((id) => listed.has(id))),
      review: reviewOf(matter, course.today),
    };
  });
};

/** What is missing, one sentence each. */
export const holesIn = (rows: readonly ModuleRow[]): readonly string[] => [
  ...rows.filter(({ isWritten }) => !isWritten).map(({ code, name }) => `${code} ${name}: no module is written`),
  ...rows.flatMap(({ objectives }) => objectives.filter(({ families }) => families.length === 0).map(({ id }) => `${id}: no question`)),
  ...rows.filter(({ isWritten }) => isWritten).flatMap(({ code, strays }) => strays.map((family) => `${family.code} ${family.id}: its objective ${family.objectives.join(", ")} is not listed in ${code}`)),
  ...rolesWithout(rows).map((role) => `${role}: no module is core`),
];

const ROLES = ["resident", "nurse", "director"] as const;

const rolesWithout = (rows: readonly ModuleRow[]): readonly string[] => ROLES.filter((role) => !rows.some(({ roles }) => roles.includes(`${role} core`)));

/** Reviews whose day has come. */
export const staleIn = (rows: readonly ModuleRow[]): readonly string[] =>
  rows.flatMap(({ code, name, review }) => (review !== "none" && review.isStale ? [`${code} ${name}: read by ${review.by}, due ${review.due}`] : []));

/** For each role how many objectives it meets, and how many of them have a question. */
export const rolesIn = (rows: readonly ModuleRow[]): readonly { readonly role: string; readonly core: number; readonly optional: number; readonly objectives: number; readonly served: number; readonly unsafe: number }[] =>
  ROLES.map((role) => {
    const own = rows.filter(({ roles }) => roles.some((each) => each.startsWith(`${role} `)));
    const objectives = own.flatMap((row) => row.objectives);
    const families = new Map(objectives.flatMap((each) => each.families).map((family) => [family.id, family]));
    const core = own.filter(({ roles }) => roles.includes(`${role} core`)).length;
    return { role, core, optional: own.length - core, objectives: objectives.length, served: objectives.filter((each) => each.families.length > 0).length, unsafe: [...families.values()].filter(({ unsafe }) => unsafe).length };
  });
