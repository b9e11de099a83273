import type { Family } from "../../engine/question/family.ts";

/** Families of module M04, in the order of their codes, newest version first. */
export const M04: readonly (readonly Family[])[] = [];
