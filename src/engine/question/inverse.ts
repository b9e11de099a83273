import { ROOT_TOLERANCE } from "../quantity/tolerance.ts";
import type { SumFamily } from "./family.ts";
import { type Draw, isSays } from "./family-head.ts";
import { solvedAt } from "./solve.ts";

interface Target {
  readonly key: string;
  readonly ask: string;
  readonly value: number;
}

const MOST_STEPS = 60;

/** The value of one given at which the learner's answer would be right; `null` where there is none above 0. Secant steps. */
export const inverseGiven = (family: SumFamily, { givens, about }: Draw, { key, ask, value }: Target): number | null => {
  const gap = (given: number): number => {
    const solution = solvedAt(family, { ...givens, [key]: given }, about);
    return solution === null || isSays(solution) ? Number.NaN : (solution[ask] as number) - value;
  };
  let before = givens[key] as number;
  let now = before + 1;
  let gapBefore = gap(before);
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const gapNow = gap(now);
    if (Math.abs(gapNow) < ROOT_TOLERANCE) return now > 0 ? now : null;
    const slope = (gapNow - gapBefore) / (now - before);
    if (!Number.isFinite(slope) || slope === 0) return null;
    [before, gapBefore, now] = [now, gapNow, now - gapNow / slope];
  }
  return null;
};
