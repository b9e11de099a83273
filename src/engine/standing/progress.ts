import type { Attempt, CarriedLevel, Level } from "./attempt.ts";

/** A right answer without help to a draw that was new. */
export interface CleanDraw {
  readonly id: string;
  readonly day: number;
}

/** What the level rule needs to know of the steps so far; ids are those of the events. */
export interface Progress {
  readonly readBy: string | null;
  readonly helpedBy: string | null;
  /** The first two clean draws, or the carried summary that stands for them. */
  readonly workedBy: readonly string[];
  /** How many clean draws there were; a carried summary of Worked counts as two. */
  readonly cleanDraws: number;
  /** Clean draws since the last answer that broke the run. */
  readonly run: readonly CleanDraw[];
  /** What made it steady; empty where it is not. */
  readonly steadyBy: readonly string[];
  /** The answer that took steady back. */
  readonly fellBy: string | null;
  readonly stop: CleanDraw | null;
  /** Clean draws of one later day while a stop stands. */
  readonly settling: { readonly day: number; readonly count: number };
}

export const NOTHING_YET: Progress = {
  readBy: null, helpedBy: null, workedBy: [], cleanDraws: 0, run: [], steadyBy: [], fellBy: null, stop: null, settling: { day: 0, count: 0 },
};

export const DRAWS_TO_WORKED = 2;
export const DRAWS_TO_STEADY = 3;
export const DAYS_TO_STEADY = 2;
export const DRAWS_TO_SETTLE = 2;

/** True once two different draws were right without help; never lost again. */
export const isWorked = ({ cleanDraws }: Progress): boolean => cleanDraws >= DRAWS_TO_WORKED;

const settled = (before: Progress, day: number): Progress => {
  if (before.stop === null || day <= before.stop.day) return before;
  const count = before.settling.day === day ? before.settling.count + 1 : 1;
  return count < DRAWS_TO_SETTLE ? { ...before, settling: { day, count } } : { ...before, stop: null, settling: { day: 0, count: 0 } };
};

const steadyFrom = (run: readonly CleanDraw[]): readonly string[] => {
  const [first, second] = run;
  const last = run.at(-1);
  if (!first || !second || !last || run.length < DRAWS_TO_STEADY || last.day - first.day < DAYS_TO_STEADY) return [];
  return [first.id, second.id, last.id];
};

const afterRight = (before: Progress, { id, day }: Attempt): Progress => {
  const run = [...before.run, { id, day }];
  const steadyBy = before.steadyBy.length > 0 ? before.steadyBy : steadyFrom(run);
  const workedBy = isWorked(before) ? before.workedBy : [...before.workedBy, id];
  return settled({ ...before, run, steadyBy, workedBy, cleanDraws: before.cleanDraws + 1, fellBy: steadyBy.length > 0 ? null : before.fellBy }, day);
};

/** A wrong answer takes steady back to worked and breaks the run; nothing else falls. */
const afterWrong = (before: Progress, id: string): Progress => ({
  ...before, run: [], steadyBy: [], fellBy: before.steadyBy.length > 0 ? id : before.fellBy,
});

const AT_LEAST: readonly CarriedLevel[] = ["unseen", "read", "helped", "worked", "steady"];

/** A summary raises what is lower and lowers nothing; a stop is always taken over. */
const afterCarried = (before: Progress, { id, day, carried }: Attempt): Progress => {
  if (carried === undefined) return before;
  const place = AT_LEAST.indexOf(carried.level);
  const reaches = (level: CarriedLevel): boolean => place >= AT_LEAST.indexOf(level);
  return {
    ...before,
    readBy: before.readBy ?? (reaches("read") ? id : null),
    helpedBy: before.helpedBy ?? (reaches("helped") ? id : null),
    ...(reaches("worked") && !isWorked(before) ? { workedBy: [id], cleanDraws: DRAWS_TO_WORKED } : {}),
    steadyBy: reaches("steady") && before.steadyBy.length === 0 ? [id] : before.steadyBy,
    ...(carried.level === "stop" ? { stop: { id, day }, settling: { day: 0, count: 0 }, run: [], steadyBy: [] } : {}),
  };
};

/** One step further. Every answer shows its working, so it also counts as read; a right answer is at least a helped one. */
export const progressAfter = (before: Progress, attempt: Attempt): Progress => {
  const { id, day, kind } = attempt;
  if (kind === "carried") return afterCarried(before, attempt);
  const read: Progress = { ...before, readBy: before.readBy ?? id };
  if (kind === "read" || kind === "rounding") return read;
  if (kind === "unsafe") return { ...afterWrong(read, id), stop: { id, day }, settling: { day: 0, count: 0 } };
  if (kind === "wrong") return afterWrong(read, id);
  const helped: Progress = { ...read, helpedBy: read.helpedBy ?? id };
  return kind === "helped" ? helped : afterRight(helped, attempt);
};

/** The level below a stop and before the date is looked at. */
export const levelBelow = (progress: Progress): Exclude<Level, "due" | "stop"> => {
  if (progress.steadyBy.length > 0) return "steady";
  if (isWorked(progress)) return "worked";
  if (progress.helpedBy !== null) return "helped";
  return progress.readBy === null ? "unseen" : "read";
};
