import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M01. */
export const LOAD_M01: Loaders = {};
