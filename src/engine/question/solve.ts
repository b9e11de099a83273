import { acceptedSpan, asAsked, MOST_VALUE, type Span } from "../quantity/round.ts";
import type { SumRules } from "./family.ts";
import { type AskSpec, type Draw, type Givens, isSays, type SlipSpec, type Solution } from "./family-head.ts";
import type { SumResponse } from "./response.ts";

/** Accepted span of every ask; empty where the answer is not a number. */
export const spansOf = (family: Pick<SumRules, "asks">, solution: Solution): Readonly<Record<string, Span>> => {
  if (isSays(solution)) return {};
  return Object.fromEntries(
    family.asks.map((ask) => [ask.id, acceptedSpan(solution[ask.id] as number, String(ask.roundTo), ask.rounding)]),
  );
};

/** A solution typed as the question asks. */
export const typedAs = (family: Pick<SumRules, "asks">, solution: Solution): SumResponse => {
  if (isSays(solution)) return { kind: "sum", says: solution.says };
  const typed = ({ id, roundTo, rounding }: AskSpec): string => asAsked(solution[id] as number, String(roundTo), rounding);
  const [first] = family.asks;
  if (family.asks.length === 1 && first) return { kind: "sum", text: typed(first) };
  return { kind: "sum", texts: Object.fromEntries(family.asks.map((ask) => [ask.id, typed(ask)])) };
};

/** What a formula gives; `null` where it refuses its values. */
const unlessRefused = (formula: () => Solution | null): Solution | null => {
  try {
    return formula();
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
};

/** The answer to givens that no draw made; `null` where they lie outside what the formula takes. */
export const solvedAt = (family: Pick<SumRules, "solve">, givens: Givens, about: Draw["about"]): Solution | null =>
  unlessRefused(() => family.solve(givens, about));

/** True where a solution can be typed: every number that is asked for is there, finite, and small enough to be rounded. */
export const isTypable = (family: Pick<SumRules, "asks">, solution: Solution): boolean =>
  isSays(solution) || family.asks.every(({ id }) => Math.abs(solution[id] as number) <= MOST_VALUE);

/** What a slip gives where values may be a learner’s own; `null` where it does not apply, refuses them, or gives nothing that can be typed. */
export const slipAt = (family: Pick<SumRules, "asks">, slip: SlipSpec, draw: Draw): Solution | null => {
  const gives = unlessRefused(() => slip.gives(draw));
  return gives !== null && isTypable(family, gives) ? gives : null;
};
