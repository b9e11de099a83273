import { numberText, withUnit } from "../../engine/quantity/format.ts";
import type { UnitId } from "../../engine/quantity/units.ts";
import { type Givens, type GivenSpec, isSays } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";

/** What the questions about the picture have in common. */

export const CHILDREN = ["Asta", "Bram", "Cosima", "Anton", "Sunniva", "Piet", "Linnea", "Emre", "Yusra", "Finn"] as const;
export const HOSPITALS = ["Saltmere", "Northmoor"] as const;

export const FIELD: GivenSpec = { key: "fieldDeg", unit: "deg", least: 70, greatest: 120, step: 5 };
export const DISTANCE: GivenSpec = { key: "distanceMm", unit: "mm", least: 5, greatest: 25, step: 0.5 };

const STRAIGHT_DEG = 180;
/** Wider than this nothing in a small knee can be taken as flat. */
const WIDEST_FLAT_MM = 30;

/** A given that the draw holds. */
export const given = (givens: Givens, key: string): number => givens[key] as number;

/** True where the law of the field holds: an opening above 0 and below a half turn. */
export const isField = (fieldDeg: number): boolean => fieldDeg > 0 && fieldDeg < STRAIGHT_DEG;

export const radians = (degrees: number): number => (degrees * Math.PI) / STRAIGHT_DEG;

/** A distance at which the round of this field still lies on something flat. */
export const drawDistance = (chance: Chance, fieldDeg: number): number => {
  const mostMm = WIDEST_FLAT_MM / (2 * Math.tan(radians(fieldDeg / 2)));
  return chance.onGrid({ ...DISTANCE, greatest: Math.min(DISTANCE.greatest, Math.floor(2 * mostMm) / 2) });
};

/** The right answer to one ask as a plain number; 0 where the answer is not a number. */
export const answerIn = (say: Say, ask: string): number => {
  const { answer } = say;
  return isSays(answer) ? 0 : (answer[ask] ?? 0);
};

/** A value with its unit, at a stated number of decimals. */
export const measure = (value: number, unit: UnitId, places = 1): string => withUnit(numberText(value, places), unit);

/** tan of half the field, as printed in a working. */
export const halfTangent = (say: Say): string => Math.tan(radians(say.value("fieldDeg") / 2)).toFixed(3);

export const FIELD_LABEL = (say: Say): string => `Field in saline, full angle, measured at ${say.about("hospital")} hospital`;

export const PICTURE_SAYS = {
  none: "No such value exists",
  "cannot-be-told": "Cannot be told from this",
  "ask-locally": "Ask locally",
} as const;
