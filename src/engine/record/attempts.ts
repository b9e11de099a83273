import type { Attempt, AttemptKind, CarriedLevel } from "../standing/attempt.ts";
import type { Line } from "./chain.ts";
import { calendarDay } from "./day.ts";
import { countedDay, countOn, type DayCount, isSetBack, NO_DAYS } from "./day-count.ts";
import type { RecordEvent } from "./event.ts";

/** What the course says of one objective. */
export interface ObjectiveEntry {
  readonly id: string;
  readonly module: string;
  readonly families: readonly string[];
  /** Longest gap that a teaching list allows, in days. */
  readonly capDays?: number;
}

/** What a carry code says: levels by module and by safety-critical objective, days as calendar days from 1970. */
export interface CarrySummary {
  readonly modules: Readonly<Record<string, { readonly level: CarriedLevel; readonly returnDay: number | null }>>;
  readonly safety: Readonly<Record<string, CarriedLevel>>;
}

export interface CourseView {
  readonly objectives: readonly ObjectiveEntry[];
  /** Chance of a right answer without knowing, by family; 0.02 where it is not said. */
  readonly guessOf?: (family: string) => number;
  /** Reads a carry code; null where the course cannot. */
  readonly readCarry?: (code: string) => CarrySummary | null;
}

export interface Attempts {
  readonly byObjective: ReadonlyMap<string, readonly Attempt[]>;
  readonly days: DayCount;
  /** Ids of the events before which the clock had been set back. */
  readonly setBackBy: readonly string[];
  /** Ids of events that this course cannot place: a family or an objective that it does not have, a code that it cannot read. */
  readonly unplaced: readonly string[];
}

interface Tally {
  readonly byObjective: Map<string, Attempt[]>;
  /** Draws that were answered, and draws that were hinted at. */
  readonly answered: Set<string>;
  readonly hinted: Set<string>;
  readonly ids: Set<string>;
  readonly setBackBy: string[];
  readonly unplaced: string[];
  days: DayCount;
}

const LEAST_GUESS = 0.02;

const drawOf = ({ family, version, seed, local = "" }: RecordEvent): string => JSON.stringify([family, version, seed, local]);

const kindOf = (event: RecordEvent, { isFirstTry, isHelped }: { readonly isFirstTry: boolean; readonly isHelped: boolean }): AttemptKind => {
  if (event.verdict === "unsafe-side") return "unsafe";
  if (event.verdict === "rounding") return "rounding";
  if (event.verdict !== "right") return "wrong";
  return isFirstTry && !isHelped ? "right" : "helped";
};

const objectivesOf = (event: RecordEvent, { objectives }: CourseView): readonly ObjectiveEntry[] => {
  const { objective, module } = event.givens;
  if (event.family !== "") return objectives.filter(({ families }) => families.includes(event.family));
  return objectives.filter((entry) => entry.id === objective || entry.module === module);
};

const add = (tally: Tally, objective: string, attempt: Attempt): void => {
  const list = tally.byObjective.get(objective);
  if (list) list.push(attempt);
  else tally.byObjective.set(objective, [attempt]);
};

const addCarried = (tally: Tally, event: RecordEvent, course: CourseView): void => {
  const summary = course.readCarry?.(event.givens["code"] ?? "") ?? null;
  if (summary === null) tally.unplaced.push(event.id);
  for (const { id, module } of summary === null ? [] : course.objectives) {
    const carried = summary?.modules[module];
    const level = summary?.safety[id] ?? carried?.level;
    if (level === undefined) continue;
    const returnDay = carried?.returnDay == null ? null : carried.returnDay + tally.days.aheadDays;
    add(tally, id, { id: event.id, day: countedDay(tally.days), kind: "carried", isFirstTry: false, guess: LEAST_GUESS, carried: { level, returnDay } });
  }
};

const addStep = (tally: Tally, event: RecordEvent, course: CourseView): void => {
  const draw = drawOf(event);
  const isAnswer = event.kind === "answered";
  if (event.kind === "hinted") tally.hinted.add(draw);
  if (!isAnswer && event.kind !== "read") return;
  const entries = objectivesOf(event, course);
  if (entries.length === 0) tally.unplaced.push(event.id);
  const isFirstTry = isAnswer && !tally.answered.has(draw) && Number(event.try) <= 1;
  const kind = isAnswer ? kindOf(event, { isFirstTry, isHelped: event.hint || tally.hinted.has(draw) }) : "read";
  const guess = course.guessOf?.(event.family) ?? LEAST_GUESS;
  for (const { id } of entries) add(tally, id, { id: event.id, day: countedDay(tally.days), kind, isFirstTry, guess });
  if (isAnswer) tally.answered.add(draw);
};

/**
 * The steps that each objective has seen, from lines in the order of `mergeLogs`. An event counts once, by its id. What
 * could not be read as an answer, was left, or was talked about moves nothing.
 */
export const attemptsOf = (lines: readonly Line[], course: CourseView): Attempts => {
  const tally: Tally = { byObjective: new Map(), answered: new Set(), hinted: new Set(), ids: new Set(), setBackBy: [], unplaced: [], days: NO_DAYS };
  for (const { event } of lines) {
    if (tally.ids.has(event.id)) continue;
    tally.ids.add(event.id);
    const day = calendarDay(event.at, event.offsetMin);
    if (day !== null && isSetBack(tally.days, day)) tally.setBackBy.push(event.id);
    tally.days = countOn(tally.days, day);
    if (event.kind === "carried") addCarried(tally, event, course);
    else if (event.kind !== "answered" || event.verdict !== "not-recognised") addStep(tally, event, course);
  }
  const { byObjective, days, setBackBy, unplaced } = tally;
  return { byObjective, days, setBackBy, unplaced };
};
