import { recordSchema } from "../schemas/record.ts";

/** The published form of one line of a record: whoever keeps a file can read it without this site. */
export const GET = (): Response => new Response(`${JSON.stringify(recordSchema, null, 2)}\n`, { headers: { "Content-Type": "application/json" } });
