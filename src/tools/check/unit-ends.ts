import type { UnitId } from "../../engine/quantity/units.ts";

/** How the name of a number ends in each unit; counts, ratios and points say what they count instead. */
const ENDS: Readonly<Partial<Record<UnitId, string>>> = {
  mm: "Mm", cm: "Cm", m: "M", in: "In", mm2: "Mm2", cm2: "Cm2", deg: "Deg", rad: "Rad", "%": "Percent",
  mmHg: "MmHg", kPa: "KPa", cmH2O: "CmH2O", mL: "Ml", L: "L", mg: "Mg", micrograms: "Micrograms", g: "G", kg: "Kg", lb: "Lb",
  s: "S", min: "Min", h: "H", "mL/min": "MlPerMin", "L/h": "LPerH", "mL/kg": "MlPerKg", "mg/kg": "MgPerKg", "mg/mL": "MgPerMl",
  N: "N", mPas: "MPaS", "kg/m3": "KgPerM3",
};

/** A time of day is named by the hand of the clock. */
const ALSO: readonly string[] = ["Hour", "Minute"];

/** The ending that a number's name needs in a unit, or null where any name will do. */
export const endOf = (unit: string): string | null => ENDS[unit as UnitId] ?? null;

/** True for a name that says its unit. */
export const saysUnit = (name: string, unit: string): boolean => {
  const end = endOf(unit);
  return end === null || name.endsWith(end) || name.toLowerCase() === end.toLowerCase() || ALSO.some((each) => name.endsWith(each));
};

/** A name with the ending of its unit in place of the one that it may have. */
export const withEnd = (name: string, unit: string): string => {
  const end = endOf(unit) ?? "";
  const other = Object.values(ENDS).filter((each) => name.length > each.length && name.endsWith(each)).sort((first, second) => second.length - first.length)[0];
  return `${other === undefined ? name : name.slice(0, -other.length)}${end}`;
};
