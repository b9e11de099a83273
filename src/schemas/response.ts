import { z } from "zod";
import { SAYS } from "../engine/question/response.ts";

const MOST_TEXT = 500;
const MOST_ENTRIES = 100;

const text = z.string().max(MOST_TEXT);
const texts = z.array(text).max(MOST_ENTRIES);
const recordOf = <T extends z.ZodType>(entry: T) =>
  z.record(text, entry).refine((record) => Object.keys(record).length <= MOST_ENTRIES, "too many entries");

const sum = z.union([
  z.strictObject({ kind: z.literal("sum"), text }),
  z.strictObject({ kind: z.literal("sum"), texts: recordOf(text) }),
  z.strictObject({ kind: z.literal("sum"), says: z.enum(SAYS) }),
]);

/** Responses of every kind but the chain, which is made of them. */
const step = z.union([
  sum,
  z.strictObject({ kind: z.literal("range"), from: text, to: text }),
  z.strictObject({ kind: z.literal("mark"), points: recordOf(z.strictObject({ xMm: text, yMm: text })) }),
  z.strictObject({ kind: z.literal("line"), angleDeg: text, depthMm: text }),
  z.strictObject({ kind: z.literal("order"), cards: texts }),
  z.strictObject({ kind: z.literal("tray"), found: texts }),
  z.strictObject({ kind: z.literal("name"), picks: recordOf(text) }),
  z.strictObject({ kind: z.literal("count"), byClass: recordOf(text) }),
  z.strictObject({ kind: z.literal("judge"), picks: text, reasons: texts }),
]);

/** What a learner may send. Pages check it with a guard of the engine; this schema says the same in full. */
export const responseSchema = z.union([step, z.strictObject({ kind: z.literal("chain"), steps: z.array(step).min(1).max(MOST_ENTRIES) })]);
