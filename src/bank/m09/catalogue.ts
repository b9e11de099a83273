import type { Family } from "../../engine/question/family.ts";

/** Families of module M09, in the order of their codes, newest version first. */
export const M09: readonly (readonly Family[])[] = [];
