import { canonicalJson } from "./canonical.ts";
import type { CarryPlan } from "./carry-code.ts";
import type { Line } from "./chain.ts";
import { calendarDay } from "./day.ts";
import type { LearnerState } from "./learner-state.ts";
import { packed, readSigns, unpacked, withCheck } from "./signs.ts";
import { levelOf, STUDY_LEVELS, type StudyLevel } from "./study-level.ts";
import { PATH_VERSIONS } from "./study-path.ts";
import type { CodeFault } from "./words.ts";
import { sha256Words } from "../random/sha256.ts";

/** A path that was worked through, as a code holds it. */
export interface StudiedPath {
  /** Place in `content/study-paths.json`, from 1; below 32. */
  readonly number: number;
  readonly level: Exclude<StudyLevel, "open">;
  /** What its parts were, from `pathVersion`. */
  readonly version: number;
}

/** What a certificate of study says, besides the name on it. */
export interface StudyFacts {
  /** Day of writing, from 1 January 1970. */
  readonly day: number;
  readonly modules: Readonly<Record<string, StudyLevel>>;
  /** The path that the paper names; null where it names none. */
  readonly path: StudiedPath | null;
  /** Objectives at which an unsafe answer is still open. */
  readonly stops: number;
  /** Answers in the record, and the days on which they were given. */
  readonly answers: number;
  readonly answerDays: number;
}

export type StudyReading = { readonly facts: StudyFacts; readonly edition: number; readonly hasName: (name: string) => boolean } | { readonly fault: CodeFault };

const EDITIONS = 32;
const GROUP = 5;
/** 1 January 2026; days of writing are counted from here for 22 years. */
const FIRST_DAY = 20_454;
const DAYS = 8192;
const NAMES = 1_048_576;
const STOPS = 32;
const ANSWERS = 8192;
const ANSWER_DAYS = 512;
const PATH_LEVELS = ["worked", "steady"] as const;
/** A path stands behind everything else, and a code without one ends before it: so codes from before there were paths read as they did. */
const PATH_COUNTS: readonly number[] = [32, PATH_LEVELS.length, PATH_VERSIONS];

const within = (value: number, count: number): number => Math.max(0, Math.min(count - 1, value));

/** Twenty bits of a name, whatever its capitals and spaces: enough to show that a name was changed, too few to find one. */
const nameBits = (name: string): number => {
  const [first = 0] = sha256Words(canonicalJson(["study", name.toWellFormed().normalize("NFKC").toLowerCase().replace(/\s+/g, " ").trim()]));
  return first % NAMES;
};

/** What a record says of study, by the modules that an edition's codes speak of, and of the path that was chosen. */
export const studyFacts = (state: LearnerState, lines: readonly Line[], { plan, todayDay, path = null }: { readonly plan: CarryPlan; readonly todayDay: number; readonly path?: StudiedPath | null }): StudyFacts => {
  const answers = new Map(lines.filter(({ event }) => event.kind === "answered" && event.verdict !== "not-recognised").map(({ event }) => [event.id, calendarDay(event.at, event.offsetMin)]));
  return {
    day: todayDay,
    modules: Object.fromEntries(plan.modules.map((module) => [module, levelOf(state.objectives.filter((one) => one.module === module))])),
    path,
    stops: within(state.objectives.filter(({ level }) => level === "stop").length, STOPS),
    answers: within(answers.size, ANSWERS),
    answerDays: within(new Set(answers.values()).size, ANSWER_DAYS),
  };
};

const countsOf = ({ modules }: CarryPlan): readonly number[] => [DAYS, NAMES, STOPS, ANSWERS, ANSWER_DAYS, ...modules.map(() => STUDY_LEVELS.length)];

/** The code for what a certificate says and for the name on it. Whoever can use this function can make one: it ties paper and code together and proves nothing else. */
export const studyCode = (facts: StudyFacts, name: string, plan: CarryPlan): string => {
  const values = [within(facts.day - FIRST_DAY, DAYS), nameBits(name), facts.stops, facts.answers, facts.answerDays, ...plan.modules.map((module) => STUDY_LEVELS.indexOf(facts.modules[module] ?? "open"))];
  const ofPath = facts.path === null ? [] : [facts.path.number, PATH_LEVELS.indexOf(facts.path.level), facts.path.version];
  const counts = [...countsOf(plan), ...PATH_COUNTS];
  return withCheck([...packed([[plan.edition, EDITIONS]]), ...packed([...values, ...ofPath].map((value, at) => [value, counts[at] ?? 1] as const))], { purpose: "study", groupOf: GROUP });
};

const pathIn = ([number, level = 0, version = 0]: readonly number[]): StudiedPath | null => (number === undefined ? null : { number, level: PATH_LEVELS[level] ?? "worked", version });

/** Reads a typed code of a certificate with the plan of its own edition. Never throws for what was typed. */
export const readStudyCode = (typed: string, plans: readonly CarryPlan[]): StudyReading => {
  const signs = readSigns(typed, "study");
  if ("fault" in signs) return signs;
  const [edition = -1, ...rest] = signs.values;
  const plan = plans.find((one) => one.edition === edition);
  if (plan === undefined) return { fault: "unknown-edition" };
  const counts = countsOf(plan);
  const fields = unpacked(rest, counts) ?? unpacked(rest, [...counts, ...PATH_COUNTS]);
  if (fields === null) return { fault: "content" };
  const [day = 0, bits, stops = 0, answers = 0, answerDays = 0, ...levels] = fields;
  const modules = Object.fromEntries(plan.modules.map((module, at) => [module, STUDY_LEVELS[levels[at] ?? 0] ?? "open"]));
  const path = pathIn(levels.slice(plan.modules.length));
  return { facts: { day: FIRST_DAY + day, modules, path, stops, answers, answerDays }, edition, hasName: (name) => nameBits(name) === bits };
};
