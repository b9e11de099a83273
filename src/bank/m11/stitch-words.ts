import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { CHILDREN, SIDES } from "../m01/common.ts";

/** What the families of stitches on a tear draw and say in common. */

export const TEAR = { key: "tearMm", unit: "mm", least: 12, greatest: 40, step: 1 } as const;
export const MARGIN = { key: "endMarginMm", unit: "mm", least: 1, greatest: 4, step: 0.5 } as const;

const AGES = ["10", "11", "12", "13", "14", "15", "16"] as const;

export const CASE_ABOUT = (chance: Chance): Readonly<Record<string, string>> => ({
  child: chance.pick(CHILDREN),
  age: chance.pick(AGES),
  side: chance.pick(SIDES),
  meniscus: chance.pick(["lateral", "medial"]),
});

/** The child and the tear in one sentence. */
export const caseOf = (say: Say): string => `${say.about("child")}, ${say.about("age")}, has a longitudinal tear of the ${say.about("meniscus")} meniscus in the ${say.about("side")} knee.`;

export const STITCH_SAYS = {
  none: "No stitch is right here",
  "cannot-be-told": "Cannot be told from this",
  "ask-locally": "Ask locally",
} as const;
