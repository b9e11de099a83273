import { requireNumber } from "../quantity/require.ts";

export interface ShareOnly {
  readonly share: number;
}

/**
 * Odds of a share: those with it to those without it.
 *
 * @param share - Share; 0 included, less than 1: at 1 nobody is left to compare with.
 * @returns Odds, 0 or more.
 * @throws {RangeError} If the share is outside its range.
 * @example oddsOfShare({ share: 0.2 }) // => 0.25
 */
export const oddsOfShare = ({ share }: ShareOnly): number => {
  requireNumber("share", share, { least: 0, leastIncluded: true, greatest: 1 });
  return share / (1 - share);
};
