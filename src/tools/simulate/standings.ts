import type { ObjectiveStanding } from "../../engine/record/learner-state.ts";
import type { Attempt } from "../../engine/standing/attempt.ts";
import { knownOn } from "../../engine/standing/estimate.ts";
import { type Standing, standingOf } from "../../engine/standing/standing.ts";
import { COURSE } from "./course.ts";

/**
 * Where a simulated learner stands, from the steps of each objective as they come. `learnerState` would read the whole
 * log anew for every sheet; this hands the same steps to the same rules, and each run ends by comparing the two.
 */
export interface Standings {
  readonly add: (objective: string, attempt: Attempt) => void;
  readonly on: (todayDay: number) => readonly ObjectiveStanding[];
}

interface Held {
  readonly attempts: Attempt[];
  readonly firstTries: boolean[];
  /** Standing at the last look; null where an answer has come since. */
  standing: Standing | null;
}

/** True where another day by itself changes nothing: never asked, steady with the date ahead, or already due. */
const stillHolds = ({ level, returns }: Standing, todayDay: number): boolean =>
  level === "unseen" || level === "due" || (level === "steady" && returns !== null && todayDay < returns.day);

const standingOn = (held: Held, todayDay: number): Standing => {
  if (held.standing !== null && stillHolds(held.standing, todayDay)) return held.standing;
  held.standing = standingOf(held.attempts, { todayDay, capDays: null });
  return held.standing;
};

export const standingsFrom = (): Standings => {
  const held = COURSE.map(({ id, module }): Held & { readonly id: string; readonly module: string } => ({ id, module, attempts: [], firstTries: [], standing: null }));
  const add = (objective: string, attempt: Attempt): void => {
    const one = held.find(({ id }) => id === objective);
    if (one === undefined) throw new RangeError(`objective must be one of the course, got ${objective}`);
    one.attempts.push(attempt);
    one.firstTries.push(attempt.kind === "right");
    one.standing = null;
  };
  const on = (todayDay: number): readonly ObjectiveStanding[] =>
    held.map((one) => {
      const standing = standingOn(one, todayDay);
      const isBack = standing.returns !== null && todayDay >= standing.returns.day;
      let known: number | null = null;
      return {
        ...standing, objective: one.id, module: one.module, isBack, firstTries: one.firstTries,
        // The estimate takes the longest, and only the workbook's order asks for it.
        get known() {
          known ??= knownOn(one.attempts, todayDay);
          return known;
        },
      };
    });
  return { add, on };
};
