import type { Family } from "../../engine/question/family.ts";

/** Families of module M07, in the order of their codes, newest version first. */
export const M07: readonly (readonly Family[])[] = [];
