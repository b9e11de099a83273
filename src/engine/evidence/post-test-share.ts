import { requireNotNegative, requireNumber } from "../quantity/require.ts";
import { oddsOfShare } from "./odds-of-share.ts";
import { shareOfOdds } from "./share-of-odds.ts";

export interface ShareAndRatio {
  readonly preTestShare: number;
  readonly ratio: number;
}

/**
 * Share after a ratio acts on the odds: a likelihood ratio on the chance before the test, or an odds ratio on a base risk.
 * Ratios of odds never multiply shares, which would pass 1 (Bayes' rule in odds).
 *
 * @param preTestShare - Share before; greater than 0, less than 1.
 * @param ratio - Likelihood ratio of the result, or odds ratio; 0 included.
 * @returns Share after, 0 included, less than 1.
 * @throws {RangeError} If a value is outside its range.
 * @example postTestShare({ preTestShare: 0.2, ratio: 4 }) // => 0.5
 */
export const postTestShare = ({ preTestShare, ratio }: ShareAndRatio): number => {
  requireNumber("preTestShare", preTestShare, { least: 0, greatest: 1 });
  requireNotNegative({ ratio });
  return shareOfOdds({ odds: oddsOfShare({ share: preTestShare }) * ratio });
};
