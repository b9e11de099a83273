import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M05. */
export const LOAD_M05: Loaders = {
  "cuff-width": () => import("./cuff-width.ts"),
  pressure: () => import("./pressure.ts"),
  estimate: () => import("./estimate.ts"),
  "minutes-left": () => import("./minutes-left.ts"),
  "two-periods": () => import("./two-periods.ts"),
  "fixed-vs-measured": () => import("./fixed-vs-measured.ts"),
  "dose-cuff": () => import("./dose-cuff.ts"),
  "before-skin": () => import("./before-skin.ts"),
  "skin-and-warmth": () => import("./skin-and-warmth.ts"),
};
