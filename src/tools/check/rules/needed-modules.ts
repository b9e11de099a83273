import type { Finding } from "../finding.ts";
import { factsOf } from "../matter.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";
import { withoutNeed } from "./module-circle.ts";

/** A module that another one needs is there; while the course is being written this is only a warning. */
export const neededModules: CourseRule = (course) => {
  const modules = course.files.filter((file) => file.kind === "module");
  const codes = modules.map((file) => factsOf(file).code);
  return modules.flatMap((file) =>
    factsOf(file).needs.flatMap((code, index, needed): readonly Finding[] => {
      const span = file.matter?.located.spanOf(["needs", index]);
      if (codes.includes(code) || span === undefined) return [];
      // A module that the curriculum names is only not written yet; any other code is a slip of the pen.
      const isPlanned = Object.hasOwn((course.curriculum.value ?? {}) as object, code);
      const meant = isPlanned ? null : nearest(code, codes.filter((each) => each !== factsOf(file).code && !needed.includes(each)));
      return [{
        source: file,
        offset: span.start,
        rule: "needed module",
        level: "warning",
        found: `needs ${code}, which has no file`,
        expected: isPlanned ? "a module that is written; leave it as it is where that one follows" : "the code of a module in this folder",
        edits: meant === null ? withoutNeed(file, needed, index) : [{ ...span, text: meant }],
      }];
    }),
  );
};
