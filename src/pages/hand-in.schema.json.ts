import { handInFileSchema } from "../schemas/hand-in.ts";

/** The published form of a hand-in file: whoever holds one can read it without this site. */
export const GET = (): Response => new Response(`${JSON.stringify(handInFileSchema, null, 2)}\n`, { headers: { "Content-Type": "application/json" } });
