import type { GivenSpec } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";

/** What the families of the probe as a ruler draw in common. */

export const TIP: GivenSpec = { key: "tipMm", unit: "mm", least: 2, greatest: 5, step: 0.5 };
export const SHAFT: GivenSpec = { key: "shaftMm", unit: "mm", least: 1.2, greatest: 1.8, step: 0.1 };
export const TIP_PIXELS: GivenSpec = { key: "tipPx", unit: "pieces", least: 40, greatest: 150, step: 1 };
export const TARGET_PIXELS: GivenSpec = { key: "targetPx", unit: "pieces", least: 30, greatest: 700, step: 1 };

export const THINGS = ["the tear", "the flap", "the split in the rim", "the bare edge of the cartilage", "the loose piece"] as const;

/** A target has at least this share of the tip's length. */
const LEAST_TENTHS = 6;
const TENTHS = 10;

/** A tip and a target that a small knee can hold: read at the tip, the target is at most so long. */
export const drawRuler = (chance: Chance, mostMm: number): Readonly<Record<"tipMm" | "shaftMm" | "tipPx" | "targetPx", number>> => {
  const tipPx = chance.onGrid(TIP_PIXELS);
  const tipMm = chance.onGrid(TIP);
  const share = LEAST_TENTHS + chance.below(Math.floor((TENTHS * mostMm) / tipMm) - LEAST_TENTHS);
  const targetPx = Math.max(TARGET_PIXELS.least, Math.round((tipPx * share) / TENTHS) + chance.below(4));
  return { tipMm, shaftMm: chance.onGrid(SHAFT), tipPx, targetPx: Math.min(TARGET_PIXELS.greatest, targetPx) };
};

export const RULER_LABELS = {
  tipMm: (say: Say) => `Length of the bent tip, ${say.about("hospital")} hospital`,
  shaftMm: (say: Say) => `Thickness of the probe’s shaft, ${say.about("hospital")} hospital`,
  tipPx: "Length of the tip in the picture, in pixels",
  targetPx: "Length of the target in the picture, in pixels",
} as const;
