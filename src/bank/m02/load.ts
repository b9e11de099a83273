import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M02. */
export const LOAD_M02: Loaders = {
  "two-by-two": async () => (await import("./two-by-two.ts")).twoByTwoTable,
  "ppv-from-base": async () => (await import("./ppv-from-base.ts")).ppvFromBase,
  "hidden-base": async () => (await import("./hidden-base.ts")).hiddenBase,
};
