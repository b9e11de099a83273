import { z } from "zod";
import { COHORT_FORM, MOST_MARKS, MOST_PAPERS, MOST_TEXT } from "../engine/cohort/cohort-file.ts";
import { VERDICTS } from "../engine/question/verdict.ts";

const text = z.string().max(MOST_TEXT);
const count = z.number().int().min(0).max(1_000_000);

/** One answer as the desk marked it. */
export const markSchema = z.strictObject({
  slot: count,
  family: text,
  version: count,
  module: text,
  objective: text,
  seed: text,
  verdict: z.enum(VERDICTS),
  score: z.number().min(0).max(1),
  slip: text.nullable(),
  unsafe: z.boolean(),
  try: count,
});

/** What one learner handed in for one attempt at one list. */
export const paperSchema = z.strictObject({
  learner: text,
  place: text.nullable(),
  list: text,
  attempt: count,
  handedInAt: text,
  marks: z.array(markSchema).max(MOST_MARKS),
});

/** The file that a returns desk saves. */
export const cohortSchema = z.strictObject({
  form: z.literal(COHORT_FORM),
  edition: text,
  madeAt: text,
  notes: z.array(z.string().max(1000)),
  papers: z.array(paperSchema).max(MOST_PAPERS),
});

/** The same as JSON Schema, for programs that read a saved file. */
export const cohortJsonSchema: Readonly<Record<string, unknown>> = {
  $id: COHORT_FORM,
  title: "Papers of a cohort",
  description: "What a returns desk found when it marked the hand-ins of a teaching list again. Results were produced without supervision unless marked; they are study, not an examination.",
  ...z.toJSONSchema(cohortSchema),
};
