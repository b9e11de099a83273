import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M10. */
export const LOAD_M10: Loaders = {
  "path-width": async () => (await import("./path-width.ts")).pathWidth,
  "least-depth": async () => (await import("./least-depth.ts")).leastDepth,
  "greatest-depth": async () => (await import("./greatest-depth.ts")).greatestDepth,
  window: async () => (await import("./window.ts")).depthWindow,
};
