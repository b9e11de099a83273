import type { ObjectiveEntry } from "../../engine/record/attempts.ts";

const MODULES = 4;
const OBJECTIVES_EACH = 3;
const FAMILIES_EACH = 3;

/** A made course, small enough to be gone through a thousand times: four modules of three objectives, three families each. */
export const COURSE: readonly ObjectiveEntry[] = Array.from({ length: MODULES * OBJECTIVES_EACH }, (_, place) => ({
  id: `objective-${place + 1}`,
  module: `module-${Math.floor(place / OBJECTIVES_EACH) + 1}`,
  families: Array.from({ length: FAMILIES_EACH }, (_family, index) => `family-${place + 1}-${index + 1}`),
}));

/** Questions of one sitting, as many as a sheet of the workbook holds. */
export const SHEET_SIZE = 10;
