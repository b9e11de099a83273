import type { Family } from "../../engine/question/family.ts";

/** Families of module DX, in the order of their codes, newest version first. */
export const DX: readonly (readonly Family[])[] = [];
