import type { Family } from "../../engine/question/family.ts";
import { hiddenBase } from "./hidden-base.ts";
import { ppvFromBase } from "./ppv-from-base.ts";
import { twoByTwoTable } from "./two-by-two.ts";

/** Families of module M02, in the order of their codes, newest version first. */
export const M02: readonly (readonly Family[])[] = [
  [twoByTwoTable], [ppvFromBase], [hiddenBase],
];
