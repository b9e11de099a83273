import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M06. */
export const LOAD_M06: Loaders = {
  "between-tools": () => import("./between-tools.ts"),
  reach: () => import("./reach.ts"),
  approach: () => import("./approach.ts"),
  "over-the-hump": () => import("./over-the-hump.ts"),
  "lines-that-touch": () => import("./lines-that-touch.ts"),
  portal: () => import("./portal.ts"),
  "swap-or-stay": () => import("./swap-or-stay.ts"),
};
