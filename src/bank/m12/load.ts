import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M12. */
export const LOAD_M12: Loaders = {
  "capped-dose": async () => (await import("./capped-dose.ts")).cappedDose,
  percent: async () => (await import("./percent.ts")).percentStrength,
  "most-volume": async () => (await import("./most-volume.ts")).mostVolume,
  "two-agents": async () => (await import("./two-agents.ts")).twoAgents,
  "repeat-time": async () => (await import("./repeat-time.ts")).repeatTime,
  dilute: async () => (await import("./dilute.ts")).dilute,
  infant: async () => (await import("./infant.ts")).infant,
  "spot-it": async () => (await import("./spot-it.ts")).spotIt,
  "two-sheets": async () => (await import("./two-sheets.ts")).twoSheets,
  units: async () => (await import("./units.ts")).doseUnits,
  "injection-site": async () => (await import("./injection-site.ts")).injectionSite,
  "write-it-safely": async () => (await import("./write-it-safely.ts")).writeItSafely,
};
