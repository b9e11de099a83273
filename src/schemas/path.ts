import { z } from "zod";

const filledText = z.string().trim().min(1);
const moduleCode = z.string().regex(/^(M\d{2}|DX)$/);

/** A module of a sitting: whole, or by some of its questions. */
const moduleStep = z.strictObject({ module: moduleCode, families: z.array(filledText).min(1).optional() });
/** A page of the site that is worked on in a sitting; its time is not reckoned. */
const pageStep = z.strictObject({ page: z.string().regex(/^\/([a-z0-9-]+\/)*(#[\w-]+)?$/), text: filledText });

export const sittingSchema = z.strictObject({ name: filledText, why: filledText, steps: z.array(z.union([moduleStep, pageStep])).min(1) });

/** One way through the course: for whom, in which sittings, and what nobody may leave out. */
export const pathSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  title: filledText,
  who: filledText,
  lead: filledText,
  /** The role whose core modules must all be on it; left out where the path is a part of the course. */
  fullFor: z.enum(["resident", "nurse", "director"]).optional(),
  /** Modules that are worked through whatever an entry sheet says. */
  obligatory: z.array(moduleCode),
  cautions: z.array(z.string().regex(/^C\d{1,2}$/)),
  sittings: z.array(sittingSchema).min(1),
});

/** `content/paths.json`. */
export const pathsSchema = z.array(pathSchema);
