import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M11. */
export const LOAD_M11: Loaders = {
  "how-many": async () => (await import("./how-many.ts")).howMany,
  "real-gap": async () => (await import("./real-gap.ts")).realGap,
  passes: async () => (await import("./passes.ts")).needlePasses,
  "one-stitch": async () => (await import("./one-stitch.ts")).oneStitch,
};
