import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M13. */
export const LOAD_M13: Loaders = {
  reconcile: () => import("./reconcile.ts"),
  needles: () => import("./needles.ts"),
  drill: () => import("./drill.ts"),
  streams: () => import("./streams.ts"),
  "mass-carbon": () => import("./mass-carbon.ts"),
  "break-even": () => import("./break-even.ts"),
  "how-rare": () => import("./how-rare.ts"),
  record: () => import("./record.ts"),
  "evidence-both-ways": () => import("./evidence-both-ways.ts"),
  "implant-trace": () => import("./implant-trace.ts"),
};
