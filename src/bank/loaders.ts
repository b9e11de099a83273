import type { Family } from "../engine/question/family.ts";

/** Fetches a family when a question of it is first worked on, by the family's id. */
export type Loaders = Readonly<Record<string, () => Promise<Family>>>;
