import type { Family } from "../../engine/question/family.ts";

/** Families of module M11, in the order of their codes, newest version first. */
export const M11: readonly (readonly Family[])[] = [];
