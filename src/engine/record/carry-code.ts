import type { CarriedLevel } from "../standing/attempt.ts";
import type { CarrySummary } from "./attempts.ts";
import type { LearnerState } from "./learner-state.ts";
import { packed, readSigns, unpacked, withCheck } from "./signs.ts";
import type { CodeFault } from "./words.ts";

/**
 * What a carry code of one edition speaks of, in order: modules, and the objectives with an unsafe side. A list is never
 * changed once an edition is out; a later edition adds a list of its own and keeps this one, so an old code stays legible.
 */
export interface CarryPlan {
  /** 0 to 31. */
  readonly edition: number;
  readonly modules: readonly string[];
  readonly safety: readonly string[];
}

export type CarryReading = { readonly summary: CarrySummary; readonly writtenDay: number; readonly edition: number } | { readonly fault: CodeFault };

const EDITIONS = 32;
const GROUP = 5;
/** 1 January 2026; days of writing are counted from here for as long as 89 years. */
const FIRST_DAY = 20_454;
const DAYS = 32_768;
/** Days to the return, 0 to 90, and one more for "no date". */
const RETURNS = 92;
const NO_RETURN = RETURNS - 1;
/** Lowest first: a stop counts below everything, so that the lowest level of a module never hides one. */
const ORDER: readonly CarriedLevel[] = ["stop", "unseen", "read", "helped", "worked", "steady"];

const lowest = (levels: readonly CarriedLevel[]): number => levels.reduce((least, level) => Math.min(least, ORDER.indexOf(level)), ORDER.length - 1);

const within = (value: number, most: number): number => Math.max(0, Math.min(most, value));

const countsOf = ({ modules, safety }: CarryPlan): readonly number[] => [DAYS, ...modules.flatMap(() => [ORDER.length, RETURNS]), ...safety.map(() => ORDER.length)];

const carriedLevel = (level: string): CarriedLevel => ORDER.find((one) => one === level) ?? "steady";

/**
 * The code for what a learner carries to another device: for each module the lowest level and the next return day, for
 * each objective with an unsafe side its level. At most 60 signs, in groups of five. A date further than 90 days away is
 * carried as 90, one that has passed as today.
 */
export const carryCode = (state: LearnerState, plan: CarryPlan, todayDay: number): string => {
  const fields: (readonly [number, number])[] = [[within(todayDay - FIRST_DAY, DAYS - 1), DAYS]];
  for (const module of plan.modules) {
    // A stop of an objective that is listed by itself does not speak for the rest of its module.
    const own = state.objectives.filter((one) => one.module === module && !(one.level === "stop" && plan.safety.includes(one.objective)));
    const levels = own.map(({ level }) => carriedLevel(level));
    const days = own.flatMap(({ returns }) => (returns === null ? [] : [returns.day - todayDay]));
    fields.push([own.length === 0 ? ORDER.indexOf("unseen") : lowest(levels), ORDER.length]);
    fields.push([days.length === 0 ? NO_RETURN : within(Math.min(...days), NO_RETURN - 1), RETURNS]);
  }
  for (const objective of plan.safety) {
    const level = state.objectives.find((one) => one.objective === objective)?.level ?? "unseen";
    fields.push([ORDER.indexOf(carriedLevel(level)), ORDER.length]);
  }
  return withCheck([...packed([[plan.edition, EDITIONS]]), ...packed(fields)], { purpose: "carry", groupOf: GROUP });
};

const summaryOf = (fields: readonly number[], { modules, safety }: CarryPlan): { readonly summary: CarrySummary; readonly writtenDay: number } => {
  const writtenDay = FIRST_DAY + (fields[0] ?? 0);
  const levelAt = (index: number): CarriedLevel => ORDER[fields[index] ?? 0] ?? "stop";
  const moduleAt = (place: number) => {
    const days = fields[2 + 2 * place] ?? NO_RETURN;
    return { level: levelAt(1 + 2 * place), returnDay: days === NO_RETURN ? null : writtenDay + days };
  };
  const behind = 1 + 2 * modules.length;
  return {
    writtenDay,
    summary: {
      modules: Object.fromEntries(modules.map((module, place) => [module, moduleAt(place)])),
      safety: Object.fromEntries(safety.map((objective, place) => [objective, levelAt(behind + place)])),
    },
  };
};

/** Reads a typed carry code with the plan of its own edition. Never throws for what was typed. */
export const readCarryCode = (typed: string, plans: readonly CarryPlan[]): CarryReading => {
  const signs = readSigns(typed, "carry");
  if ("fault" in signs) return signs;
  const [edition = -1, ...rest] = signs.values;
  const plan = plans.find((one) => one.edition === edition);
  if (plan === undefined) return { fault: "unknown-edition" };
  const fields = unpacked(rest, countsOf(plan));
  return fields === null ? { fault: "content" } : { ...summaryOf(fields, plan), edition };
};
