import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M14. */
export const LOAD_M14: Loaders = {
  "visit-dates": async () => (await import("./visit-dates.ts")).visitDates,
  "step-load": async () => (await import("./step-load.ts")).stepLoad,
  "flexion-plan": async () => (await import("./flexion-plan.ts")).flexionPlan,
  "rate-ci": async () => (await import("./rate-ci.ts")).rateCi,
  "odds-to-risk": async () => (await import("./odds-to-risk.ts")).oddsToRisk,
  "crude-rr": async () => (await import("./crude-rr.ts")).crudeRr,
  "real-change": async () => (await import("./real-change.ts")).realChange,
  "score-100": async () => (await import("./score-100.ts")).score100,
  "zero-events": async () => (await import("./zero-events.ts")).zeroEvents,
  "red-flag": async () => (await import("./red-flag.ts")).redFlag,
  "print-fault": async () => (await import("./print-fault.ts")).printFault,
  "side-to-side": async () => (await import("./side-to-side.ts")).sideToSide,
};
