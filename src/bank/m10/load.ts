import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M10. */
export const LOAD_M10: Loaders = {
  "path-width": () => import("./path-width.ts"),
  "least-depth": () => import("./least-depth.ts"),
  "greatest-depth": () => import("./greatest-depth.ts"),
  window: () => import("./window.ts"),
  "stop-setting": () => import("./stop-setting.ts"),
  "zone-angle": () => import("./zone-angle.ts"),
  closest: () => import("./closest.ts"),
  "aim-error": () => import("./aim-error.ts"),
  needle: () => import("./needle.ts"),
  "depth-share": () => import("./depth-share.ts"),
  "two-papers": () => import("./two-papers.ts"),
  "angle-and-depth": () => import("./angle-and-depth.ts"),
  curve: () => import("./curve.ts"),
  "pulse-and-foot": () => import("./pulse-and-foot.ts"),
  "medial-side": () => import("./medial-side.ts"),
  "retractor-order": () => import("./retractor-order.ts"),
  "retractor-worth": () => import("./retractor-worth.ts"),
  "depth-to-stop": () => import("./depth-to-stop.ts"),
};
