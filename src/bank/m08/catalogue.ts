import type { Family } from "../../engine/question/family.ts";

/** Families of module M08, in the order of their codes, newest version first. */
export const M08: readonly (readonly Family[])[] = [];
