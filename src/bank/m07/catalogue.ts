import type { Family } from "../../engine/question/family.ts";
import { annulus } from "./annulus.ts";
import { bagLife } from "./bag-life.ts";
import { balance } from "./balance.ts";
import { hangAt } from "./hang-at.ts";
import { fluidHead } from "./head.ts";
import { lostOnTheWay } from "./lost-on-the-way.ts";
import { moveTheKnee } from "./move-the-knee.ts";
import { syringe } from "./syringe.ts";
import { tableUp } from "./table-up.ts";
import { tubePower } from "./tube-power.ts";

/** Families of module M07, in the order of their codes, newest version first. */
export const M07: readonly (readonly Family[])[] = [
  [fluidHead], [hangAt], [tubePower], [annulus], [lostOnTheWay], [bagLife], [balance], [syringe], [moveTheKnee], [tableUp],
];
