import type { Finding } from "../finding.ts";
import { recordNamed } from "../json-file.ts";
import type { CourseRule } from "../rule.ts";
import { placeOfFamily } from "./served-objectives.ts";

/** A family that reads a value measured in adults carries C9. */
export const familyAdult: CourseRule = (course) =>
  course.families.flatMap((family): readonly Finding[] => {
    const { cautions } = family;
    if (cautions === undefined || cautions.includes("C9")) return [];
    const adult = (family.reads ?? []).find((pin) => recordNamed(course.records, pin).record?.adult === true);
    if (adult === undefined) return [];
    const found = `family "${family.id}" reads the adult value "${adult}"`;
    const write = `cautions: [${[...cautions, "C9"].map((id) => `"${id}"`).join(", ")}]`;
    return [{ ...placeOfFamily(family, adult), rule: "adult value", found, expected: "caution C9 among its cautions", write }];
  });
