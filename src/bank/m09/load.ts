import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M09. */
export const LOAD_M09: Loaders = {
  "rim-zone": () => import("./rim-zone.ts"),
  "clock-length": () => import("./clock-length.ts"),
  "probe-steps": () => import("./probe-steps.ts"),
  "depth-in-width": () => import("./depth-in-width.ts"),
  pattern: () => import("./pattern.ts"),
  discoid: () => import("./discoid.ts"),
  "rim-left": () => import("./rim-left.ts"),
  agreement: () => import("./agreement.ts"),
  stability: () => import("./stability.ts"),
  "rim-stability": () => import("./rim-stability.ts"),
  "notch-look": () => import("./notch-look.ts"),
  hiatus: () => import("./hiatus.ts"),
};
