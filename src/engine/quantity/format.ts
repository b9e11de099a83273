import type { UnitId } from "./units.ts";

/** A thin space stands between a number and its unit, so that the two never part. */
export const THIN_SPACE = "\u2009";

const SHOWN: Partial<Record<UnitId, string>> = { deg: "°", mm2: "mm²", cm2: "cm²", cmH2O: "cmH₂O", mPas: "mPa·s", "kg/m3": "kg/m³", pieces: "", times: "times" };

/** How a unit is printed. */
export const unitText = (unit: UnitId): string => SHOWN[unit] ?? unit;

/** A plain decimal text as printed: true minus sign. */
export const printed = (text: string): string => (text.startsWith("-") ? `−${text.slice(1)}` : text);

/** A number with a true minus sign, at a fixed number of decimals. */
export const numberText = (value: number, places: number): string => printed(value.toFixed(places));

/** A number and its unit as one piece of text; degrees and per cent follow their own custom. */
export const withUnit = (text: string, unit: UnitId): string => {
  const shown = unitText(unit);
  if (shown === "") return printed(text);
  return unit === "deg" ? `${printed(text)}${shown}` : `${printed(text)}${THIN_SPACE}${shown}`;
};

/** Units in which medicines are written. */
const DOSE_UNITS: ReadonlySet<UnitId> = new Set<UnitId>(["mg", "micrograms", "g", "mL", "mg/kg", "mg/mL"]);

/** A number as it is written with its unit: doses carry no trailing zero, because 20.0 is read as 200 when the point is missed (common practice, no source). */
export const asWritten = (text: string, unit: UnitId | undefined): string =>
  unit !== undefined && DOSE_UNITS.has(unit) && text.includes(".") ? text.replace(/\.?0+$/, "") : text;
