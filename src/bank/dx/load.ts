import type { Loaders } from "../loaders.ts";

/** One chunk a family of module DX. */
export const LOAD_DX: Loaders = {
  difficulty: async () => (await import("./difficulty.ts")).difficulty,
  discriminate: async () => (await import("./discriminate.ts")).discriminate,
  "point-biserial": async () => (await import("./point-biserial.ts")).pointBiserial,
  reliability: async () => (await import("./reliability.ts")).reliabilityOfSheet,
  "cut-score": async () => (await import("./cut-score.ts")).cutScore,
  "dead-choice": async () => (await import("./dead-choice.ts")).deadChoice,
  "contact-time": async () => (await import("./contact-time.ts")).contactTime,
  "too-few": async () => (await import("./too-few.ts")).tooFew,
  "rare-harm": async () => (await import("./rare-harm.ts")).rareHarm,
};
