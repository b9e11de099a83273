import type { Family } from "../../engine/question/family.ts";

/** Families of module M13, in the order of their codes, newest version first. */
export const M13: readonly (readonly Family[])[] = [];
