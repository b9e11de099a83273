import { sha256Hex } from "../random/sha256.ts";
import { isResponse, type Response } from "../question/response.ts";
import { VERDICTS, type VerdictCode } from "../question/verdict.ts";
import { canonicalJson } from "./canonical.ts";
import { momentMs } from "./day.ts";
import { isLearnerCode } from "./learner-code.ts";
import { MOST_ATTEMPTS, MOST_QUESTIONS } from "./list-form.ts";

/** One answer as it is handed in. Verdict and slip are what the learner's page said; the returns desk finds its own. */
export interface HandedAnswer {
  /** Place on the sheet, from 0. */
  readonly slot: number;
  readonly at: string;
  readonly response: Response;
  readonly verdict: VerdictCode;
  readonly slip: string | null;
  /** Revision of the local list that the question read, where it reads one. */
  readonly local: string | null;
}

export interface HandedSheet {
  /** From 1. */
  readonly attempt: number;
  readonly answers: readonly HandedAnswer[];
}

/** All that leaves a learner's device: answers and the learner code, no name, no seed and no mark that counts. */
export interface HandIn {
  readonly form: "hand-in/1";
  /** `listId` of the teaching list. */
  readonly list: string;
  /** Edition of the site that graded for the learner. */
  readonly edition: string;
  readonly learner: string;
  /** Hospital or group, in the learner's words; null where none was given. */
  readonly place: string | null;
  /** The word that was read aloud, as it was typed. */
  readonly spoken: string | null;
  readonly at: string;
  readonly sheets: readonly HandedSheet[];
}

const MOST_TEXT = 60;
const KEYS: readonly (keyof HandIn)[] = ["form", "list", "edition", "learner", "place", "spoken", "at", "sheets"];
const ANSWER_KEYS: readonly (keyof HandedAnswer)[] = ["slot", "at", "response", "verdict", "slip", "local"];

type Fields = Readonly<Record<string, unknown>>;
const isFields = (value: unknown): value is Fields => typeof value === "object" && value !== null && !Array.isArray(value);
const hasOnly = (value: Fields, keys: readonly string[]): boolean => Object.keys(value).length === keys.length && keys.every((key) => Object.hasOwn(value, key));
const isText = (value: unknown): value is string => typeof value === "string" && value.length <= MOST_TEXT && value.isWellFormed();
const isTextOrNull = (value: unknown): boolean => value === null || isText(value);
const isWhole = (value: unknown, least: number, most: number): boolean => Number.isSafeInteger(value) && (value as number) >= least && (value as number) <= most;
const isMoment = (value: unknown): boolean => isText(value) && momentMs(value) !== null;
const isOnce = (values: readonly unknown[]): boolean => new Set(values).size === values.length;

const isAnswer = (value: unknown): value is HandedAnswer => {
  if (!isFields(value) || !hasOnly(value, ANSWER_KEYS)) return false;
  const { slot, at, response, verdict, slip, local } = value;
  return isWhole(slot, 0, MOST_QUESTIONS - 1) && isMoment(at) && isResponse(response) && VERDICTS.some((code) => code === verdict) && isTextOrNull(slip) && (local === null || (typeof local === "string" && /^[0-9a-f]{1,64}$/.test(local)));
};

const isSheet = (value: unknown): value is HandedSheet => {
  if (!isFields(value) || !hasOnly(value, ["attempt", "answers"]) || !isWhole(value["attempt"], 1, MOST_ATTEMPTS)) return false;
  const { answers } = value;
  return Array.isArray(answers) && answers.length <= MOST_QUESTIONS && answers.every(isAnswer) && isOnce(answers.map(({ slot }) => slot));
};

/** True for a well-formed hand-in; used on every file, block and square code. */
export const isHandIn = (value: unknown): value is HandIn => {
  if (!isFields(value) || !hasOnly(value, KEYS) || value["form"] !== "hand-in/1") return false;
  const { list, edition, learner, place, spoken, at, sheets } = value;
  if (typeof list !== "string" || !/^[0-9a-f]{16}$/.test(list) || !isText(edition) || !isLearnerCode(learner)) return false;
  if (!isTextOrNull(place) || !isTextOrNull(spoken) || !isMoment(at)) return false;
  return Array.isArray(sheets) && sheets.length >= 1 && sheets.length <= MOST_ATTEMPTS && sheets.every(isSheet) && isOnce(sheets.map(({ attempt }) => attempt));
};

/** The sum of a hand-in: 64 hexadecimal digits that any change of it changes. It shows damage; it proves nothing about who wrote it. */
export const handInSum = (handIn: HandIn): string => sha256Hex(canonicalJson(handIn));
