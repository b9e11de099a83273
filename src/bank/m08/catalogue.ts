import type { Family } from "../../engine/question/family.ts";
import { blindRim } from "./blind-rim.ts";
import { stations } from "./stations.ts";
import { timeBudget } from "./time-budget.ts";
import { unrecorded } from "./unrecorded.ts";
import { unseenShare } from "./unseen.ts";
import { whereAmI } from "./where-am-i.ts";

/** Families of module M08, in the order of their codes, newest version first. */
export const M08: readonly (readonly Family[])[] = [
  [stations], [unrecorded], [timeBudget], [unseenShare], [blindRim], [whereAmI],
];
