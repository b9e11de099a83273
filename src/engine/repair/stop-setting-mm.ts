import { compareOnGrid } from "../quantity/grid.ts";
import type { DepthWindow } from "./depth-window-mm.ts";
import { requireLength, requireLengths } from "./require-lengths.ts";

const requireWindow = ({ leastMm, greatestMm }: DepthWindow): void => {
  requireLengths({ leastMm, greatestMm });
  if (compareOnGrid(leastMm, greatestMm) > 0) {
    throw new RangeError(`greatestMm must be at least leastMm (${leastMm}), got ${greatestMm}`);
  }
};

/**
 * The stop to choose: the smallest one inside the window, ends included. A larger stop that also fits spends the
 * margin for nothing.
 *
 * @param window - Least and greatest setting in mm, each greater than 0 and the least not above the greatest;
 * `null` where the line has no window.
 * @param stopsMm - Stops that the needle offers, in mm, in any order; each greater than 0, at most 10⁹. May be empty.
 * @returns A stop in mm, or `null` where no stop lies inside the window or there is no window.
 * @throws {RangeError} If a stop or an end of the window is outside its range.
 * @example stopSettingMm({ leastMm: 11.5, greatestMm: 15 }, [10, 12, 14, 16]) // => 12
 */
export const stopSettingMm = (window: DepthWindow | null, stopsMm: readonly number[]): number | null => {
  for (const [index, stop] of stopsMm.entries()) requireLength(`stopsMm[${index}]`, stop);
  if (window === null) return null;
  requireWindow(window);
  const isInside = (stop: number): boolean =>
    compareOnGrid(stop, window.leastMm) >= 0 && compareOnGrid(stop, window.greatestMm) <= 0;
  const inside = stopsMm.filter(isInside);
  return inside.length === 0 ? null : Math.min(...inside);
};
