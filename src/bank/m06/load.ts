import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M06. */
export const LOAD_M06: Loaders = {};
