import { families } from "../bank/index.ts";
import { isModuleStep, type Path } from "../facts/paths.ts";
import type { CourseModule } from "../islands/course.ts";

/** Questions of a module that a path asks: all of them, or those of its parts. */
const askedOn = (path: Path, code: string): readonly string[] => {
  const steps = path.sittings.flatMap(({ steps: all }) => all.filter(isModuleStep)).filter(({ module }) => module === code);
  const own = families.filter(({ module }) => module === code).map(({ id }) => id);
  return steps.flatMap((step) => step.families ?? own);
};

/** Objectives that nobody may leave out of a path: those of which it asks a question with an unsafe side. */
export const mustOf = (path: Path, course: readonly CourseModule[]): readonly CourseModule[] =>
  course.flatMap((module) => {
    const asked = askedOn(path, module.code);
    const unsafe = families.filter((family) => family.unsafe && asked.includes(family.id)).flatMap((family) => family.objectives);
    const objectives = module.objectives.filter(({ id }) => unsafe.includes(id));
    return objectives.length === 0 ? [] : [{ ...module, objectives }];
  });
