import type { Family } from "../../engine/question/family.ts";

/** Families of module M03, in the order of their codes, newest version first. */
export const M03: readonly (readonly Family[])[] = [];
