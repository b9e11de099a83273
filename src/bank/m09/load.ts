import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M09. */
export const LOAD_M09: Loaders = {
  "rim-zone": async () => (await import("./rim-zone.ts")).rimZone,
  "clock-length": async () => (await import("./clock-length.ts")).clockLength,
  "probe-steps": async () => (await import("./probe-steps.ts")).probeSteps,
  "depth-in-width": async () => (await import("./depth-in-width.ts")).depthInWidth,
  pattern: async () => (await import("./pattern.ts")).tearPattern,
  discoid: async () => (await import("./discoid.ts")).discoidCriteria,
  "rim-left": async () => (await import("./rim-left.ts")).rimLeft,
  agreement: async () => (await import("./agreement.ts")).agreement,
  stability: async () => (await import("./stability.ts")).stability,
  "notch-look": async () => (await import("./notch-look.ts")).notchLook,
  hiatus: async () => (await import("./hiatus.ts")).hiatusFinding,
};
