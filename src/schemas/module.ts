import { z } from "zod";

/** Verbs of an objective: only what a machine can check. */
export const MEASURABLE_VERBS = [
  "calculate",
  "classify",
  "order",
  "mark",
  "place",
  "select",
  "sort",
  "detect",
  "reconcile",
  "estimate",
  "reject",
] as const;

const moduleCode = z.string().regex(/^(M\d{2}|DX)$/);
const filledText = z.string().trim().min(1);
const importance = z.enum(["core", "optional"]);

/** A day as text, `2027-03-01`; YAML turns a bare day into a Date, which is turned back. */
const day = z.preprocess(
  (value) => (value instanceof Date && !Number.isNaN(value.getTime()) ? value.toISOString().slice(0, 10) : value),
  z.iso.date(),
);

export const objectiveSchema = z.strictObject({
  id: z.string().regex(/^(m\d{2}|dx)(-[a-z0-9]+)+$/),
  verb: z.enum(MEASURABLE_VERBS),
  text: filledText,
});

export const reviewSchema = z.discriminatedUnion("state", [
  z.strictObject({ state: z.literal("none") }),
  z.strictObject({ state: z.literal("reviewed"), by: filledText, on: day, due: day }),
]);

/** Front matter of a teaching module; a field that is not named here is refused. */
export const moduleSchema = z.strictObject({
  title: filledText,
  code: moduleCode,
  summary: filledText,
  needs: z.array(moduleCode),
  roles: z
    .strictObject({ resident: importance.optional(), nurse: importance.optional(), director: importance.optional() })
    .refine((roles) => Object.values(roles).some((each) => each !== undefined), "no role"),
  minutes: z.number().int().positive(),
  objectives: z.array(objectiveSchema).min(1),
  review: reviewSchema,
  language: z.enum(["en"]),
});

export type ModuleMatter = z.infer<typeof moduleSchema>;
export type Objective = z.infer<typeof objectiveSchema>;
