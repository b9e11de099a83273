import type { Attempt } from "./attempt.ts";
import { knowledgeAfter } from "./knowledge-after.ts";

/**
 * Our own setting of the four parameters, not fitted to anyone: a static site has no pooled answers to fit. The forgetting
 * step is taken once for each day between two answers, as 1 − (1 − F)^days (after Khajah, Lindsey and Mozer 2016, How deep
 * is knowledge tracing?, arXiv 1604.02416, who count trials between, not days).
 */
export const KNOWN_AT_START = 0.2;
export const LEARN = 0.15;
export const SLIP = 0.1;
export const FORGET_PER_DAY = 0.05;
const LEAST_GUESS = 0.02;
const GREATEST_GUESS = 0.3;

const faded = (known: number, days: number): number => known * (1 - FORGET_PER_DAY) ** Math.max(0, days);

/** True for each first try that was right without help, false for each other; rounding is left out. The curve of errors is drawn from it. */
export const firstTries = (attempts: readonly Attempt[]): readonly { readonly day: number; readonly guess: number; readonly isRight: boolean }[] =>
  attempts
    .filter(({ kind, isFirstTry }) => isFirstTry && (kind === "right" || kind === "helped" || kind === "wrong" || kind === "unsafe"))
    .map(({ day, guess, kind }) => ({ day, guess, isRight: kind === "right" }));

/** Chance that the objective is known on a day, 0 to 1. It orders practice; it decides no level and no date. */
export const knownOn = (attempts: readonly Attempt[], todayDay: number): number => {
  let known = KNOWN_AT_START;
  let lastDay: number | null = null;
  for (const { day, guess, isRight } of firstTries(attempts)) {
    const start: number = faded(known, lastDay === null ? 0 : day - lastDay);
    const bounded = Math.min(GREATEST_GUESS, Math.max(LEAST_GUESS, guess));
    known = knowledgeAfter({ known: start, learn: LEARN, slip: SLIP, guess: bounded }, [isRight])[0]?.next ?? start;
    lastDay = day;
  }
  return faded(known, lastDay === null ? 0 : todayDay - lastDay);
};
