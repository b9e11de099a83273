/** The one home of tolerances and grid sizes: no other file writes a power of ten below one. */

/** Grid units in one unit: results of functions are compared after rounding to six decimals. */
export const GRID_PER_UNIT = 1_000_000;

/** Decimals that the grid holds. */
export const GRID_PLACES: number = String(GRID_PER_UNIT).length - 1;

/** Relative step of the numeric root search, small against any digit that a page prints. */
export const ROOT_TOLERANCE = 1e-9;

/** Greatest number of decimals that a unit conversion keeps. */
export const CONVERSION_PLACES = 12;

/** Digits kept when a computed double becomes text for a record. */
export const RECORD_PLACES = 6;

export const DEGREES_PER_RADIAN: number = 180 / Math.PI;
export const RADIANS_PER_DEGREE: number = Math.PI / 180;
