import { z } from "zod";

const filledText = z.string().trim().min(1);

/** One caution with the places where it must stand. */
export const cautionSchema = z.strictObject({
  id: z.string().regex(/^C\d{1,2}$/),
  text: filledText,
  /** The form for a page that nobody has reviewed yet. */
  unreviewed: filledText.optional(),
  places: z.array(filledText).min(1),
});

export const cautionsSchema = z.array(cautionSchema);
