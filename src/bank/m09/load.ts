import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M09. */
export const LOAD_M09: Loaders = {};
