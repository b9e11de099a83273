import { requireNotNegative, requireNumber, requirePositive } from "../quantity/require.ts";
import { annulusShape } from "./annulus-shape.ts";
import { ML_PER_MIN_IN_M3_PER_S, PA_PER_MMHG } from "./si.ts";

export interface Annulus {
  readonly scopeMm: number;
  readonly boreMm: number;
  readonly lengthMm: number;
  readonly dropMmHg: number;
  readonly viscosityMPaS: number;
  readonly densityKgPerM3: number;
  readonly eccentricity: number;
}

/** Why the laminar formula is not trusted; the first that applies, in this order. */
export type FlowRefusal = "reynolds" | "entrance-length" | "end-losses";

export interface AnnularFlow {
  /** `null` where the formula does not hold. */
  readonly flowMlPerMin: number | null;
  /** Reynolds number at the flow that the formula gives. */
  readonly reynolds: number;
  /** True up to a Reynolds number of 2000. */
  readonly laminar: boolean;
  readonly refused?: FlowRefusal;
}

const MM_PER_M = 1000;
const GREATEST_LAMINAR_REYNOLDS = 2000;
/** Entrance length over hydraulic diameter and Reynolds number: Bird, Stewart, Lightfoot, section 2.3. */
const ENTRANCE_FACTOR = 0.035;
const GREATEST_ENTRANCE_SHARE = 0.1;
/** Sharp inlet 0.5 (from memory) and exit 1.0 (Munson and others, figure 8.25), in heads of velocity. */
const END_LOSS_FACTOR = 1.5;
const GREATEST_END_LOSS_SHARE = 0.03;
/** Thin gap off centre, flow × (1 + 1.5 e²): 2.5 times where the walls touch (Tao and Donovan 1955, Trans ASME 77:1291). */
const ECCENTRICITY_FACTOR = 1.5;

const requireAnnulus = (annulus: Annulus): void => {
  const { scopeMm, boreMm, lengthMm, dropMmHg, viscosityMPaS, densityKgPerM3, eccentricity } = annulus;
  requirePositive({ boreMm, lengthMm, dropMmHg, viscosityMPaS, densityKgPerM3 });
  requireNotNegative({ scopeMm, eccentricity });
  requireNumber("eccentricity", eccentricity, { greatest: 1, greatestIncluded: true });
  if (scopeMm >= boreMm) throw new RangeError(`scopeMm must be less than boreMm (${boreMm}), got ${scopeMm}`);
};

const shape = ({ scopeMm, boreMm, eccentricity }: Annulus): number =>
  scopeMm === 0 ? 1 : annulusShape(scopeMm, (boreMm - scopeMm) / 2) * (1 + ECCENTRICITY_FACTOR * eccentricity ** 2);

const flowM3PerS = (annulus: Annulus): number => {
  const radiusM = annulus.boreMm / 2 / MM_PER_M;
  const resistance = (8 * (annulus.viscosityMPaS / MM_PER_M) * (annulus.lengthMm / MM_PER_M)) / (Math.PI * radiusM ** 4);
  return (annulus.dropMmHg * PA_PER_MMHG * shape(annulus)) / resistance;
};

const refusalAt = (annulus: Annulus, speedMPerS: number, reynolds: number): FlowRefusal | null => {
  const { scopeMm, boreMm, lengthMm, dropMmHg, densityKgPerM3 } = annulus;
  if (reynolds > GREATEST_LAMINAR_REYNOLDS) return "reynolds";
  if (ENTRANCE_FACTOR * (boreMm - scopeMm) * reynolds > GREATEST_ENTRANCE_SHARE * lengthMm) return "entrance-length";
  const endLossPa = (END_LOSS_FACTOR * densityKgPerM3 * speedMPerS ** 2) / 2;
  return endLossPa > GREATEST_END_LOSS_SHARE * dropMmHg * PA_PER_MMHG ? "end-losses" : null;
};

/**
 * Laminar flow through the gap between a scope and the bore around it, and whether the formula may be used at all.
 * Exact for a concentric annulus (Bird, Stewart, Lightfoot, Transport Phenomena, section 2.4), times 1 + 1.5 e² for
 * a thin gap off centre; the Reynolds number is taken on the hydraulic diameter, bore − scope.
 *
 * @param scopeMm - Outer diameter of the scope, in mm; 0 (an open tube, then eccentricity plays no part) included,
 * less than the bore.
 * @param boreMm - Inner diameter of the bore, in mm; greater than 0.
 * @param lengthMm - Length of the gap, in mm; greater than 0.
 * @param dropMmHg - Pressure lost along it, in mmHg; greater than 0.
 * @param viscosityMPaS - Viscosity of the liquid, in mPa·s; greater than 0.
 * @param densityKgPerM3 - Density of the liquid, in kg/m³; greater than 0.
 * @param eccentricity - Offset of the axes over the gap; 0 (concentric) to 1 (touching), both included.
 * @returns Flow in mL/min, Reynolds number, whether laminar; the flow is `null` and `refused` says why where the
 * Reynolds number is above 2000, the entrance length above a tenth of the length, or the end losses above 3 % of the drop.
 * @throws {RangeError} If a value is outside its range.
 * @example annularFlow({ scopeMm: 2.3, boreMm: 2.7, lengthMm: 100, dropMmHg: 60, viscosityMPaS: 1.015, densityKgPerM3: 1004.6, eccentricity: 0 }) // => { flowMlPerMin: 24.77, reynolds: 104, laminar: true }
 */
export const annularFlow = (annulus: Annulus): AnnularFlow => {
  requireAnnulus(annulus);
  const { scopeMm, boreMm, viscosityMPaS, densityKgPerM3 } = annulus;
  const flow = flowM3PerS(annulus);
  const areaM2 = (Math.PI / 4) * ((boreMm - scopeMm) / MM_PER_M) * ((boreMm + scopeMm) / MM_PER_M);
  const speedMPerS = flow / areaM2;
  const reynolds = (densityKgPerM3 * speedMPerS * (boreMm - scopeMm)) / viscosityMPaS;
  const laminar = reynolds <= GREATEST_LAMINAR_REYNOLDS;
  const refused = refusalAt(annulus, speedMPerS, reynolds);
  if (refused !== null) return { flowMlPerMin: null, reynolds, laminar, refused };
  return { flowMlPerMin: flow * ML_PER_MIN_IN_M3_PER_S, reynolds, laminar };
};
