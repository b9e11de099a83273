import type { Family } from "../../engine/question/family.ts";
import { aimError } from "./aim-error.ts";
import { angleAndDepth } from "./angle-and-depth.ts";
import { closest } from "./closest.ts";
import { curve } from "./curve.ts";
import { depthShare } from "./depth-share.ts";
import { depthToStop } from "./depth-to-stop.ts";
import { greatestDepth } from "./greatest-depth.ts";
import { leastDepth } from "./least-depth.ts";
import { medialSide } from "./medial-side.ts";
import { needle } from "./needle.ts";
import { pathWidth } from "./path-width.ts";
import { pulseAndFoot } from "./pulse-and-foot.ts";
import { retractorOrder } from "./retractor-order.ts";
import { retractorWorth } from "./retractor-worth.ts";
import { stopSetting } from "./stop-setting.ts";
import { twoPapers } from "./two-papers.ts";
import { depthWindow } from "./window.ts";
import { zoneAngle } from "./zone-angle.ts";

/** Families of module M10, in the order of their codes, newest version first. */
export const M10: readonly (readonly Family[])[] = [
  [pathWidth], [leastDepth], [greatestDepth], [depthWindow], [stopSetting], [zoneAngle], [closest], [aimError], [needle], [depthShare],
  [twoPapers], [angleAndDepth], [curve], [pulseAndFoot], [retractorOrder], [retractorWorth], [medialSide], [depthToStop],
];
