import { requireNotNegative, requirePositive } from "../quantity/require.ts";

/** How the target lies behind the tip that it is compared with. */
export interface TargetBehindTip {
  readonly tipDistanceMm: number;
  readonly fartherMm: number;
}

export interface TipAsRuler {
  readonly tipMm: number;
  readonly tipPx: number;
  readonly targetPx: number;
  /** Left out where tip and target lie at the same distance. */
  readonly depth?: TargetBehindTip;
}

const depthFactor = ({ tipDistanceMm, fartherMm }: TargetBehindTip): number => {
  requirePositive({ tipDistanceMm });
  requireNotNegative({ fartherMm });
  return (tipDistanceMm + fartherMm) / tipDistanceMm;
};

/**
 * Size of a target read off the picture with the probe's tip as the ruler. Rays through one point: what a thing covers
 * in the picture is its size over its distance, so a target k mm farther than the tip, seen at d, is (d + k) ÷ d as
 * large as the same pixels at the tip. It holds near the middle of the picture, for lengths square to the view.
 *
 * @param tipMm - True length of the tip, in mm; greater than 0.
 * @param tipPx - Length of the tip in the picture, in pixels; greater than 0.
 * @param targetPx - Length of the target in the picture, in pixels; greater than 0.
 * @param depth - Left out where both lie at the same distance; else `tipDistanceMm`, from the entrance pupil to the tip,
 * in mm, greater than 0, and `fartherMm`, from the tip on to the target, in mm, 0 included.
 * @returns Size of the target in mm.
 * @throws {RangeError} If a value is outside its range.
 * @example rulerSizeMm({ tipMm: 3, tipPx: 60, targetPx: 160, depth: { tipDistanceMm: 10, fartherMm: 2 } }) // => 9.6
 */
export const rulerSizeMm = ({ tipMm, tipPx, targetPx, depth }: TipAsRuler): number => {
  requirePositive({ tipMm, tipPx, targetPx });
  const atTipMm = (tipMm * targetPx) / tipPx;
  return depth === undefined ? atTipMm : atTipMm * depthFactor(depth);
};
