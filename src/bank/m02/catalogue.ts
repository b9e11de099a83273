import type { Family } from "../../engine/question/family.ts";

/** Families of module M02, in the order of their codes, newest version first. */
export const M02: readonly (readonly Family[])[] = [];
