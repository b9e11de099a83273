import type { Family } from "../../engine/question/family.ts";
import { bandPick } from "./band-pick.ts";
import { coverArea } from "./cover-area.ts";
import { shareTooNear } from "./share-too-near.ts";
import { structures } from "./structures.ts";
import { zScore } from "./z-score.ts";

/** Families of module M01, in the order of their codes, newest version first. */
export const M01: readonly (readonly Family[])[] = [
  [coverArea], [zScore], [shareTooNear], [bandPick], [structures],
];
