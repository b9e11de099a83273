import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M04. */
export const LOAD_M04: Loaders = {
  "pack-check": async () => (await import("./pack-check.ts")).packCheck,
  "date-check": async () => (await import("./date-check.ts")).dateCheck,
  "opening-sum": async () => (await import("./opening-sum.ts")).openingSum,
  "set-up-minutes": async () => (await import("./set-up-minutes.ts")).setUpMinutes,
  "set-up": async () => (await import("./set-up.ts")).setUp,
  spares: async () => (await import("./spares.ts")).spares,
  "picture-route": async () => (await import("./picture-route.ts")).pictureRoute,
  "field-fault": async () => (await import("./field-fault.ts")).fieldFault,
  "first-picture": async () => (await import("./first-picture.ts")).firstPicture,
  "team-pause": async () => (await import("./team-pause.ts")).teamPause,
};
