import type { Family } from "../../engine/question/family.ts";
import { approach } from "./approach.ts";
import { betweenTools } from "./between-tools.ts";
import { linesThatTouch } from "./lines-that-touch.ts";
import { overTheHump } from "./over-the-hump.ts";
import { portal } from "./portal.ts";
import { reach } from "./reach.ts";
import { swapOrStay } from "./swap-or-stay.ts";

/** Families of module M06, in the order of their codes, newest version first. */
export const M06: readonly (readonly Family[])[] = [
  [betweenTools], [reach], [approach], [overTheHump], [linesThatTouch], [portal], [swapOrStay],
];
