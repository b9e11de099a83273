import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M09. */
export const LOAD_M09: Loaders = {
  "rim-zone": async () => (await import("./rim-zone.ts")).rimZone,
  "clock-length": async () => (await import("./clock-length.ts")).clockLength,
  discoid: async () => (await import("./discoid.ts")).discoidCriteria,
};
