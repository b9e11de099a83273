import { numberText, THIN_SPACE, unitText } from "../../engine/quantity/format.ts";
import { asAsked } from "../../engine/quantity/round.ts";
import type { UnitId } from "../../engine/quantity/units.ts";
import { type Givens, isSays } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";

/** What families of several modules share: reading a given, printing an answer, invented children. */

export const CHILDREN = ["Asta", "Bram", "Cosima", "Anton", "Sunniva", "Piet", "Linnea", "Emre", "Yusra", "Finn"] as const;
export const HOSPITALS = ["Saltmere", "Northmoor"] as const;
export const SIDES = ["left", "right"] as const;
export const PERCENT = 100;

/** A given that the draw holds. */
export const given = (givens: Givens, key: string): number => givens[key] as number;

/** The right value of one ask; 0 where the answer is not a number, which no sentence then prints. */
export const answerValue = (say: Say, id: string): number => (isSays(say.answer) ? 0 : (say.answer[id] ?? 0));

/** A number with its unit, for values that are not givens. */
export const withPlaces = (value: number, places: number, unit: UnitId): string => {
  const text = numberText(value, places);
  if (unit === "deg" || unitText(unit) === "") return `${text}${unitText(unit)}`;
  return `${text}${THIN_SPACE}${unitText(unit)}`;
};

/** The right value of one ask with its unit; halves go up, as they do in grading. */
export const answerText = (say: Say, id: string, { places, unit }: { readonly places: number; readonly unit: UnitId }): string =>
  withPlaces(Number(asAsked(answerValue(say, id), 1 / 10 ** places, "nearest")), places, unit);

/** True where the right answer is not a number. */
export const isSaid = (say: Say): boolean => isSays(say.answer);

/** "Marit is 12." */
export const childIs = (say: Say): string => `${say.about("child")} is ${say.about("age")}.`;

/** "1 device", "3 devices". */
export const counted = (count: number | string, one: string, more = `${one}s`): string => `${count} ${Number(count) === 1 ? one : more}`;

/** True where two printed numbers are the same, so that no sentence says one was rounded to the other. */
export const isSameNumber = (one: string, other: string): boolean => Number.parseFloat(one) === Number.parseFloat(other);

/** "flagged", "flagged-2", "flagged-3": one slip for each line that it may concern, so that one alone is named as well. */
export const numbered = (id: string, many: number): readonly string[] => Array.from({ length: many }, (_, at) => (at === 0 ? id : `${id}-${at + 1}`));

/** The same words for each of several slips. */
export const alike = <W>(ids: readonly string[], words: W): Readonly<Record<string, W>> => Object.fromEntries(ids.map((id) => [id, words]));
