import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M13. */
export const LOAD_M13: Loaders = {};
