import type { Loaders } from "../loaders.ts";

/** One chunk a family of module M02. */
export const LOAD_M02: Loaders = {
  "two-by-two": () => import("./two-by-two.ts"),
  "ppv-from-base": () => import("./ppv-from-base.ts"),
  "lr-odds": () => import("./lr-odds.ts"),
  "rebuild-table": () => import("./rebuild-table.ts"),
  "hidden-base": () => import("./hidden-base.ts"),
  "missed-per-list": () => import("./missed-per-list.ts"),
  "two-tests": () => import("./two-tests.ts"),
  slices: () => import("./slices.ts"),
  "bright-signal": () => import("./bright-signal.ts"),
  "no-mri": () => import("./no-mri.ts"),
};
