import type { Family } from "../../engine/question/family.ts";
import { beforeSkin } from "./before-skin.ts";
import { cuffWidth } from "./cuff-width.ts";
import { doseCuff } from "./dose-cuff.ts";
import { estimate } from "./estimate.ts";
import { fixedVsMeasured } from "./fixed-vs-measured.ts";
import { cuffMinutesLeft } from "./minutes-left.ts";
import { pressure } from "./pressure.ts";
import { skinAndWarmth } from "./skin-and-warmth.ts";
import { twoPeriods } from "./two-periods.ts";

/** Families of module M05, in the order of their codes, newest version first. */
export const M05: readonly (readonly Family[])[] = [
  [cuffWidth], [pressure], [estimate], [cuffMinutesLeft], [twoPeriods], [fixedVsMeasured], [doseCuff], [beforeSkin], [skinAndWarmth],
];
