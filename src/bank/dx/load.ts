import type { Loaders } from "../loaders.ts";

/** One chunk a family of module DX. */
export const LOAD_DX: Loaders = {};
