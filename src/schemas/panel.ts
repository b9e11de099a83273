import { z } from "zod";

const filledText = z.string().trim().min(1);

/** What a panel of judges wrote down for one sheet. */
export const panelSchema = z
  .strictObject({
    /** The day of the meeting. */
    on: z.iso.date(),
    sheet: filledText,
    /** Judges by role and place, never by name. */
    judges: z.array(filledText).min(1),
    /** Families that must be right; they have no estimates. */
    must: z.array(filledText),
    /** For each family one share per judge, in the order of the judges. */
    estimates: z.record(z.string(), z.array(z.number().min(0).max(1)).min(1)),
  })
  .superRefine(({ judges, must, estimates }, context) => {
    for (const [family, shares] of Object.entries(estimates)) {
      if (shares.length !== judges.length || must.includes(family)) context.addIssue({ code: "custom", path: ["estimates", family], message: "one share per judge, and none of what must be right" });
    }
  });

/** `content/panels.json`. */
export const panelsSchema = z.array(panelSchema);
