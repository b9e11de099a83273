import { cohortJsonSchema } from "../schemas/cohort.ts";

/** The published form of a saved cohort: whoever keeps a file can read it without this site. */
export const GET = (): Response => new Response(`${JSON.stringify(cohortJsonSchema, null, 2)}\n`, { headers: { "Content-Type": "application/json" } });
