import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M13. */
export const LOAD_M13: Loaders = {
  reconcile: async () => (await import("./reconcile.ts")).reconcile,
  needles: async () => (await import("./needles.ts")).needles,
  drill: async () => (await import("./drill.ts")).drill,
  streams: async () => (await import("./streams.ts")).streams,
  "mass-carbon": async () => (await import("./mass-carbon.ts")).massCarbon,
  "break-even": async () => (await import("./break-even.ts")).breakEven,
  "how-rare": async () => (await import("./how-rare.ts")).howRare,
  record: async () => (await import("./record.ts")).record,
  "evidence-both-ways": async () => (await import("./evidence-both-ways.ts")).evidenceBothWays,
  "implant-trace": async () => (await import("./implant-trace.ts")).implantTrace,
};
