import { z } from "zod";
import { MOST_ATTEMPTS, MOST_QUESTIONS, ROUTES } from "../engine/record/list-form.ts";

const GREATEST_NUMBER = 63;
const MOST_TITLE = 80;
const family = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);

/** A ready-made teaching list. It is not changed once a code of it is out; a better one takes the next number. */
export const presetSchema = z
  .strictObject({
    number: z.int().min(0).max(GREATEST_NUMBER),
    title: z.string().trim().min(1).max(MOST_TITLE),
    families: z.array(family).min(1).max(MOST_QUESTIONS),
    /** Questions of each family. */
    each: z.int().min(1).max(MOST_QUESTIONS),
    sheet: z.enum(["own", "same"]),
    attempts: z.int().min(1).max(MOST_ATTEMPTS),
    rightPercent: z.int().min(0).max(100),
    /** Families of which every question must be right. */
    must: z.array(family),
    noUnsafe: z.boolean(),
    back: z.array(z.enum(ROUTES)).min(1),
  })
  .refine(({ families, each }) => families.length * each <= MOST_QUESTIONS, { path: ["each"], message: "too many questions" })
  .refine(({ families, must }) => must.every((id) => families.includes(id)), { path: ["must"], message: "not on the list" });

/** `content/presets.json`. */
export const presetsSchema = z.array(presetSchema);
