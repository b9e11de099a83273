import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M06. */
export const LOAD_M06: Loaders = {
  "between-tools": async () => (await import("./between-tools.ts")).betweenTools,
  reach: async () => (await import("./reach.ts")).reach,
  approach: async () => (await import("./approach.ts")).approach,
  "over-the-hump": async () => (await import("./over-the-hump.ts")).overTheHump,
  "lines-that-touch": async () => (await import("./lines-that-touch.ts")).linesThatTouch,
  portal: async () => (await import("./portal.ts")).portal,
  "swap-or-stay": async () => (await import("./swap-or-stay.ts")).swapOrStay,
};
