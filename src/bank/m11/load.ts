import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M11. */
export const LOAD_M11: Loaders = {};
