import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { factsOf } from "../check/matter.ts";
import { readMdx } from "../check/mdx-file.ts";

/** Objectives that a module's own file lists; none where the module has no file yet. */
export const objectivesListed = (project: string, code: string): readonly string[] => {
  const folder = join(project, "content/modules");
  if (!existsSync(folder)) return [];
  const modules = readdirSync(folder).filter((name) => name.endsWith(".mdx")).map((name) => factsOf(readMdx({ file: name, text: readFileSync(join(folder, name), "utf8") }, "module", name)));
  return modules.find((module) => module.code === code)?.objectives.map(({ id }) => id) ?? [];
};

interface Asked {
  readonly module: string;
  readonly objectives: readonly string[];
}

/** The objective of a new family that names none: the first of its module that nobody asks yet, else one that is asked, else one made of its id. */
export const objectiveFor = (listed: readonly string[], family: { readonly id: string; readonly module: string }, known: readonly Asked[]): string => {
  const own = known.filter(({ module }) => module === family.module).flatMap(({ objectives }) => objectives);
  return listed.find((id) => !own.includes(id)) ?? own[0] ?? listed[0] ?? `${family.module.toLowerCase()}-${family.id}`;
};
