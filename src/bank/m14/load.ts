import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M14. */
export const LOAD_M14: Loaders = {};
