import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M02. */
export const LOAD_M02: Loaders = {
  "two-by-two": async () => (await import("./two-by-two.ts")).twoByTwoTable,
  "ppv-from-base": async () => (await import("./ppv-from-base.ts")).ppvFromBase,
  "lr-odds": async () => (await import("./lr-odds.ts")).lrOdds,
  "rebuild-table": async () => (await import("./rebuild-table.ts")).rebuildTable,
  "hidden-base": async () => (await import("./hidden-base.ts")).hiddenBase,
  "missed-per-list": async () => (await import("./missed-per-list.ts")).missedPerList,
  "two-tests": async () => (await import("./two-tests.ts")).twoTests,
  slices: async () => (await import("./slices.ts")).slices,
  "bright-signal": async () => (await import("./bright-signal.ts")).brightSignal,
  "no-mri": async () => (await import("./no-mri.ts")).noMri,
};
