import { sha256Hex } from "../random/sha256.ts";
import { canonicalJson } from "./canonical.ts";
import { momentMs } from "./day.ts";

/** How a hand-in may come back. */
export const ROUTES = ["file", "block", "square", "code"] as const;
export type Route = (typeof ROUTES)[number];

/** When somebody passes, as data; the page makes one sentence of it. The list of what must be right is never averaged with the rest. */
export interface PassRule {
  /** Least share of the questions that must be right, in whole per cent. */
  readonly rightPercent: number;
  /** Families, by place in the edition's list, of which every question must be right. */
  readonly must: readonly number[];
  /** True where one answer on the unsafe side is enough not to pass. */
  readonly noUnsafe: boolean;
}

/**
 * A teaching list: all that a learner's page and the returns desk need to draw the same questions. It travels in a link or
 * a typed code; no server holds it. Families stand by their place in an edition's list, which is never changed, and that
 * locks the versions of all questions.
 */
export interface TeachingList {
  readonly form: "list/1";
  readonly title: string;
  /** Edition of `content/editions.json` that fixes families and versions, 0 to 31. */
  readonly edition: number;
  /** Check of the families and versions that the picks mean, so that an edition which was rewritten is noticed. */
  readonly lock: string;
  /** Place of the family in the edition's list, and how many questions of it. */
  readonly picks: readonly (readonly [family: number, count: number])[];
  /** A sheet for each learner code, or the same for all. */
  readonly sheet: "own" | "same";
  readonly attempts: number;
  /** Calendar days, as `2026-12-04`, all included. */
  readonly opensOn: string;
  readonly dueOn: string;
  readonly keepUntil: string;
  readonly rule: PassRule;
  readonly back: readonly Route[];
  /** Where hand-ins go, in the director's words; may be empty. */
  readonly backTo: string;
  /** Check of the word that is read aloud at the start of a supervised sheet; null where nobody supervises. */
  readonly spoken: string | null;
  /** Hexadecimal digits that make the seeds of this list its own. */
  readonly nonce: string;
}

export const MOST_QUESTIONS = 60;
export const MOST_ATTEMPTS = 9;
const MOST_TITLE = 80;
const MOST_BACK_TO = 160;
const MOST_FAMILIES = 1024;
const EDITIONS = 32;
export const LOCK_DIGITS = 8;
const KEYS: readonly (keyof TeachingList)[] = ["form", "title", "edition", "lock", "picks", "sheet", "attempts", "opensOn", "dueOn", "keepUntil", "rule", "back", "backTo", "spoken", "nonce"];

type Fields = Readonly<Record<string, unknown>>;
const isFields = (value: unknown): value is Fields => typeof value === "object" && value !== null && !Array.isArray(value);
const isText = (value: unknown, most: number): value is string => typeof value === "string" && value.length <= most && value.isWellFormed();
const isWhole = (value: unknown, least: number, most: number): value is number => Number.isSafeInteger(value) && (value as number) >= least && (value as number) <= most;
const isPlace = (value: unknown): boolean => isWhole(value, 0, MOST_FAMILIES - 1);
const isHex = (value: unknown, least: number, most: number): boolean => isText(value, most) && value.length >= least && /^[0-9a-f]+$/.test(value);
const hasOnly = (value: Fields, keys: readonly string[]): boolean => Object.keys(value).length === keys.length && keys.every((key) => Object.hasOwn(value, key));

const MS_PER_DAY = 86_400_000;

/** A calendar day such as `2026-12-04`, counted from 1 January 1970; null where no calendar has it. */
export const dayOf = (text: string): number | null => {
  if (!/^\d{4}-\d\d-\d\d$/.test(text)) return null;
  const ms = momentMs(`${text}T00:00:00Z`);
  return ms === null ? null : ms / MS_PER_DAY;
};

const isDay = (value: unknown): value is string => isText(value, 10) && dayOf(value) !== null;
const isPick = (value: unknown): boolean => Array.isArray(value) && value.length === 2 && isPlace(value[0]) && isWhole(value[1], 1, MOST_QUESTIONS);

const arePicks = (value: unknown): value is TeachingList["picks"] => {
  if (!Array.isArray(value) || value.length < 1 || value.length > MOST_QUESTIONS || !value.every(isPick)) return false;
  const picks = value as TeachingList["picks"];
  const isOnce = new Set(picks.map(([family]) => family)).size === picks.length;
  return isOnce && picks.reduce((sum, [, count]) => sum + count, 0) <= MOST_QUESTIONS;
};

const isRule = (value: unknown): value is PassRule =>
  isFields(value) && hasOnly(value, ["rightPercent", "must", "noUnsafe"]) && isWhole(value["rightPercent"], 0, 100) && typeof value["noUnsafe"] === "boolean"
  && Array.isArray(value["must"]) && value["must"].length <= MOST_QUESTIONS && value["must"].every(isPlace);

const areRoutes = (value: unknown): boolean =>
  Array.isArray(value) && value.length >= 1 && value.length <= ROUTES.length && new Set(value).size === value.length && value.every((one) => ROUTES.some((route) => route === one));

const areDays = ({ opensOn, dueOn, keepUntil }: Fields): boolean => isDay(opensOn) && isDay(dueOn) && isDay(keepUntil) && opensOn <= dueOn && dueOn <= keepUntil;

/** True for a well-formed teaching list; used on every link and code, because whoever sends one is a stranger. */
export const isTeachingList = (value: unknown): value is TeachingList => {
  if (!isFields(value) || !hasOnly(value, KEYS) || value["form"] !== "list/1") return false;
  const { title, edition, lock, picks, sheet, attempts, rule, back, backTo, spoken, nonce } = value;
  if (!isText(title, MOST_TITLE) || title.trim() === "" || !isText(backTo, MOST_BACK_TO)) return false;
  if (!isHex(lock, LOCK_DIGITS, LOCK_DIGITS) || !isWhole(edition, 0, EDITIONS - 1) || !isWhole(attempts, 1, MOST_ATTEMPTS) || !areDays(value)) return false;
  if (!arePicks(picks) || !isRule(rule) || !areRoutes(back)) return false;
  const asked = new Set(picks.map(([family]) => family));
  return rule.must.every((family) => asked.has(family)) && (sheet === "own" || sheet === "same") && (spoken === null || isHex(spoken, 16, 16)) && isHex(nonce, 5, 32);
};

const ID_DIGITS = 16;

/** The name of a list among all lists: the hash of its canonical text. A hand-in carries it, so a changed list is another list. */
export const listId = (list: TeachingList): string => sha256Hex(canonicalJson(list)).slice(0, ID_DIGITS);

/** How many questions one sheet of a list has. */
export const questionCount = ({ picks }: TeachingList): number => picks.reduce((sum, [, count]) => sum + count, 0);
