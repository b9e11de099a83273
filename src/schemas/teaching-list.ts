import { z } from "zod";
import { isTeachingList, LOCK_DIGITS, MOST_ATTEMPTS, MOST_QUESTIONS, ROUTES } from "../engine/record/list-form.ts";

const GREATEST_PLACE = 1023;
const GREATEST_EDITION = 31;
const MOST_TITLE = 80;
const MOST_BACK_TO = 160;

const place = z.int().min(0).max(GREATEST_PLACE);
const hex = (least: number, most: number) => z.string().min(least).max(most).regex(/^[0-9a-f]+$/);

/** A teaching list as its link carries it; what no field can say alone (days in order, no family twice) is left to the engine's guard. */
const form = z.strictObject({
  form: z.literal("list/1"),
  title: z.string().min(1).max(MOST_TITLE),
  edition: z.int().min(0).max(GREATEST_EDITION),
  /** Check of families and versions. */
  lock: hex(LOCK_DIGITS, LOCK_DIGITS),
  /** Place of a family in the edition's list, and how many questions of it. */
  picks: z.array(z.tuple([place, z.int().min(1).max(MOST_QUESTIONS)])).min(1).max(MOST_QUESTIONS),
  sheet: z.enum(["own", "same"]),
  attempts: z.int().min(1).max(MOST_ATTEMPTS),
  opensOn: z.iso.date(),
  dueOn: z.iso.date(),
  keepUntil: z.iso.date(),
  rule: z.strictObject({ rightPercent: z.int().min(0).max(100), must: z.array(place).max(MOST_QUESTIONS), noUnsafe: z.boolean() }),
  back: z.array(z.enum(ROUTES)).min(1).max(ROUTES.length),
  backTo: z.string().max(MOST_BACK_TO),
  spoken: hex(16, 16).nullable(),
  nonce: hex(5, 32),
});

export const teachingListSchema = form.refine((list) => isTeachingList(list), "the parts of the list do not fit together");
