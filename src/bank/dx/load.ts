import type { Loaders } from "../loaders.ts";

/** One chunk a family of module DX. */
export const LOAD_DX: Loaders = {
  difficulty: async () => (await import("./difficulty.ts")).difficulty,
  "cut-score": async () => (await import("./cut-score.ts")).cutScore,
};
