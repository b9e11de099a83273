import type { Family } from "../../engine/question/family.ts";
import { agreement } from "./agreement.ts";
import { clockLength } from "./clock-length.ts";
import { depthInWidth } from "./depth-in-width.ts";
import { discoidCriteria } from "./discoid.ts";
import { hiatusFinding } from "./hiatus.ts";
import { tearPattern } from "./pattern.ts";
import { notchLook } from "./notch-look.ts";
import { probeSteps } from "./probe-steps.ts";
import { rimLeft } from "./rim-left.ts";
import { rimStability } from "./rim-stability.ts";
import { rimZone } from "./rim-zone.ts";
import { stability } from "./stability.ts";

/** Families of module M09, in the order of their codes, newest version first. */
export const M09: readonly (readonly Family[])[] = [
  [rimZone], [clockLength], [probeSteps], [depthInWidth], [tearPattern], [discoidCriteria], [rimLeft], [agreement], [stability], [rimStability], [notchLook], [hiatusFinding],
];
