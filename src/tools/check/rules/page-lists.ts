import { askLocallySchema } from "../../../schemas/ask-locally.ts";
import { correctionsSchema } from "../../../schemas/correction.ts";
import type { CourseRule } from "../rule.ts";
import { type DataFile, schemaFindings } from "../schema-findings.ts";

const CORRECTIONS: DataFile = {
  rule: "correction",
  schema: correctionsSchema,
  whole: "a correction",
  help: {
    on: ["the day, as year, month and day", '"on": "2027-03-01"'],
    where: ["the page or question that was wrong", '"where": "Question 10a"'],
    was: ["what stood there", '"was": "…"'],
    now: ["what stands there now", '"now": "…"'],
    why: ["the reason, with its full stop", '"why": "…"'],
    regraded: ["true where earlier answers may be graded otherwise, else false", '"regraded": false'],
  },
  repair: (field, written) => (field === "regraded" && /^(true|false)$/i.test(String(written)) ? String(written).toLowerCase() : null),
};

const ASK_LOCALLY: DataFile = {
  rule: "local question",
  schema: askLocallySchema,
  whole: "a topic",
  help: {
    topic: ["the name of the matter, as text", '"topic": "Fluid"'],
    questions: ["a list of sentences, each a question or with its full stop", '"questions": ["Which fluid, and how warm?"]'],
  },
  repair: () => null,
};

/** The lists behind two pages, corrections and questions for one's own hospital, hold to their schemas. */
export const pageLists: CourseRule = (course) => [...schemaFindings(course.corrections, CORRECTIONS), ...schemaFindings(course.askLocally, ASK_LOCALLY)];
