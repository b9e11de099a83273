import { annulusShape } from "./annulus-shape.ts";
import { requireScopeInBore, type ScopeInBore } from "./require-scope-in-bore.ts";

/**
 * What a scope leaves of the flow of its bore, by the ideal law: laminar flow through the concentric gap as a share of
 * the same bore left open (Bird, Stewart, Lightfoot, Transport Phenomena, sections 2.3 and 2.4). Pressure, length and
 * liquid cancel. An open bore at working pressure is seldom laminar, so taking the scope out gains less than this says.
 *
 * @param scopeMm - Outer diameter of the scope, in mm; 0 (the open bore) included, less than the bore.
 * @param boreMm - Inner diameter of the bore, in mm; greater than 0.
 * @returns Share above 0, at most 1; 1 for the open bore.
 * @throws {RangeError} If a value is outside its range.
 * @example openShare({ scopeMm: 2.3, boreMm: 2.7 }) // => 0.0040
 */
export const openShare = ({ scopeMm, boreMm }: ScopeInBore): number => {
  requireScopeInBore({ scopeMm, boreMm });
  return scopeMm === 0 ? 1 : annulusShape(scopeMm, (boreMm - scopeMm) / 2);
};
