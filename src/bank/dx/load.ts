import type { Loaders } from "../loaders.ts";

/** One chunk a family of module DX. */
export const LOAD_DX: Loaders = {
  difficulty: () => import("./difficulty.ts"),
  discriminate: () => import("./discriminate.ts"),
  "point-biserial": () => import("./point-biserial.ts"),
  reliability: () => import("./reliability.ts"),
  "cut-score": () => import("./cut-score.ts"),
  "dead-choice": () => import("./dead-choice.ts"),
  "contact-time": () => import("./contact-time.ts"),
  "too-few": () => import("./too-few.ts"),
  "rare-harm": () => import("./rare-harm.ts"),
};
