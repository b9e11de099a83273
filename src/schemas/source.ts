import { z } from "zod";

const filledText = z.string().trim().min(1);
const person = z.union([z.strictObject({ family: filledText, given: filledText.optional() }), z.strictObject({ literal: filledText })]);

/** One cited work, a part of CSL-JSON 1.0: the fields that this site prints. */
export const sourceSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  type: z.enum(["article-journal", "chapter", "book", "report", "webpage", "legislation", "standard", "thesis", "paper-conference", "document"]),
  title: filledText,
  author: z.array(person).optional(),
  issued: z.strictObject({ "date-parts": z.array(z.array(z.number().int()).min(1).max(3)).length(1) }).optional(),
  "container-title": filledText.optional(),
  publisher: filledText.optional(),
  volume: filledText.optional(),
  issue: filledText.optional(),
  page: filledText.optional(),
  DOI: z.string().regex(/^10\.\d{4,}\/\S+$/).optional(),
  URL: z.url().optional(),
  note: filledText.optional(),
});

export const sourcesSchema = z.array(sourceSchema);
