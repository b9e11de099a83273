import type { FamilyEntry } from "../bank/index.ts";
import { CURRICULUM } from "../facts/curriculum.ts";

export const ROLES = ["resident", "nurse", "director"] as const;
export type Role = (typeof ROLES)[number];
export type Weight = "core" | "optional" | "none";

/** A module as the site's content gives it, with its text as it was written. */
export interface WrittenModule {
  readonly id: string;
  readonly body?: string | undefined;
  readonly data: {
    readonly code: string;
    readonly title: string;
    readonly roles: { readonly [role in Role]?: "core" | "optional" | undefined };
    readonly objectives: readonly { readonly id: string; readonly text: string }[];
  };
}

export interface CoveredFamily {
  readonly id: string;
  readonly code: string;
  readonly unsafe: boolean;
  /** True where the module's own page asks it; others stand on their practice pages. */
  readonly isAsked: boolean;
}

export interface CoverageRow {
  readonly code: string;
  readonly title: string;
  readonly slug: string;
  readonly weights: Readonly<Record<Role, Weight>>;
  readonly objectives: readonly { readonly id: string; readonly text: string; readonly families: readonly CoveredFamily[] }[];
}

const byCode = (first: { readonly code: string }, second: { readonly code: string }): number => first.code.localeCompare(second.code);

const placeOf = ({ code }: { readonly code: string }): number => CURRICULUM.findIndex((one) => one.code === code);

/** Modules in the order of the course, each objective with every question that serves it and each reader's weight. */
export const coverageOf = (written: readonly WrittenModule[], families: readonly FamilyEntry[]): readonly CoverageRow[] =>
  written.map(({ id, body = "", data: { code, title, roles, objectives } }) => ({
    code,
    title,
    slug: id,
    weights: { resident: roles.resident ?? "none", nurse: roles.nurse ?? "none", director: roles.director ?? "none" } as const,
    objectives: objectives.map((objective) => ({
      id: objective.id,
      text: objective.text,
      families: families.filter((family) => family.objectives.includes(objective.id)).toSorted(byCode)
        .map((family) => ({ id: family.id, code: family.code, unsafe: family.unsafe, isAsked: body.includes(`<Ask family="${family.id}"`) })),
    })),
  })).toSorted((first, second) => placeOf(first) - placeOf(second));

/** What is missing, one sentence each; a course is built only without any. */
export const holesOf = (rows: readonly CoverageRow[], families: readonly FamilyEntry[]): readonly string[] => {
  const listed = new Set(rows.flatMap(({ objectives }) => objectives.map(({ id }) => id)));
  return [
    ...rows.flatMap(({ objectives }) => objectives.filter((one) => one.families.length === 0).map(({ id }) => `${id} has no question`)),
    ...families.filter(({ objectives }) => !objectives.some((id) => listed.has(id))).map(({ id, objectives }) => `${id} serves ${objectives.join(", ")}, which no module lists`),
    ...rows.filter(({ weights }) => ROLES.every((role) => weights[role] === "none")).map(({ code }) => `${code} is for nobody`),
    ...ROLES.filter((role) => !rows.some(({ weights }) => weights[role] === "core")).map((role) => `no module is core for a ${role}`),
  ];
};

/** Objectives, questions and questions with an unsafe side that a role meets in its core modules. */
export const totalsFor = (rows: readonly CoverageRow[], role: Role): { readonly modules: number; readonly objectives: number; readonly families: number; readonly unsafe: number } => {
  const own = rows.filter(({ weights }) => weights[role] === "core");
  const objectives = own.flatMap((row) => row.objectives);
  const families = new Map(objectives.flatMap((one) => one.families).map((family) => [family.id, family]));
  return { modules: own.length, objectives: objectives.length, families: families.size, unsafe: [...families.values()].filter(({ unsafe }) => unsafe).length };
};
