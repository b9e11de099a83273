import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M12. */
export const LOAD_M12: Loaders = {
  "capped-dose": () => import("./capped-dose.ts"),
  percent: () => import("./percent.ts"),
  "most-volume": () => import("./most-volume.ts"),
  "two-agents": () => import("./two-agents.ts"),
  "repeat-time": () => import("./repeat-time.ts"),
  dilute: () => import("./dilute.ts"),
  infant: () => import("./infant.ts"),
  "spot-it": () => import("./spot-it.ts"),
  "two-sheets": () => import("./two-sheets.ts"),
  units: () => import("./units.ts"),
  "injection-site": () => import("./injection-site.ts"),
  "write-it-safely": () => import("./write-it-safely.ts"),
};
