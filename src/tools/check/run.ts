import type { Course } from "./course.ts";
import type { Problem } from "./finding.ts";
import { problemsOf } from "./problem.ts";
import { COURSE_RULES, FILE_RULES } from "./rules.ts";

/** All that the rules see in a course, file by file and from top to bottom. */
export const checkCourse = (course: Course): readonly Problem[] =>
  problemsOf([
    ...course.files.flatMap((file) => FILE_RULES.flatMap((rule) => rule(file, course))),
    ...COURSE_RULES.flatMap((rule) => rule(course)),
  ]);
