import { z } from "zod";
import { MOST_ATTEMPTS, MOST_QUESTIONS } from "../engine/record/list-form.ts";
import { VERDICTS } from "../engine/question/verdict.ts";
import { isHandIn } from "../engine/record/hand-in-form.ts";
import { FILE_FORM } from "../engine/record/hand-in-text.ts";
import { responseSchema } from "./response.ts";

const MOST_TEXT = 60;
const text = z.string().max(MOST_TEXT);
const moment = text.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,3})?Z$/);

const answer = z.strictObject({
  /** Place on the sheet, from 0. */
  slot: z.int().min(0).max(MOST_QUESTIONS - 1),
  at: moment,
  response: responseSchema,
  verdict: z.enum(VERDICTS),
  slip: text.nullable(),
  local: z.string().regex(/^[0-9a-f]{1,64}$/).nullable(),
});

/** A hand-in by its fields; that no place and no attempt comes twice, and that moments exist, is left to the engine's guard. */
const form = z.strictObject({
  form: z.literal("hand-in/1"),
  list: z.string().regex(/^[0-9a-f]{16}$/),
  edition: text,
  learner: z.string().min(3).max(24).regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  place: text.nullable(),
  spoken: text.nullable(),
  at: moment,
  sheets: z.array(z.strictObject({ attempt: z.int().min(1).max(MOST_ATTEMPTS), answers: z.array(answer).max(MOST_QUESTIONS) })).min(1).max(MOST_ATTEMPTS),
});

export const handInSchema = form.refine((handIn) => isHandIn(handIn), "the parts of the hand-in do not fit together");

/** The form of a hand-in file as JSON Schema, for programs that read one. */
export const handInFileSchema: Readonly<Record<string, unknown>> = {
  $id: FILE_FORM,
  title: "A hand-in file",
  description: "`sum` is the SHA-256 hash of `handIn` as canonical JSON (RFC 8785). Verdicts and slips are what the learner's page said; whoever reads the file marks again.",
  ...z.toJSONSchema(z.strictObject({ form: z.literal(FILE_FORM), sum: z.string().regex(/^[0-9a-f]{64}$/), handIn: form })),
};
