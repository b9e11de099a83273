import { acceptedSpan, asAsked, type Span } from "../quantity/round.ts";
import type { Draw, Solution, SumFamily } from "./family.ts";
import { isSays } from "./family.ts";
import type { SumItem } from "./item.ts";
import type { SumResponse } from "./response.ts";

/** The draw behind an item: its displayed numbers and words, so that grading needs no second source. */
export const drawOf = (item: SumItem): Draw => ({
  givens: Object.fromEntries(item.givens.map((given) => [given.key, Number(given.text)])),
  about: item.about,
});

/** Accepted span of every ask; empty where the answer is not a number. */
export const spansOf = (family: SumFamily, solution: Solution): Readonly<Record<string, Span>> => {
  if (isSays(solution)) return {};
  return Object.fromEntries(
    family.asks.map((ask) => [ask.id, acceptedSpan(solution[ask.id] as number, String(ask.roundTo), ask.rounding)]),
  );
};

/** A solution typed as the question asks. */
export const typedAs = (family: SumFamily, solution: Solution): SumResponse => {
  if (isSays(solution)) return { kind: "sum", says: solution.says };
  const texts = Object.fromEntries(
    family.asks.map((ask) => [ask.id, asAsked(solution[ask.id] as number, String(ask.roundTo), ask.rounding)]),
  );
  const [first] = family.asks;
  if (family.asks.length === 1 && first) return { kind: "sum", text: texts[first.id] as string };
  return { kind: "sum", texts };
};

/** One text for a typed solution, to tell whether two would look the same on paper. */
export const signature = (response: SumResponse): string => JSON.stringify(response);
