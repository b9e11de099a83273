import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M03. */
export const LOAD_M03: Loaders = {
  "field-width": () => import("./field-width.ts"),
  "back-off": () => import("./back-off.ts"),
  "in-view": () => import("./in-view.ts"),
  "blind-ahead": () => import("./blind-ahead.ts"),
  "saline-field": () => import("./saline-field.ts"),
  "probe-ruler": () => import("./probe-ruler.ts"),
  "ruler-depth": () => import("./ruler-depth.ts"),
  "tilt-needed": () => import("./tilt-needed.ts"),
  "pixel-size": () => import("./pixel-size.ts"),
  "same-place": () => import("./same-place.ts"),
};
