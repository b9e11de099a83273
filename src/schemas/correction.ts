import { z } from "zod";

const filledText = z.string().trim().min(1);

/** One correction: on which day, where, what stood there, what stands there now, and why. */
export const correctionSchema = z.strictObject({
  on: z.iso.date(),
  /** The page or question that was wrong, in words. */
  where: filledText,
  was: filledText,
  now: filledText,
  why: filledText,
  /** True where an answer that was graded earlier may change. */
  regraded: z.boolean(),
});

/** `content/corrections.json`, newest first. */
export const correctionsSchema = z.array(correctionSchema);
