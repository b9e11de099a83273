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
      const meant = nearest(code, codes.filter((each) => each !== factsOf(file).code));
      return [{
        source: file,
        offset: span.start,
        rule: "needed module",
        level: "warning",
        found: `needs ${code}, which has no file`,
        expected: "the code of a module in this folder",
        edits: meant === null ? withoutNeed(file, needed, index) : [{ ...span, text: meant }],
      }];
    }),
  );
};
