import { z } from "zod";

/** What is known about an entry and how: only `read` and `quoted` were seen in a paper. */
export const LEDGER_STATES = [
  "read",
  "quoted",
  "derived",
  "assumed",
  "memory",
  "common-practice",
  "local",
  "not-found",
] as const;

const filledText = z.string().trim().min(1);

/** A number as the paper prints it, digits kept. */
const decimalText = z.string().regex(/^-?\d+(\.\d+)?$/);

const valueSchema = z
  .union([
    z.strictObject({ mean: decimalText, sd: decimalText }),
    z.strictObject({ value: decimalText }),
    z.strictObject({ from: decimalText, to: decimalText }),
    z.strictObject({ mean: decimalText, from: decimalText, to: decimalText }),
    z.strictObject({ median: decimalText }),
    z.strictObject({ median: decimalText, from: decimalText, to: decimalText }),
    z.strictObject({ events: decimalText, total: decimalText }),
  ])
  .nullable();

export const revisionSchema = z.strictObject({
  revision: z.number().int().positive(),
  state: z.enum(LEDGER_STATES),
  value: valueSchema,
  source: filledText.nullish(),
  readIn: filledText.nullish(),
  note: filledText.optional(),
  formula: filledText.optional(),
  parents: z.array(z.string().regex(/^[a-z0-9-]+\.[a-z0-9-]+@\d+$/)).optional(),
  replacedBy: z.number().int().positive().optional(),
});

export const populationSchema = z.strictObject({
  who: filledText,
  ages: z.strictObject({ from: z.number().nonnegative(), to: z.number().positive() }).nullable(),
  sex: z.enum(["boys", "girls", "both", "not stated"]),
  n: z.number().int().positive().nullable(),
  adult: z.boolean(),
});

export const ledgerEntrySchema = z.strictObject({
  key: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*\.[a-z0-9]+(-[a-z0-9]+)*$/),
  name: filledText,
  definition: filledText,
  population: populationSchema,
  position: filledText,
  method: filledText,
  unit: z.string(),
  /** Name of the rule set that the value belongs to: sets are named and never merged. */
  set: filledText.optional(),
  flags: z.array(z.string()).optional(),
  revisions: z.array(revisionSchema).min(1),
});

/** Papers or rules that print different values: which, what differs, and what to make of it. */
export const conflictSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  between: z.array(filledText).min(1),
  differs: filledText,
  teach: filledText,
});

/** One file of `content/ledger`. */
export const ledgerTopicSchema = z.strictObject({
  topic: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  title: filledText,
  entries: z.array(ledgerEntrySchema),
  conflicts: z.array(conflictSchema).optional(),
});

export type LedgerTopic = z.infer<typeof ledgerTopicSchema>;
export type LedgerEntry = z.infer<typeof ledgerEntrySchema>;
