import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M03. */
export const LOAD_M03: Loaders = {
  "field-width": async () => (await import("./field-width.ts")).fieldWidth,
  "back-off": async () => (await import("./back-off.ts")).backOff,
  "in-view": async () => (await import("./in-view.ts")).targetInView,
  "blind-ahead": async () => (await import("./blind-ahead.ts")).blindAhead,
  "saline-field": async () => (await import("./saline-field.ts")).salineField,
  "probe-ruler": async () => (await import("./probe-ruler.ts")).probeRuler,
  "ruler-depth": async () => (await import("./ruler-depth.ts")).rulerDepth,
  "tilt-needed": async () => (await import("./tilt-needed.ts")).tiltNeeded,
  "pixel-size": async () => (await import("./pixel-size.ts")).pixelSize,
  "same-place": async () => (await import("./same-place.ts")).samePlace,
};
