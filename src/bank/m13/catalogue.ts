import type { Family } from "../../engine/question/family.ts";
import { drill } from "./drill.ts";
import { needles } from "./needles.ts";
import { reconcile } from "./reconcile.ts";
import { streams } from "./streams.ts";

/** Families of module M13, in the order of their codes, newest version first. */
export const M13: readonly (readonly Family[])[] = [[reconcile], [needles], [drill], [streams]];
