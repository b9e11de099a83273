import { askedGrid, asAsked, MOST_VALUE } from "../quantity/round.ts";
import type { SumRules } from "./family.ts";
import { type AskSpec, type Draw, type Givens, isSays, type SlipSpec, type Solution } from "./family-head.ts";
import { type OfDraw, perDraw } from "./per-draw.ts";
import type { SumResponse } from "./response.ts";

const typed = ({ id, roundTo, rounding }: AskSpec, solution: Readonly<Record<string, number>>): string => asAsked(solution[id] as number, roundTo, rounding);

/** A solution typed as the question asks. */
export const typedAs = (family: Pick<SumRules, "asks">, solution: Solution): SumResponse => {
  if (isSays(solution)) return { kind: "sum", says: solution.says };
  const [first] = family.asks;
  if (family.asks.length === 1 && first) return { kind: "sum", text: typed(first, solution) };
  return { kind: "sum", texts: Object.fromEntries(family.asks.map((ask) => [ask.id, typed(ask, solution)])) };
};

/** What tells how a solution would be typed: cheaper than its text. */
const typedKey = (asks: readonly AskSpec[], solution: Solution): number | string => {
  if (isSays(solution)) return solution.says;
  const only = asks[0];
  if (asks.length === 1 && only !== undefined) return askedGrid(solution[only.id] as number, only.roundTo, only.rounding);
  return asks.map(({ id, roundTo, rounding }) => askedGrid(solution[id] as number, roundTo, rounding)).join(" ");
};

/** True where the answer and what every slip gives would be typed differently. */
export const areTypedApart = (asks: readonly AskSpec[], answer: Solution, slips: readonly { readonly gives: Solution }[]): boolean => {
  const met = [typedKey(asks, answer)];
  for (const { gives } of slips) {
    const key = typedKey(asks, gives);
    if (met.includes(key)) return false;
    met.push(key);
  }
  return true;
};

/** The answer to givens that no draw made; `null` where they lie outside what the formula takes. */
export const solvedAt = (family: Pick<SumRules, "solve">, givens: Givens, about: Draw["about"]): Solution | null => {
  try {
    return family.solve(givens, about);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
};

/** True where a solution can be typed: every number that is asked for is there, finite, and small enough to be rounded. */
export const isTypable = ({ asks }: Pick<SumRules, "asks">, solution: Solution): boolean => {
  if (isSays(solution)) return true;
  for (const { id } of asks) if (!(Math.abs(solution[id] as number) <= MOST_VALUE)) return false;
  return true;
};

/** What a slip gives where values may be a learner’s own; `null` where it does not apply, refuses them, or gives nothing that can be typed. */
export const slipAt = (family: Pick<SumRules, "asks">, slip: SlipSpec, draw: Draw): Solution | null => {
  try {
    const gives = slip.gives(draw);
    return gives !== null && isTypable(family, gives) ? gives : null;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
};

/** The answer of a draw: it is told apart, printed, marked and worked before the next one comes. */
export const solutionOf: OfDraw<Pick<SumRules, "solve">, Solution> = perDraw(({ solve }, { givens, about }) => solve(givens, about));
