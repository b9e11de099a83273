import { requirePositive } from "../quantity/require.ts";

/**
 * Half the diameter of a round limb from its girth, girth ÷ (2 π): a cuff must be wider than this. Unrounded; a
 * width is rounded up.
 *
 * @param girthCm - Girth of the limb where the cuff lies, in cm; greater than 0.
 * @returns Width in cm that the cuff must exceed.
 * @throws {RangeError} If the girth is not finite or not greater than 0.
 * @example cuffWidthCm({ girthCm: 24 }) // => 3.82
 */
export const cuffWidthCm = ({ girthCm }: { readonly girthCm: number }): number => {
  requirePositive({ girthCm });
  return girthCm / (2 * Math.PI);
};
