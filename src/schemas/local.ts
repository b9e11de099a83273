import { z } from "zod";
import { COUNT_CLASSES, STREAMS } from "../engine/kit/local-list.ts";
import { UNITS } from "../engine/quantity/units.ts";

/** A word or a few; the upright stroke parts the fields of a line inside a question. */
const plainText = z.string().trim().min(1).max(60).regex(/^[^|<>]*$/);
const whole = z.number().int().nonnegative();
const span = z.tuple([whole, whole]).refine(([least, greatest]) => least <= greatest, "least first");

/** Shapes that the pictures of trays can draw. */
export const LOCAL_SHAPES = ["scope", "sheath", "obturator", "probe", "needle", "cap", "clamp", "retriever", "cannula", "tubing", "swab", "blade", "tip", "box"] as const;

/** What is in our pack: one line for one thing. */
export const localPackSchema = z.strictObject({
  hospital: plainText,
  list: plainText,
  // A question shows seven to nine lines.
  things: z.array(z.strictObject({
    thing: plainText,
    more: plainText,
    pieces: z.number().int().min(1).max(5),
    size: plainText.optional(),
    otherSize: plainText.optional(),
    class: z.enum(COUNT_CLASSES),
    shape: z.enum(LOCAL_SHAPES),
    stock: plainText,
    keep: z.boolean().optional(),
  })).min(9),
});

export const LOCAL_COUNTED = ["swabs", "needles", "blades", "tips"] as const;

/** What is counted at the end of a case, and how it comes. */
export const localCountsSchema = z.strictObject({
  hospital: plainText,
  classes: z.array(z.strictObject({
    class: z.enum(LOCAL_COUNTED),
    comesIn: z.number().int().min(1).max(10),
    opened: span,
    added: span,
    handedOffAtMost: whole.max(10),
  })).length(LOCAL_COUNTED.length),
  capsAndLids: z.enum(["counted", "not counted"]),
});

export const LOCAL_WASTE = ["needle", "blade", "stylet", "scope", "battery", "drape", "tubing", "swab", "wrap", "saline-bag", "label", "probe"] as const;

/** Where each thing goes after the case. */
export const localWasteSchema = z.strictObject({
  hospital: plainText,
  goes: z.array(z.strictObject({ thing: z.enum(LOCAL_WASTE), to: z.enum(STREAMS) })),
});

/** Limits that questions read, with the values that they can ask about. */
export const LOCAL_LIMITS = {
  "cuff-time": { unit: "min", least: 60, greatest: 90, step: 5 },
  "cuff-warning": { unit: "min", least: 5, greatest: 15, step: 5 },
  "cuff-rest": { unit: "min", least: 10, greatest: 20, step: 5 },
  "bag-reserve": { unit: "mL", least: 100, greatest: 300, step: 50 },
} as const;
export type LocalLimitName = keyof typeof LOCAL_LIMITS;
const limitNames = Object.keys(LOCAL_LIMITS) as [LocalLimitName, ...LocalLimitName[]];

/** Our own limits, each with the sheet on which it stands. */
export const localLimitsSchema = z.strictObject({
  hospital: plainText,
  limits: z.array(z.strictObject({
    limit: z.enum(limitNames),
    says: plainText,
    value: z.number().positive(),
    unit: z.string().refine((name) => Object.hasOwn(UNITS, name), "unknown unit"),
    sheet: plainText,
  })),
});
