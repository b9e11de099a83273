import { z } from "zod";
import { SAYS } from "../engine/question/response.ts";
import { REASONS, VERDICTS } from "../engine/question/verdict.ts";

const decimalText = z.string().regex(/^-?\d+(\.\d+)?$/);
const reason = z.enum(REASONS as [string, ...string[]]);

/** The result of grading one response. */
export const verdictSchema = z.strictObject({
  verdict: z.enum(VERDICTS),
  reason: reason.optional(),
  slip: z.string().optional(),
  score: z.number().min(0).max(1),
  accepted: z.record(z.string(), z.strictObject({ from: decimalText, to: decimalText })),
  acceptedSays: z.enum(SAYS).optional(),
  parts: z.array(z.strictObject({ ask: z.string(), verdict: z.enum(VERDICTS), value: decimalText.optional(), reason: reason.optional(), found: z.string().optional() })),
  working: z.array(z.string().min(1)).min(1),
  cautions: z.array(z.string()),
  sources: z.array(z.strictObject({ source: z.string(), entry: z.string() })),
});
