import { requirePositive } from "../quantity/require.ts";
import { type FlowRefusal, annularFlow } from "./annular-flow.ts";
import { openShare } from "./open-share.ts";
import { ML_PER_MIN_IN_M3_PER_S, PA_PER_MMHG } from "./si.ts";

export interface ThinGap {
  readonly scopeMm: number;
  readonly boreMm: number;
  readonly lengthMm: number;
  readonly dropMmHg: number;
  readonly viscosityMPaS: number;
  readonly densityKgPerM3: number;
}

export interface ThinGapFlow {
  /** `null` where the laminar formula does not hold. */
  readonly flowMlPerMin: number | null;
  /** What the short formula gives beyond the exact one, in per cent of the exact; below 0, for it gives too little. */
  readonly errorPercent: number;
  readonly refused?: FlowRefusal;
}

const MM_PER_M = 1000;

/** Slot law, 2 h³ Δp w ÷ (3 μ L) with h half the gap (Munson and others, Fluid Mechanics, chapter 6), over the whole gap: π D h³ Δp ÷ (12 μ L). */
const slotFlowM3PerS = ({ scopeMm, boreMm, lengthMm, dropMmHg, viscosityMPaS }: ThinGap): number => {
  const meanM = (boreMm + scopeMm) / 2 / MM_PER_M;
  const gapM = (boreMm - scopeMm) / 2 / MM_PER_M;
  return (Math.PI * meanM * gapM ** 3 * dropMmHg * PA_PER_MMHG) / (12 * (viscosityMPaS / MM_PER_M) * (lengthMm / MM_PER_M));
};

/** The same law as a share of the open bore, with k = scope ÷ bore: (2 ÷ 3)(1 + k)(1 − k)³. */
const slotShare = ({ scopeMm, boreMm }: ThinGap): number =>
  (2 / 3) * (1 + scopeMm / boreMm) * ((boreMm - scopeMm) / boreMm) ** 3;

/**
 * Flow through a narrow concentric gap by the short formula, the gap unrolled into a flat slot: π D h³ Δp ÷ (12 μ L), with
 * the mean diameter D and the radial gap h. It shows why the flow falls with the cube of the gap; its error against
 * the exact annulus comes with it, and it is refused where `annularFlow` is.
 *
 * @param scopeMm - Outer diameter of the scope, in mm; greater than 0, less than the bore.
 * @param boreMm - Inner diameter of the bore, in mm; greater than 0.
 * @param lengthMm - Length of the gap, in mm; greater than 0.
 * @param dropMmHg - Pressure lost along it, in mmHg; greater than 0.
 * @param viscosityMPaS - Viscosity of the liquid, in mPa·s; greater than 0.
 * @param densityKgPerM3 - Density of the liquid, in kg/m³; greater than 0.
 * @returns Flow in mL/min and its error in per cent; the flow is `null` and `refused` says why where the exact flow is refused.
 * @throws {RangeError} If a value is outside its range.
 * @example annulusThinGap({ scopeMm: 2.3, boreMm: 2.7, lengthMm: 100, dropMmHg: 60, viscosityMPaS: 1.015, densityKgPerM3: 1004.6 }) // => { flowMlPerMin: 24.76, errorPercent: -0.043 }
 */
export const annulusThinGap = (gap: ThinGap): ThinGapFlow => {
  requirePositive({ scopeMm: gap.scopeMm });
  const { refused } = annularFlow({ ...gap, eccentricity: 0 });
  const errorPercent = (slotShare(gap) / openShare(gap) - 1) * 100;
  if (refused !== undefined) return { flowMlPerMin: null, errorPercent, refused };
  return { flowMlPerMin: slotFlowM3PerS(gap) * ML_PER_MIN_IN_M3_PER_S, errorPercent };
};
