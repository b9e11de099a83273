import { isResponse, type Response } from "../question/response.ts";
import { VERDICTS, type VerdictCode } from "../question/verdict.ts";
import type { Span } from "../quantity/round.ts";

/**
 * What an event tells of. `answered` carries the learner's own response; all others carry what was shown or said. A page
 * that was read names its objective or module in `givens` (`objective`, `module`) and has no family; `carried` holds the
 * typed code in `givens.code`.
 */
export const EVENT_KINDS = ["answered", "read", "hinted", "left", "discussed", "carried"] as const;
export type EventKind = (typeof EVENT_KINDS)[number];

/**
 * One line of a learner's record. Numbers stay text, so that a record never holds a double and its
 * digits survive every copy. Lines are only ever added.
 */
export interface RecordEvent {
  readonly id: string;
  /** Moment in UTC, ISO 8601, and the minutes that the learner's clock stood ahead of it. */
  readonly at: string;
  readonly offsetMin: string;
  readonly kind: EventKind;
  readonly sheet?: string;
  readonly family: string;
  readonly version: string;
  readonly seed: string;
  /** Revision of the local list that the question read. */
  readonly local?: string;
  readonly language: string;
  /** The givens as displayed, by key. */
  readonly givens: Readonly<Record<string, string>>;
  /** What was asked: unit, step and rounding, by ask. */
  readonly asks: Readonly<Record<string, string>>;
  readonly accepted: Readonly<Record<string, Span>>;
  readonly response: Response;
  readonly verdict: VerdictCode;
  readonly slip?: string;
  /** Which try at this very question, from 1. */
  readonly try: string;
  readonly hint: boolean;
  /** Hash of the line before; empty in the first. */
  readonly prev: string;
}

type Fields = Readonly<Record<string, unknown>>;

const MOST_TEXT = 200;
const MOST_ENTRIES = 40;
const NEEDED = ["id", "at", "offsetMin", "kind", "family", "version", "seed", "language", "givens", "asks", "accepted", "response", "verdict", "try", "hint", "prev"];
const ALLOWED = new Set([...NEEDED, "sheet", "local", "slip"]);
const MOMENT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,3})?Z$/;
const WHOLE = /^-?\d{1,6}$/;
const SEED = /^(\d{1,10}|[0-9a-f]{32})$/;

const isFields = (value: unknown): value is Fields => typeof value === "object" && value !== null && !Array.isArray(value);
const isText = (value: unknown): value is string => typeof value === "string" && value.length <= MOST_TEXT;
const isOptionalText = (value: unknown): boolean => value === undefined || isText(value);
const isSpan = (value: unknown): boolean => isFields(value) && Object.keys(value).length === 2 && isText(value["from"]) && isText(value["to"]);
const isRecordOf = (value: unknown, holds: (entry: unknown) => boolean): boolean =>
  isFields(value) && Object.keys(value).length <= MOST_ENTRIES && Object.entries(value).every(([key, entry]) => isText(key) && holds(entry));
const matches = (value: unknown, pattern: RegExp): boolean => isText(value) && pattern.test(value);

const CHECKS: Readonly<Record<string, (value: unknown) => boolean>> = {
  id: isText,
  at: (value) => matches(value, MOMENT),
  offsetMin: (value) => matches(value, WHOLE),
  kind: (value) => EVENT_KINDS.some((kind) => kind === value),
  sheet: isOptionalText,
  family: isText,
  version: (value) => matches(value, WHOLE),
  seed: (value) => matches(value, SEED),
  local: isOptionalText,
  language: isText,
  givens: (value) => isRecordOf(value, isText),
  asks: (value) => isRecordOf(value, isText),
  accepted: (value) => isRecordOf(value, isSpan),
  response: isResponse,
  verdict: (value) => VERDICTS.some((code) => code === value),
  slip: isOptionalText,
  try: (value) => matches(value, WHOLE),
  hint: (value) => typeof value === "boolean",
  prev: isText,
};

/** True for a well-formed line of a record; used on everything that comes from storage, a file or a stranger. */
export const isEvent = (value: unknown): value is RecordEvent => {
  if (!isFields(value)) return false;
  if (!Object.keys(value).every((key) => ALLOWED.has(key)) || !NEEDED.every((key) => Object.hasOwn(value, key))) return false;
  return Object.entries(CHECKS).every(([key, holds]) => holds(value[key]));
};
