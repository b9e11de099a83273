import type { Attempt, Level } from "./attempt.ts";
import { type CarriedDate, type DayAnswer, type Return, returnAfter } from "./next-return.ts";
import { DAYS_TO_STEADY, DRAWS_TO_SETTLE, DRAWS_TO_STEADY, DRAWS_TO_WORKED, isWorked, levelBelow, NOTHING_YET, type Progress, progressAfter } from "./progress.ts";

/** One thing that would change the level: what, how often, from which day, and where it leads. */
export interface Change {
  readonly by: "read" | "helped" | "right" | "wrong" | "unsafe" | "day";
  readonly to: Level;
  readonly count: number;
  /** First day on which it can happen; null where any day will do. */
  readonly fromDay: number | null;
}

export interface Standing {
  readonly level: Level;
  /** Ids of the events that made the level. */
  readonly madeBy: readonly string[];
  readonly wouldChange: readonly Change[];
  /** Day of return and its reason; null before the objective is worked, unless an unsafe answer stands. */
  readonly returns: Return | null;
}

export interface StandingOptions {
  /** The day on which it is asked. */
  readonly todayDay: number;
  /** Longest gap that a teaching list allows, in days; null where none does. */
  readonly capDays: number | null;
}

/** The step that counts for the date, if any: answers before Worked count only where they are unsafe or an unsafe one stands. */
const dateStep = (before: Progress, after: Progress, { kind, day, carried }: Attempt): DayAnswer | CarriedDate | null => {
  if (kind === "unsafe" || carried?.level === "stop") return { day, right: false, unsafe: true };
  if (kind === "carried") return carried?.returnDay === null || carried === undefined || !isWorked(after) ? null : { day, carriedDay: carried.returnDay };
  if (kind !== "right" && kind !== "wrong") return null;
  return before.stop !== null || isWorked(after) ? { day, right: kind === "right", unsafe: false } : null;
};

const change = (by: Change["by"], to: Level, more: { readonly count?: number; readonly fromDay?: number | null } = {}): Change => ({
  by, to, count: more.count ?? 1, fromDay: more.fromDay ?? null,
});

const steadyChange = ({ run }: Progress, todayDay: number): Change => {
  const first = run[0]?.day ?? todayDay;
  return change("right", "steady", { count: Math.max(1, DRAWS_TO_STEADY - run.length), fromDay: first + DAYS_TO_STEADY });
};

const changesAt = (level: Level, progress: Progress, at: { readonly todayDay: number; readonly returns: Return | null }): readonly Change[] => {
  const { stop, settling, cleanDraws } = progress;
  const unsafe = change("unsafe", "stop");
  const toWorked = change("right", "worked", { count: DRAWS_TO_WORKED - cleanDraws });
  if (stop !== null) {
    const count = settling.day === at.todayDay ? DRAWS_TO_SETTLE - settling.count : DRAWS_TO_SETTLE;
    return [change("right", "worked", { count, fromDay: stop.day + 1 })];
  }
  if (level === "steady") return [change("day", "due", { fromDay: at.returns?.day ?? null }), change("wrong", "worked"), unsafe];
  if (level === "due") return [change("right", "steady"), change("wrong", "worked"), unsafe];
  if (level === "worked") return [steadyChange(progress, at.todayDay), unsafe];
  if (level === "helped") return [toWorked, unsafe];
  const toHelped = change("helped", "helped");
  return level === "read" ? [toHelped, toWorked, unsafe] : [change("read", "read"), toHelped, toWorked, unsafe];
};

const madeByOf = (level: Level, progress: Progress): readonly string[] => {
  const { stop, steadyBy, workedBy, fellBy, helpedBy, readBy } = progress;
  if (stop !== null) return [stop.id];
  if (level === "steady" || level === "due") return steadyBy;
  if (level === "worked") return fellBy === null ? workedBy : [...workedBy, fellBy];
  const one = level === "helped" ? helpedBy : readBy;
  return one === null ? [] : [one];
};

/**
 * Where an objective stands by the public rule: level, what made it, what would change it, and when it comes back.
 * Nothing here estimates anything; the same steps give the same standing for ever.
 */
export const standingOf = (attempts: readonly Attempt[], { todayDay, capDays }: StandingOptions): Standing => {
  let progress = NOTHING_YET;
  const steps: (DayAnswer | CarriedDate)[] = [];
  for (const attempt of attempts) {
    const after = progressAfter(progress, attempt);
    const step = dateStep(progress, after, attempt);
    if (step !== null) steps.push(step);
    progress = after;
  }
  const returns = returnAfter(steps, capDays);
  const below = levelBelow(progress);
  const isDue = below === "steady" && returns !== null && todayDay >= returns.day;
  const settled: Level = isDue ? "due" : below;
  const level: Level = progress.stop === null ? settled : "stop";
  return { level, madeBy: madeByOf(level, progress), wouldChange: changesAt(level, progress, { todayDay, returns }), returns };
};
