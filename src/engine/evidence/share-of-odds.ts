import { requireNotNegative } from "../quantity/require.ts";

export interface OddsOnly {
  readonly odds: number;
}

/**
 * Share that belongs to odds, odds ÷ (1 + odds).
 *
 * @param odds - Those with it to those without it; 0 included.
 * @returns Share, 0 included, less than 1.
 * @throws {RangeError} If the odds are negative or not finite.
 * @example shareOfOdds({ odds: 0.25 }) // => 0.2
 */
export const shareOfOdds = ({ odds }: OddsOnly): number => {
  requireNotNegative({ odds });
  return odds / (1 + odds);
};
