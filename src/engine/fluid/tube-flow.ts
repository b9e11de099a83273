import { requirePositive } from "../quantity/require.ts";
import { type AnnularFlow, annularFlow } from "./annular-flow.ts";

export interface Tube {
  readonly boreMm: number;
  readonly lengthMm: number;
  readonly dropMmHg: number;
  readonly viscosityMPaS: number;
  readonly densityKgPerM3: number;
}

/**
 * Laminar flow through a round tube, π r⁴ Δp ÷ (8 μ L) (Hagen and Poiseuille; Bird, Stewart, Lightfoot, Transport
 * Phenomena, section 2.3), and whether the formula may be used at all: the open case of `annularFlow`, with its limits.
 *
 * @param boreMm - Inner diameter, in mm; greater than 0.
 * @param lengthMm - Length of the tube, in mm; greater than 0.
 * @param dropMmHg - Pressure lost along it, in mmHg; greater than 0.
 * @param viscosityMPaS - Viscosity of the liquid, in mPa·s; greater than 0.
 * @param densityKgPerM3 - Density of the liquid, in kg/m³; greater than 0.
 * @returns Flow in mL/min, Reynolds number, whether laminar; the flow is `null` and `refused` names the first limit that
 * is passed: Reynolds number above 2000, entrance length above a tenth of the length, end losses above 3 % of the drop.
 * @throws {RangeError} If a value is not finite or not greater than 0.
 * @example tubeFlow({ boreMm: 2, lengthMm: 1500, dropMmHg: 2, viscosityMPaS: 1.015, densityKgPerM3: 1004.6 }) // => { flowMlPerMin: 4.13, reynolds: 43, laminar: true }
 */
export const tubeFlow = ({ boreMm, lengthMm, dropMmHg, viscosityMPaS, densityKgPerM3 }: Tube): AnnularFlow => {
  requirePositive({ boreMm, lengthMm, dropMmHg, viscosityMPaS, densityKgPerM3 });
  return annularFlow({ scopeMm: 0, boreMm, lengthMm, dropMmHg, viscosityMPaS, densityKgPerM3, eccentricity: 0 });
};
