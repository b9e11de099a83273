import type { Family } from "../../engine/question/family.ts";

/** Families of module M01, in the order of their codes, newest version first. */
export const M01: readonly (readonly Family[])[] = [];
