import { z } from "zod";

/** `content/site.json`: what whoever runs the site has set. */
export const siteSchema = z.strictObject({
  name: z.string().trim().min(1),
  /** The same as the version of the package, so that a report of a fault names it. */
  edition: z.string().regex(/^\d+\.\d+\.\d+$/),
  /** Where the site lives, with its folder; empty or left out where nobody has said so yet. */
  address: z.string().regex(/^(https?:\/\/[^\s/?#]+(\/[^\s?#]*)?)?$/).optional(),
  /** An e-mail address, or words such as a room and a telephone; empty where nobody is named. */
  reportTo: z.string().refine((text) => !text.includes("@") || /^[^@\s]+@[^@\s]+\.[^@\s]+$/.test(text.trim()), "address"),
  /** True for computers that many people use. */
  isShared: z.boolean(),
});

/** `content/curriculum.json`: the name of each module by its code. */
export const curriculumSchema = z.record(z.string().regex(/^(M\d{2}|DX)$/), z.string().trim().min(1));
