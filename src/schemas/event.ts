import { z } from "zod";
import { VERDICTS } from "../engine/question/verdict.ts";
import { EVENT_KINDS } from "../engine/record/event.ts";
import { responseSchema } from "./response.ts";

const MOST_TEXT = 200;
const MOST_ENTRIES = 40;

const text = z.string().max(MOST_TEXT);
const wholeText = text.regex(/^-?\d{1,6}$/);
const recordOf = <T extends z.ZodType>(entry: T) =>
  z.record(text, entry).refine((record) => Object.keys(record).length <= MOST_ENTRIES, "too many entries");

/** One line of a learner's record. */
export const eventSchema = z.strictObject({
  id: text,
  at: text.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,3})?Z$/),
  offsetMin: wholeText,
  kind: z.enum(EVENT_KINDS),
  sheet: text.optional(),
  family: text,
  version: wholeText,
  seed: text.regex(/^(\d{1,10}|[0-9a-f]{32})$/),
  local: text.optional(),
  language: text,
  givens: recordOf(text),
  asks: recordOf(text),
  accepted: recordOf(z.strictObject({ from: text, to: text })),
  response: responseSchema,
  verdict: z.enum(VERDICTS),
  slip: text.optional(),
  try: wholeText,
  hint: z.boolean(),
  prev: text,
});
