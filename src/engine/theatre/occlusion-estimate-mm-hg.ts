import { requireNumber, requirePositive } from "../quantity/require.ts";

export interface PressureAndTissue {
  readonly systolicMmHg: number;
  readonly tissueCoefficient: number;
}

/** What the published formula adds to the systolic pressure, in mmHg. */
const ADDED_MM_HG = 10;

/**
 * Estimated arterial occlusion pressure under a cuff, (systolic pressure + 10) ÷ tissue coefficient (Tuncali and others
 * 2006, Anesth Analg 102:1752–7, 10.1213/01.ane.0000209018.00998.24). Worked out on adults with limbs of 20 to 75 cm; not
 * validated in children, and no replacement for a measured pressure.
 *
 * @param systolicMmHg - Systolic blood pressure, in mmHg; greater than 0.
 * @param tissueCoefficient - Tissue padding coefficient of the limb's girth, from the table that a question prints, without
 * unit; greater than 0, at most 1 (included): a cuff never needs less than the pressure below it.
 * @returns Pressure in mmHg.
 * @throws {RangeError} If a value is outside its range.
 * @example occlusionEstimateMmHg({ systolicMmHg: 95, tissueCoefficient: 0.85 }) // => 123.5
 */
export const occlusionEstimateMmHg = ({ systolicMmHg, tissueCoefficient }: PressureAndTissue): number => {
  requirePositive({ systolicMmHg });
  requireNumber("tissueCoefficient", tissueCoefficient, { least: 0, greatest: 1, greatestIncluded: true });
  return (systolicMmHg + ADDED_MM_HG) / tissueCoefficient;
};
