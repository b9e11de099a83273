import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M12. */
export const LOAD_M12: Loaders = {};
