import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M07. */
export const LOAD_M07: Loaders = {
  head: () => import("./head.ts"),
  "hang-at": () => import("./hang-at.ts"),
  "tube-power": () => import("./tube-power.ts"),
  annulus: () => import("./annulus.ts"),
  "lost-on-the-way": () => import("./lost-on-the-way.ts"),
  "bag-life": () => import("./bag-life.ts"),
  balance: () => import("./balance.ts"),
  syringe: () => import("./syringe.ts"),
  "move-the-knee": () => import("./move-the-knee.ts"),
  "table-up": () => import("./table-up.ts"),
};
