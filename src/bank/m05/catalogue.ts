import type { Family } from "../../engine/question/family.ts";

/** Families of module M05, in the order of their codes, newest version first. */
export const M05: readonly (readonly Family[])[] = [];
