import type { Family } from "../../engine/question/family.ts";
import { bandPick } from "./band-pick.ts";
import { coverArea } from "./cover-area.ts";
import { fitCheck } from "./fit-check.ts";
import { shareTooNear } from "./share-too-near.ts";
import { structures } from "./structures.ts";
import { widthIsNotDepth } from "./width-is-not-depth.ts";
import { widthShare } from "./width-share.ts";
import { zScore } from "./z-score.ts";

/** Families of module M01, in the order of their codes, newest version first. */
export const M01: readonly (readonly Family[])[] = [
  [coverArea], [widthShare], [zScore], [shareTooNear], [bandPick], [fitCheck], [structures], [widthIsNotDepth],
];
