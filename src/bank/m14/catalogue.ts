import type { Family } from "../../engine/question/family.ts";

/** Families of module M14, in the order of their codes, newest version first. */
export const M14: readonly (readonly Family[])[] = [];
