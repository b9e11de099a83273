import type { Family } from "../../engine/question/family.ts";

/** Families of module M06, in the order of their codes, newest version first. */
export const M06: readonly (readonly Family[])[] = [];
