import { numberText, withUnit } from "../../engine/quantity/format.ts";
import type { UnitId } from "../../engine/quantity/units.ts";
import { type Givens, isSays } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";

/** Invented children and hospitals of the questions about table, cuff and clock. */
export const CHILDREN = ["Asta", "Bram", "Cosima", "Anton", "Sunniva", "Piet", "Linnea", "Emre", "Yusra", "Finn"] as const;
export const HOSPITALS = ["Saltmere", "Northmoor"] as const;
export const AGES = ["6", "7", "8", "9", "10", "11", "12", "13", "14", "15"] as const;
export const SIDES = ["left", "right"] as const;

/** A given that the draw holds. */
export const given = (givens: Givens, key: string): number => givens[key] as number;

/** The right answer to one ask as a plain number; 0 where the answer is not a number. */
export const answerIn = (say: Say, ask: string): number => {
  const { answer } = say;
  return isSays(answer) ? 0 : (answer[ask] ?? 0);
};

/** A value with its unit, at a stated number of decimals. */
export const measure = (value: number, unit: UnitId, places = 0): string => withUnit(numberText(value, places), unit);

/** "Sunniva (12)" */
export const childOf = (say: Say): string => `${say.about("child")} (${say.about("age")})`;
