import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M07. */
export const LOAD_M07: Loaders = {};
