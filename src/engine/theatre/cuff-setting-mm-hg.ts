import { requireNumber, requireOneNotNegative, requirePositive } from "../quantity/require.ts";

/** A margin that holds from an occlusion pressure upwards, to where the next band starts. */
export interface MarginBand {
  readonly fromMmHg: number;
  readonly marginMmHg: number;
}

export interface MeasuredOcclusion {
  readonly occlusionMmHg: number;
  /** Bands of one named rule, the lowest first. */
  readonly bands: readonly MarginBand[];
}

const requireBands = (bands: readonly MarginBand[]): void => {
  if (bands.length === 0) throw new RangeError("bands must hold at least one band, got 0");
  for (const [index, { fromMmHg, marginMmHg }] of bands.entries()) {
    const before = bands[index - 1]?.fromMmHg;
    const name = `bands[${index}].fromMmHg`;
    requireNumber(name, fromMmHg, before === undefined ? {} : { least: before });
    requireOneNotNegative(name, fromMmHg);
    requireOneNotNegative(`bands[${index}].marginMmHg`, marginMmHg);
  }
  if (bands[0]?.fromMmHg !== 0) throw new RangeError(`bands[0].fromMmHg must be 0, got ${String(bands[0]?.fromMmHg)}`);
};

/**
 * Cuff pressure from the measured limb occlusion pressure and the margin of one named rule. Published rules disagree, so
 * the rule is given: a single band for one margin at all pressures, several for margins that grow with the pressure.
 * Unrounded; how to round is part of the local sheet.
 *
 * @param occlusionMmHg - Measured limb occlusion pressure, in mmHg; greater than 0.
 * @param bands - Bands of the rule: `fromMmHg`, in mmHg, the pressure from which (included) a margin holds, 0 in the first
 * band and rising; `marginMmHg`, in mmHg, 0 included.
 * @returns Cuff pressure in mmHg.
 * @throws {RangeError} If a value is outside its range, or the bands do not start at 0 and rise.
 * @example cuffSettingMmHg({ occlusionMmHg: 124, bands: [{ fromMmHg: 0, marginMmHg: 50 }] }) // => 174
 */
export const cuffSettingMmHg = ({ occlusionMmHg, bands }: MeasuredOcclusion): number => {
  requirePositive({ occlusionMmHg });
  requireBands(bands);
  return occlusionMmHg + (bands.findLast(({ fromMmHg }) => fromMmHg <= occlusionMmHg)?.marginMmHg ?? 0);
};
