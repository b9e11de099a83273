import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M11. */
export const LOAD_M11: Loaders = {
  "how-many": () => import("./how-many.ts"),
  "real-gap": () => import("./real-gap.ts"),
  passes: () => import("./passes.ts"),
  "both-faces": () => import("./both-faces.ts"),
  "one-stitch": () => import("./one-stitch.ts"),
  spread: () => import("./spread.ts"),
  orientation: () => import("./orientation.ts"),
  "load-share": () => import("./load-share.ts"),
  "time-fit": () => import("./time-fit.ts"),
  "open-vs-used": () => import("./open-vs-used.ts"),
  "one-more": () => import("./one-more.ts"),
  "physis-share": () => import("./physis-share.ts"),
};
