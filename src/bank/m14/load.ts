import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M14. */
export const LOAD_M14: Loaders = {
  "visit-dates": () => import("./visit-dates.ts"),
  "step-load": () => import("./step-load.ts"),
  "flexion-plan": () => import("./flexion-plan.ts"),
  "rate-ci": () => import("./rate-ci.ts"),
  "odds-to-risk": () => import("./odds-to-risk.ts"),
  "crude-rr": () => import("./crude-rr.ts"),
  "real-change": () => import("./real-change.ts"),
  "score-100": () => import("./score-100.ts"),
  "zero-events": () => import("./zero-events.ts"),
  "red-flag": () => import("./red-flag.ts"),
  "print-fault": () => import("./print-fault.ts"),
  "side-to-side": () => import("./side-to-side.ts"),
};
