import { z } from "zod";

/** `content/ask-locally.json`: what each hospital settles itself, as questions; the answers stand nowhere on the site. */
export const askLocallySchema = z.array(z.strictObject({ topic: z.string().trim().min(1), questions: z.array(z.string().regex(/[?.]$/)).min(1) }));
