import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M03. */
export const LOAD_M03: Loaders = {};
