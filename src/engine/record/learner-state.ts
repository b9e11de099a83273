import { firstTries, knownOn } from "../standing/estimate.ts";
import { type Change, type Standing, standingOf } from "../standing/standing.ts";
import { attemptsOf, type CourseView, type ObjectiveEntry } from "./attempts.ts";
import type { Line } from "./chain.ts";
import { countedDay, countOn } from "./day-count.ts";
import { mergeLogs } from "./merge.ts";

/** Where a learner stands on one objective; days are calendar days from 1 January 1970, as the clock of today counts. */
export interface ObjectiveStanding extends Standing {
  readonly objective: string;
  readonly module: string;
  /** True where the date has come, at any level that has a date. */
  readonly isBack: boolean;
  /** Chance that it is known today, 0 to 1; it only orders practice. */
  readonly known: number;
  /** By opportunity, oldest first: true where the first try was right without help. */
  readonly firstTries: readonly boolean[];
}

export interface LearnerState {
  readonly objectives: readonly ObjectiveStanding[];
  readonly setBackBy: readonly string[];
  readonly unplaced: readonly string[];
}

export interface StateOptions extends CourseView {
  /** The learner's calendar day today, from `calendarDay`. */
  readonly todayDay: number;
}

const movedBack = (standing: Standing, days: number): Standing => {
  const { returns, wouldChange } = standing;
  const moved = (change: Change): Change => ({ ...change, fromDay: change.fromDay === null ? null : change.fromDay - days });
  return { ...standing, wouldChange: wouldChange.map(moved), returns: returns === null ? null : { ...returns, day: returns.day - days } };
};

/**
 * Folds a log into where the learner stands. The same lines give the same state, in whatever order they are handed in
 * and however often a line stands among them.
 */
export const learnerState = (lines: readonly Line[], { todayDay, ...course }: StateOptions): LearnerState => {
  const { byObjective, days, setBackBy, unplaced } = attemptsOf(mergeLogs(lines), course);
  const now = countOn(days, todayDay);
  const today = countedDay(now);
  const standingAt = ({ id, module, capDays }: ObjectiveEntry): ObjectiveStanding => {
    const attempts = byObjective.get(id) ?? [];
    const standing = standingOf(attempts, { todayDay: today, capDays: capDays ?? null });
    const isBack = standing.returns !== null && today >= standing.returns.day;
    const tries = firstTries(attempts).map(({ isRight }) => isRight);
    return { ...movedBack(standing, now.aheadDays), objective: id, module, isBack, known: knownOn(attempts, today), firstTries: tries };
  };
  return { objectives: course.objectives.map(standingAt), setBackBy, unplaced };
};
