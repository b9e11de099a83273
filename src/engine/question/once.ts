import type { Draw, Givens } from "./family-head.ts";

type About = Draw["about"];

const NO_WORDS: About = {};

/**
 * The same formula, worked out once for the values of last time: the answer of a draw, its slips and its words all begin
 * with it. Values are told apart by identity, and a draw does not change.
 */
export const once = <T>(formula: (givens: Givens, about: About) => T): ((givens: Givens, about?: About) => T) => {
  let last: { readonly givens: Givens; readonly about: About; readonly value: T } | null = null;
  return (givens, about = NO_WORDS) => {
    if (last !== null && last.givens === givens && last.about === about) return last.value;
    last = { givens, about, value: formula(givens, about) };
    return last.value;
  };
};
