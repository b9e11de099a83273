import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M11. */
export const LOAD_M11: Loaders = {
  "how-many": async () => (await import("./how-many.ts")).howMany,
  "real-gap": async () => (await import("./real-gap.ts")).realGap,
  passes: async () => (await import("./passes.ts")).needlePasses,
  "both-faces": async () => (await import("./both-faces.ts")).bothFaces,
  "one-stitch": async () => (await import("./one-stitch.ts")).oneStitch,
  spread: async () => (await import("./spread.ts")).spread,
  orientation: async () => (await import("./orientation.ts")).orientation,
  "load-share": async () => (await import("./load-share.ts")).loadShare,
  "time-fit": async () => (await import("./time-fit.ts")).timeFit,
  "open-vs-used": async () => (await import("./open-vs-used.ts")).openVsUsed,
  "one-more": async () => (await import("./one-more.ts")).oneMore,
  "physis-share": async () => (await import("./physis-share.ts")).physisShare,
};
