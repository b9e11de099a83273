import { z } from "zod";

/** Whose rule an edge is. */
export const WHOSE = ["common practice", "local list", "device instructions", "author"] as const;

const cardId = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const sentence = z.string().trim().min(10).max(140).regex(/\.$/);

/** One card must stand before another: why, whose rule that is, and whether breaking it can hurt somebody. */
export const graphEdgeSchema = z.strictObject({
  before: cardId,
  after: cardId,
  reason: sentence,
  whose: z.enum(WHOSE),
  critical: z.literal(true).optional(),
});

/** The steps of one family of orders. */
export const graphSchema = z.strictObject({
  graph: cardId,
  title: z.string().trim().min(1),
  cards: z.array(cardId).min(3),
  edges: z.array(graphEdgeSchema).min(2),
});
