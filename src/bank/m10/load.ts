import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M10. */
export const LOAD_M10: Loaders = {
  "path-width": async () => (await import("./path-width.ts")).pathWidth,
  "least-depth": async () => (await import("./least-depth.ts")).leastDepth,
  "greatest-depth": async () => (await import("./greatest-depth.ts")).greatestDepth,
  window: async () => (await import("./window.ts")).depthWindow,
  "stop-setting": async () => (await import("./stop-setting.ts")).stopSetting,
  "zone-angle": async () => (await import("./zone-angle.ts")).zoneAngle,
  closest: async () => (await import("./closest.ts")).closest,
  "aim-error": async () => (await import("./aim-error.ts")).aimError,
  needle: async () => (await import("./needle.ts")).needle,
  "depth-share": async () => (await import("./depth-share.ts")).depthShare,
  "two-papers": async () => (await import("./two-papers.ts")).twoPapers,
  "angle-and-depth": async () => (await import("./angle-and-depth.ts")).angleAndDepth,
  curve: async () => (await import("./curve.ts")).curve,
  "pulse-and-foot": async () => (await import("./pulse-and-foot.ts")).pulseAndFoot,
  "medial-side": async () => (await import("./medial-side.ts")).medialSide,
  "retractor-order": async () => (await import("./retractor-order.ts")).retractorOrder,
  "retractor-worth": async () => (await import("./retractor-worth.ts")).retractorWorth,
  "depth-to-stop": async () => (await import("./depth-to-stop.ts")).depthToStop,
};
