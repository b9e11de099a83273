import { families } from "../bank/index.ts";
import { CURRICULUM } from "../facts/curriculum.ts";
import type { CourseModule } from "../islands/course.ts";
import { href } from "./href.ts";

/** A module as the site's content gives it. */
interface Written {
  readonly id: string;
  readonly data: {
    readonly code: string;
    readonly title: string;
    readonly roles: { readonly resident?: string | undefined; readonly nurse?: string | undefined; readonly director?: string | undefined };
    readonly objectives: readonly { readonly id: string; readonly text: string }[];
  };
}

/** Modules that are written, in the order of the course, each with its objectives and the questions that serve them. */
export const courseModules = (written: readonly Written[]): readonly CourseModule[] =>
  CURRICULUM.flatMap(({ code }) => {
    const found = written.find(({ data }) => data.code === code);
    if (found === undefined) return [];
    const { title, roles, objectives } = found.data;
    const own = objectives.map(({ id, text }) => {
      const serving = families.filter((family) => family.objectives.includes(id));
      return { id, text, module: code, families: serving.map((family) => family.id), isSafety: serving.some(({ unsafe }) => unsafe) };
    });
    const chains = families.filter((family) => family.module === code && family.kind === "chain").map((family) => ({ family: family.id, needs: family.objectives }));
    const core = (["resident", "nurse", "director"] as const).filter((role) => roles[role] === "core");
    return [{ code, title, path: href(`/modules/${found.id}/`), core, objectives: own, chains }];
  });
