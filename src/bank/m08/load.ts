import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M08. */
export const LOAD_M08: Loaders = {
  stations: () => import("./stations.ts"),
  unrecorded: () => import("./unrecorded.ts"),
  "time-budget": () => import("./time-budget.ts"),
  unseen: () => import("./unseen.ts"),
  "where-am-i": () => import("./where-am-i.ts"),
  "blind-rim": () => import("./blind-rim.ts"),
};
