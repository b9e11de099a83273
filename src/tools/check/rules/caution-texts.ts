import { CAUTION_PLACES } from "../caution-places.ts";
import { idsIn } from "../course.ts";
import type { Finding } from "../finding.ts";
import type { CourseRule } from "../rule.ts";

/** Cautions that stand somewhere by rule, C1 and those of pages and figures among them. */
const NEEDED: readonly string[] = [...new Set(["C1", "C8", "C10", ...CAUTION_PLACES.map(({ caution }) => caution)])].sort((first, second) => Number(first.slice(1)) - Number(second.slice(1)));

/** Every caution that a rule places has its text. */
export const cautionTexts: CourseRule = (course) => {
  // An id in small letters is named by the schema.
  const ids = idsIn(course.cautions).map((id) => id.toUpperCase());
  if (course.cautions.missing || course.cautions.value === undefined) return [];
  return NEEDED.filter((id) => !ids.includes(id)).map((id): Finding => ({
    source: course.cautions,
    offset: 0,
    rule: "caution",
    found: `no caution "${id}"`,
    expected: "the text of every caution that pages, figures or families show",
    write: `{ "id": "${id}", "text": "…", "places": ["…"] }`,
  }));
};
