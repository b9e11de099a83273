import type { Family } from "../../engine/question/family.ts";

/** Families of module M12, in the order of their codes, newest version first. */
export const M12: readonly (readonly Family[])[] = [];
