import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M02. */
export const LOAD_M02: Loaders = {};
