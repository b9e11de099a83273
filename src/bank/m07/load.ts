import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M07. */
export const LOAD_M07: Loaders = {
  head: async () => (await import("./head.ts")).fluidHead,
  "hang-at": async () => (await import("./hang-at.ts")).hangAt,
  "tube-power": async () => (await import("./tube-power.ts")).tubePower,
  annulus: async () => (await import("./annulus.ts")).annulus,
  "lost-on-the-way": async () => (await import("./lost-on-the-way.ts")).lostOnTheWay,
  "bag-life": async () => (await import("./bag-life.ts")).bagLife,
  balance: async () => (await import("./balance.ts")).balance,
  syringe: async () => (await import("./syringe.ts")).syringe,
  "move-the-knee": async () => (await import("./move-the-knee.ts")).moveTheKnee,
  "table-up": async () => (await import("./table-up.ts")).tableUp,
};
