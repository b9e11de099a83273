import { UNITS } from "../quantity/units.ts";

/** Pascals in one millimetre of mercury, from the one table of units. */
export const PA_PER_MMHG: number = Number(UNITS.mmHg.size);

/** Standard gravity in m/s², exact by definition (3rd General Conference on Weights and Measures, 1901). */
export const GRAVITY_M_PER_S2: number = 9.80665;

const ML_PER_M3 = 1_000_000;
const SECONDS_PER_MINUTE = 60;

/** Millilitres a minute in one cubic metre a second. */
export const ML_PER_MIN_IN_M3_PER_S: number = ML_PER_M3 * SECONDS_PER_MINUTE;
