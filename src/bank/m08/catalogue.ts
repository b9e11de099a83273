import type { Family } from "../../engine/question/family.ts";
import { stations } from "./stations.ts";
import { unrecorded } from "./unrecorded.ts";

/** Families of module M08, in the order of their codes, newest version first. */
export const M08: readonly (readonly Family[])[] = [
  [stations], [unrecorded],
];
