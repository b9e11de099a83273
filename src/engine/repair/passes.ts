import { requireCount } from "../quantity/require.ts";

export type StitchMethod = "two-anchor" | "inside-out";

/**
 * Needle passes, and things to count, for a number of stitches: a two-anchor stitch passes twice and leaves two anchors,
 * an inside-out stitch is one suture with a needle at either end (common practice, no source).
 *
 * @param stitches - How many stitches; a whole number, 0 included.
 * @param method - `two-anchor` or `inside-out`.
 * @returns `passes`, `anchors` left in the knee and `needles` to be counted.
 * @throws {RangeError} If the number is outside its range.
 * @example passes({ stitches: 4, method: "two-anchor" }) // => { passes: 8, anchors: 8, needles: 0 }
 */
export const passes = ({ stitches, method }: { readonly stitches: number; readonly method: StitchMethod }): { readonly passes: number; readonly anchors: number; readonly needles: number } => {
  requireCount({ stitches });
  const twice = 2 * stitches;
  return method === "two-anchor" ? { passes: twice, anchors: twice, needles: 0 } : { passes: twice, anchors: 0, needles: twice };
};
