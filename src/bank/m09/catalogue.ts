import type { Family } from "../../engine/question/family.ts";
import { clockLength } from "./clock-length.ts";
import { discoidCriteria } from "./discoid.ts";
import { rimZone } from "./rim-zone.ts";

/** Families of module M09, in the order of their codes, newest version first. */
export const M09: readonly (readonly Family[])[] = [
  [rimZone], [clockLength], [discoidCriteria],
];
