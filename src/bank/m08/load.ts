import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M08. */
export const LOAD_M08: Loaders = {};
