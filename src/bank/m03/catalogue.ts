import type { Family } from "../../engine/question/family.ts";
import { backOff } from "./back-off.ts";
import { blindAhead } from "./blind-ahead.ts";
import { fieldWidth } from "./field-width.ts";
import { targetInView } from "./in-view.ts";
import { pixelSize } from "./pixel-size.ts";
import { probeRuler } from "./probe-ruler.ts";
import { rulerDepth } from "./ruler-depth.ts";
import { salineField } from "./saline-field.ts";
import { samePlace } from "./same-place.ts";
import { tiltNeeded } from "./tilt-needed.ts";

/** Families of module M03, in the order of their codes, newest version first. */
export const M03: readonly (readonly Family[])[] = [
  [fieldWidth], [backOff], [targetInView], [blindAhead], [salineField], [probeRuler], [rulerDepth], [tiltNeeded], [pixelSize],
  [samePlace],
];
