import { requireCount } from "../quantity/require.ts";

export interface DayAnswer {
  /** The learner's calendar day as a whole number, 0 included. */
  readonly day: number;
  readonly right: boolean;
  readonly unsafe: boolean;
}

/** A date brought from another device; it counts only where this one has none. */
export interface CarriedDate {
  readonly day: number;
  readonly carriedDay: number;
}

export type ReturnReason = "first" | "right" | "early" | "wrong" | "unsafe" | "capped" | "carried";

export interface Return {
  readonly day: number;
  readonly reason: ReturnReason;
}

/** Days to the return at each place; each is the sum of the two before. */
const GAPS_DAYS: readonly number[] = [2, 2, 4, 6, 10, 16, 26, 42, 68, 90];
const CLEAN_DRAWS_TO_SETTLE = 2;

/** Where an objective stands on the list of gaps. `place` is -1 before the first right answer. */
interface Standing extends Return {
  readonly place: number;
  readonly today: number;
  /** While an unsafe answer stands: the day it came and the clean draws of the day looked at. */
  readonly unsafeSince: number | null;
  readonly cleanToday: number;
  /** Longest gap that a teaching list allows; null where none does. */
  readonly capDays: number | null;
}

const START: Standing = { day: 0, reason: "first", place: -1, today: 0, unsafeSince: null, cleanToday: 0, capDays: null };

const gapAt = (place: number): number => GAPS_DAYS[Math.min(place, GAPS_DAYS.length - 1)] ?? 0;

const at = (before: Standing, place: number, reason: ReturnReason): Standing => {
  const kept = Math.min(GAPS_DAYS.length - 1, Math.max(0, place));
  const gap = gapAt(kept);
  const isCapped = before.capDays !== null && before.capDays < gap;
  const days = isCapped ? (before.capDays ?? gap) : gap;
  return { ...before, place: kept, day: before.today + days, reason: isCapped ? "capped" : reason, unsafeSince: null, cleanToday: 0 };
};

const afterUnsafe = (before: Standing): Standing => ({
  ...before,
  day: before.today + 1,
  reason: "unsafe",
  unsafeSince: before.today,
  cleanToday: 0,
});

const whileUnsafe = (before: Standing, isRight: boolean, since: number): Standing => {
  const clean = isRight && before.today > since ? before.cleanToday + 1 : before.cleanToday;
  if (clean === CLEAN_DRAWS_TO_SETTLE) return at(before, before.place - 1, "unsafe");
  return { ...before, day: before.today + 1, reason: "unsafe", cleanToday: clean };
};

const afterAnswer = (before: Standing, answer: DayAnswer, isFirstOfDay: boolean): Standing => {
  const today = Math.max(before.today, answer.day);
  const now: Standing = { ...before, today, cleanToday: today > before.today ? 0 : before.cleanToday };
  if (answer.unsafe) return afterUnsafe(now);
  if (now.unsafeSince !== null) return whileUnsafe(now, answer.right, now.unsafeSince);
  if (!isFirstOfDay) return now;
  if (!answer.right) return { ...at(now, now.place - 1, "wrong"), place: Math.max(now.place - 1, Math.min(now.place, 0)) };
  if (now.place < 0) return at(now, 0, "first");
  return today < now.day ? { ...now, reason: "early" } : at(now, now.place + 1, "right");
};

const afterCarried = (before: Standing, { day, carriedDay }: CarriedDate): Standing => {
  const today = Math.max(before.today, day);
  return before.place >= 0 || before.unsafeSince !== null ? { ...before, today } : { ...before, today, place: 0, day: carriedDay, reason: "carried" };
};

/** The day of return over answers and carried dates, with the cap of a teaching list in days; null before anything counts. */
export const returnAfter = (steps: readonly (DayAnswer | CarriedDate)[], capDays: number | null): Return | null => {
  if (steps.length === 0) return null;
  const seenDays = new Set<number>();
  let standing: Standing = { ...START, capDays };
  for (const step of steps) {
    if ("carriedDay" in step) {
      standing = afterCarried(standing, step);
      continue;
    }
    standing = afterAnswer(standing, step, !seenDays.has(step.day));
    seenDays.add(step.day);
  }
  return { day: standing.day, reason: standing.reason };
};

const requireAnswer = ({ day, right, unsafe }: DayAnswer, index: number): void => {
  requireCount({ [`answers[${index}].day`]: day });
  for (const [name, value] of Object.entries({ right, unsafe })) {
    if (typeof value !== "boolean") throw new RangeError(`answers[${index}].${name} must be true or false, got ${String(value)}`);
  }
};

/**
 * The day on which an objective comes back, by a rule that a learner can argue with. Places on the list of gaps 2, 2,
 * 4, 6, 10, 16, 26, 42, 68, 90 days: the first right answer takes place 0; right on or after the date one place on; right before the
 * date changes nothing; wrong one place back, not below 0. Unsafe: back the next day and every day, until a later
 * day holds two clean answers, then one place back. A clock set back counts as no time passed.
 *
 * @param answers - At least one, oldest first: `day` (the learner's calendar day, whole number, 0 included), `right`, `unsafe`
 * (true overrules right). The first answer of each day counts; later ones of a day only where one is unsafe or an
 * unsafe one stands.
 * @returns Day of return on the same count of days, and the reason: `first`, `right`, `early`, `wrong` or `unsafe`.
 * `capped` and `carried` come only
 * where a teaching list caps the gap or a date came from another device, which this function does not take.
 * @throws {RangeError} If there is no answer, a day is negative or not whole, or a mark is neither true nor false.
 * @example nextReturn([{ day: 0, right: true, unsafe: false }, { day: 2, right: true, unsafe: false }, { day: 4, right: true, unsafe: false }]) // => { day: 8, reason: "right" }
 */
export const nextReturn = (answers: readonly DayAnswer[]): Return => {
  if (answers.length === 0) throw new RangeError("answers must hold at least one answer, got 0");
  answers.forEach(requireAnswer);
  return returnAfter(answers, null) ?? { day: START.day, reason: START.reason };
};
