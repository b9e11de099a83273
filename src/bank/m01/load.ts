import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M01. */
export const LOAD_M01: Loaders = {
  "cover-area": () => import("./cover-area.ts"),
  "width-share": () => import("./width-share.ts"),
  "z-score": () => import("./z-score.ts"),
  "share-too-near": () => import("./share-too-near.ts"),
  "band-pick": () => import("./band-pick.ts"),
  "fit-check": () => import("./fit-check.ts"),
  structures: () => import("./structures.ts"),
  "width-is-not-depth": () => import("./width-is-not-depth.ts"),
};
