import { z } from "zod";

/** The parts of Experience API 1.0.3, part two, sections 2.2 and 2.4, that this site's statements use; nothing else is allowed, no null and no empty object. */

const iri = z.string().regex(/^[a-z][a-z0-9+.-]*:\/?\/?[^\s<>"{}|\\^`]+$/i);
const languageMap = z.record(z.string().regex(/^[a-z]{2,3}(-[A-Z]{2})?$/), z.string().min(1)).refine((map) => Object.keys(map).length > 0);
const uuid = z.string().regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
const extensions = z.record(iri, z.union([z.string(), z.number(), z.boolean()])).refine((map) => Object.keys(map).length > 0);
const timestamp = z.string().regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/);

const definition = z.strictObject({
  name: languageMap.optional(),
  description: languageMap.optional(),
  type: iri.optional(),
  interactionType: z.enum(["true-false", "choice", "fill-in", "long-fill-in", "matching", "performance", "sequencing", "likert", "numeric", "other"]).optional(),
  correctResponsesPattern: z.array(z.string().regex(/^-?\d+(\.\d+)?\[:\]-?\d+(\.\d+)?$/)).min(1).optional(),
}).refine(({ type, interactionType }) => (type === "http://adlnet.gov/expapi/activities/cmi.interaction") === (interactionType !== undefined), "an interaction names its kind");

const activity = z.strictObject({ objectType: z.literal("Activity"), id: iri, definition: definition.optional() });
const actor = z.strictObject({ objectType: z.literal("Agent"), account: z.strictObject({ homePage: iri, name: z.string().min(1) }) });
const score = z.strictObject({ scaled: z.number().min(-1).max(1) });

export const statementSchema = z.strictObject({
  id: uuid,
  actor,
  verb: z.strictObject({ id: iri, display: languageMap }),
  object: activity,
  result: z.strictObject({ success: z.boolean().optional(), completion: z.boolean().optional(), response: z.string().optional(), score: score.optional(), extensions: extensions.optional() }),
  context: z.strictObject({
    registration: uuid,
    platform: z.string().min(1),
    language: z.string().regex(/^[a-z]{2,3}(-[A-Z]{2})?$/),
    contextActivities: z.strictObject({ parent: z.array(activity).min(1).optional(), grouping: z.array(activity).min(1).optional() }).optional(),
    extensions: extensions.optional(),
  }),
  timestamp: timestamp.optional(),
});
