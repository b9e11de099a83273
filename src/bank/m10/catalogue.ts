import type { Family } from "../../engine/question/family.ts";
import { greatestDepth } from "./greatest-depth.ts";
import { leastDepth } from "./least-depth.ts";
import { pathWidth } from "./path-width.ts";
import { depthWindow } from "./window.ts";

/** Families of module M10, in the order of their codes, newest version first. */
export const M10: readonly (readonly Family[])[] = [[pathWidth], [leastDepth], [greatestDepth], [depthWindow]];
