import { objectiveSchema } from "../../../schemas/module.ts";
import type { Course, FamilyFacts } from "../course.ts";
import type { Finding, SourceText } from "../finding.ts";
import { factsOf } from "../matter.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";

/** Where a family can be pointed at: the name in its own file, or the bank as a whole. */
export const placeOfFamily = (family: FamilyFacts, word: string): { readonly source: SourceText; readonly offset: number } => {
  const source = family.source ?? { file: `src/bank (family ${family.id}, ${family.code})`, text: "" };
  return { source, offset: Math.max(0, source.text.indexOf(`"${word}"`) + 1) };
};

/** True for an id of the right form; others are named by the front matter's own rule. */
const isObjectiveId = (id: string): boolean => objectiveSchema.shape.id.safeParse(id).success;

const unserved = (course: Course): readonly Finding[] => {
  const served = new Set(course.families.flatMap(({ objectives }) => objectives));
  return course.files.filter((file) => file.kind === "module").flatMap((file) => {
    const { objectives, reviewed } = factsOf(file);
    return objectives.filter(({ id }) => isObjectiveId(id) && !served.has(id)).map(({ id, start }): Finding => ({
      source: file,
      offset: start,
      rule: "objective without questions",
      // A module that nobody has reviewed is in preparation.
      level: reviewed ? "problem" : "warning",
      found: `objective "${id}"`,
      expected: "one question family or more that lists it",
      write: `objectives: ["${id}"] in a family of src/bank`,
    }));
  });
};

const unlisted = (course: Course): readonly Finding[] => {
  const modules = course.files.filter((file) => file.kind === "module").map(factsOf);
  const listed = modules.flatMap(({ objectives }) => objectives.map(({ id }) => id));
  return course.families.flatMap((family) =>
    family.objectives.filter((id) => !listed.includes(id)).map((id): Finding => {
      const { source, offset } = placeOfFamily(family, id);
      const meant = nearest(id, listed);
      const head = { source, offset, rule: "question without objective", found: `objective "${id}" of family "${family.id}"` };
      // Before its module has a file, a family has nowhere to be listed; another course may lack the module for good.
      const level = modules.some(({ code }) => code === family.module) ? "problem" : "note";
      const write = `objectives: ["${meant ?? id}"]`;
      return { ...head, level, expected: meant === null ? `an objective that module ${family.module} lists` : `an objective that a module lists; the nearest is "${meant}"`, write };
    }),
  );
};

/** Every objective has questions, and every question family serves an objective that a module lists. */
export const servedObjectives: CourseRule = (course) =>
  course.families.length === 0 ? [] : [...unserved(course), ...unlisted(course)];
