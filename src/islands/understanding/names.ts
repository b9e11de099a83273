import type { CourseModule } from "../course.ts";
import { objectivesOf } from "../course.ts";
import type { Families } from "./use-families.ts";

/** How things that papers name by their ids are called; an id that is not known reads as words. */
export interface Names {
  readonly objective: (id: string) => string;
  readonly family: (id: string) => string;
  readonly slip: (family: string, id: string) => string;
}

const asWords = (id: string): string => id.replaceAll("-", " ");

export const namesOf = (families: Families, modules: readonly CourseModule[]): Names => {
  const objectives = new Map(objectivesOf(modules).map(({ id, text }) => [id, text]));
  return {
    objective: (id) => objectives.get(id) ?? asWords(id),
    family: (id) => families.get(id)?.words.en.title ?? asWords(id),
    slip: (family, id) => families.get(family)?.words.en.slips[id]?.name ?? asWords(id),
  };
};
