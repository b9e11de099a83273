import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M13. */
export const LOAD_M13: Loaders = {
  reconcile: async () => (await import("./reconcile.ts")).reconcile,
  needles: async () => (await import("./needles.ts")).needles,
  drill: async () => (await import("./drill.ts")).drill,
  streams: async () => (await import("./streams.ts")).streams,
};
