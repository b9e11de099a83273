import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M05. */
export const LOAD_M05: Loaders = {};
