import type { Family } from "../../engine/question/family.ts";
import { brightSignal } from "./bright-signal.ts";
import { hiddenBase } from "./hidden-base.ts";
import { lrOdds } from "./lr-odds.ts";
import { missedPerList } from "./missed-per-list.ts";
import { noMri } from "./no-mri.ts";
import { ppvFromBase } from "./ppv-from-base.ts";
import { rebuildTable } from "./rebuild-table.ts";
import { slices } from "./slices.ts";
import { twoByTwoTable } from "./two-by-two.ts";
import { twoTests } from "./two-tests.ts";

/** Families of module M02, in the order of their codes, newest version first. */
export const M02: readonly (readonly Family[])[] = [
  [twoByTwoTable], [ppvFromBase], [lrOdds], [rebuildTable], [hiddenBase], [missedPerList], [twoTests], [slices],
  [brightSignal], [noMri],
];
