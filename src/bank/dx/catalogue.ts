import type { Family } from "../../engine/question/family.ts";
import { contactTime } from "./contact-time.ts";
import { cutScore } from "./cut-score.ts";
import { deadChoice } from "./dead-choice.ts";
import { difficulty } from "./difficulty.ts";
import { discriminate } from "./discriminate.ts";
import { pointBiserial } from "./point-biserial.ts";
import { rareHarm } from "./rare-harm.ts";
import { reliabilityOfSheet } from "./reliability.ts";
import { tooFew } from "./too-few.ts";

/** Families of module DX, in the order of their codes, newest version first. Items name a family by two digits and a letter, so D1 is 15a, D2 15b and so on. */
export const DX: readonly (readonly Family[])[] = [
  [difficulty], [discriminate], [pointBiserial], [reliabilityOfSheet], [cutScore], [deadChoice], [contactTime], [tooFew], [rareHarm],
];
