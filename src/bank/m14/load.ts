import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M14. */
export const LOAD_M14: Loaders = {
  "visit-dates": async () => (await import("./visit-dates.ts")).visitDates,
  "step-load": async () => (await import("./step-load.ts")).stepLoad,
  "rate-ci": async () => (await import("./rate-ci.ts")).rateCi,
  "real-change": async () => (await import("./real-change.ts")).realChange,
  "red-flag": async () => (await import("./red-flag.ts")).redFlag,
  "print-fault": async () => (await import("./print-fault.ts")).printFault,
};
