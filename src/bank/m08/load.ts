import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M08. */
export const LOAD_M08: Loaders = {
  stations: async () => (await import("./stations.ts")).stations,
  unrecorded: async () => (await import("./unrecorded.ts")).unrecorded,
  "time-budget": async () => (await import("./time-budget.ts")).timeBudget,
  unseen: async () => (await import("./unseen.ts")).unseenShare,
  "where-am-i": async () => (await import("./where-am-i.ts")).whereAmI,
  "blind-rim": async () => (await import("./blind-rim.ts")).blindRim,
};
