import { zoneWidth } from "../../facts/zone-width.ts";

/** The age bands of the study of the zone's width, youngest first; a child belongs to its completed years. */
export const BANDS = ["5-7", "8-10", "11-13", "14-16"] as const;
export type Band = (typeof BANDS)[number];
export type BandOrOutside = Band | "outside";

const FIRST_YEAR = 5;
const YEARS_A_BAND = 3;

/** The band of a child by completed years, or outside the study. */
export const bandOf = (years: number): BandOrOutside => BANDS[Math.floor((years - FIRST_YEAR) / YEARS_A_BAND)] ?? "outside";

export const BAND_READS: readonly string[] = BANDS.map((band) => `zone-width.${band}@1`);
export const pinOf = (band: string): string => `zone-width.${band}@1`;

/** Mean and spread of a band. */
export const widthOf = (band: string): { readonly meanMm: number; readonly sdMm: number } => {
  const { mean = 0, sd = 0 } = zoneWidth(pinOf(band)).number;
  return { meanMm: mean, sdMm: sd };
};

/** "8–10" */
export const printedBand = (band: string): string => band.replace("-", "–");
