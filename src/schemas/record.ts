import { z } from "zod";
import { eventSchema } from "./event.ts";

/** One event of a record as JSON Schema, for programs that read a saved file. */
export const recordSchema: Readonly<Record<string, unknown>> = {
  $id: "small-knee-workbook/record/1",
  title: "One event of a learner's record",
  description: "A line of a record file is the SHA-256 hash of this event as canonical JSON (RFC 8785), a space, and that JSON.",
  ...z.toJSONSchema(eventSchema),
};
