import { z } from "zod";

const filledText = z.string().trim().min(1);

/** One term: what it means in a line, what Britain and America call it, and what else people type for it. */
export const termSchema = z.strictObject({
  term: filledText,
  /** Its place on the glossary page, and what the tag `Term` names. */
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  meaning: z.string().regex(/^[A-Z].*\.$/),
  british: filledText.optional(),
  american: filledText.optional(),
  also: z.array(filledText),
});

/** `content/glossary.json`. */
export const glossarySchema = z.array(termSchema);
