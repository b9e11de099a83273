import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M08. */
export const LOAD_M08: Loaders = {
  stations: async () => (await import("./stations.ts")).stations,
  unrecorded: async () => (await import("./unrecorded.ts")).unrecorded,
};
