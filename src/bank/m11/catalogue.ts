import type { Family } from "../../engine/question/family.ts";
import { howMany } from "./how-many.ts";
import { oneStitch } from "./one-stitch.ts";
import { needlePasses } from "./passes.ts";
import { realGap } from "./real-gap.ts";

/** Families of module M11, in the order of their codes, newest version first. */
export const M11: readonly (readonly Family[])[] = [
  [howMany], [realGap], [needlePasses], [oneStitch],
];
