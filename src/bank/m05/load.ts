import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M05. */
export const LOAD_M05: Loaders = {
  "cuff-width": async () => (await import("./cuff-width.ts")).cuffWidth,
  pressure: async () => (await import("./pressure.ts")).pressure,
  estimate: async () => (await import("./estimate.ts")).estimate,
  "minutes-left": async () => (await import("./minutes-left.ts")).cuffMinutesLeft,
  "two-periods": async () => (await import("./two-periods.ts")).twoPeriods,
  "fixed-vs-measured": async () => (await import("./fixed-vs-measured.ts")).fixedVsMeasured,
  "dose-cuff": async () => (await import("./dose-cuff.ts")).doseCuff,
  "before-skin": async () => (await import("./before-skin.ts")).beforeSkin,
  "skin-and-warmth": async () => (await import("./skin-and-warmth.ts")).skinAndWarmth,
};
