import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M04. */
export const LOAD_M04: Loaders = {
  "pack-check": () => import("./pack-check.ts"),
  "date-check": () => import("./date-check.ts"),
  "opening-sum": () => import("./opening-sum.ts"),
  "set-up-minutes": () => import("./set-up-minutes.ts"),
  "set-up": () => import("./set-up.ts"),
  spares: () => import("./spares.ts"),
  "picture-route": () => import("./picture-route.ts"),
  "field-fault": () => import("./field-fault.ts"),
  "first-picture": () => import("./first-picture.ts"),
  "team-pause": () => import("./team-pause.ts"),
};
