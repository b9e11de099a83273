import type { Finding } from "../finding.ts";
import { recordNamed } from "../json-file.ts";
import type { FileRule } from "../rule.ts";

/** Adult values that a module shows; the layout puts C9 beside each, and this list lets an author see where. */
export const adultValues: FileRule = (file, course) =>
  file.tags.flatMap((tag): readonly Finding[] => {
    const of = tag.name === "Num" ? tag.attributes.find(({ name }) => name === "of") : undefined;
    if (of === undefined || recordNamed(course.records, of.value).record?.adult !== true) return [];
    const found = `adult value "${of.value}"`;
    return [{ source: file, offset: tag.start, rule: "adult value", level: "note", found, expected: "caution C9, which the layout places in this section", write: "" }];
  });
