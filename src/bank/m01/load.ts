import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M01. */
export const LOAD_M01: Loaders = {
  "cover-area": async () => (await import("./cover-area.ts")).coverArea,
  "width-share": async () => (await import("./width-share.ts")).widthShare,
  "z-score": async () => (await import("./z-score.ts")).zScore,
  "share-too-near": async () => (await import("./share-too-near.ts")).shareTooNear,
  "band-pick": async () => (await import("./band-pick.ts")).bandPick,
  "fit-check": async () => (await import("./fit-check.ts")).fitCheck,
  structures: async () => (await import("./structures.ts")).structures,
  "width-is-not-depth": async () => (await import("./width-is-not-depth.ts")).widthIsNotDepth,
};
