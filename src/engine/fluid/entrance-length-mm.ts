import { requireNotNegative, requireNumber } from "../quantity/require.ts";
import { requireScopeInBore } from "./require-scope-in-bore.ts";

export interface LaminarEntrance {
  readonly scopeMm: number;
  readonly boreMm: number;
  readonly reynolds: number;
}

/** Bird, Stewart, Lightfoot, Transport Phenomena, section 2.3. */
const ENTRANCE_FACTOR = 0.035;
const GREATEST_LAMINAR_REYNOLDS = 2000;

/**
 * Way that a laminar flow needs from the inlet until its profile stands, 0.035 × hydraulic diameter × Reynolds number. On
 * this way more pressure is lost than the formulas for long tubes say. Given for a round tube; in a gap the hydraulic
 * diameter, bore − scope, takes the tube's place, which is an order of size, not a measurement.
 *
 * @param scopeMm - Outer diameter of the scope, in mm; 0 (an open tube) included, less than the bore.
 * @param boreMm - Inner diameter of the bore, in mm; greater than 0.
 * @param reynolds - Reynolds number on the hydraulic diameter; 0 to 2000, both included.
 * @returns Length in mm.
 * @throws {RangeError} If a value is outside its range.
 * @example entranceLengthMm({ scopeMm: 2.3, boreMm: 2.7, reynolds: 104 }) // => 1.46
 */
export const entranceLengthMm = ({ scopeMm, boreMm, reynolds }: LaminarEntrance): number => {
  requireScopeInBore({ scopeMm, boreMm });
  requireNotNegative({ reynolds });
  requireNumber("reynolds", reynolds, { greatest: GREATEST_LAMINAR_REYNOLDS, greatestIncluded: true });
  return ENTRANCE_FACTOR * (boreMm - scopeMm) * reynolds;
};
