import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M04. */
export const LOAD_M04: Loaders = {};
