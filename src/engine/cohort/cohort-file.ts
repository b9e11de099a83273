import { VERDICTS } from "../question/verdict.ts";
import { canonicalJson, wellFormed } from "../record/canonical.ts";
import type { Mark, Paper } from "./paper.ts";

/** Form of the file; another number behind the stroke is another form. */
export const COHORT_FORM = "small-knee-workbook/cohort/1";

export const MOST_TEXT = 200;
export const MOST_MARKS = 1000;
export const MOST_PAPERS = 5000;
const MOST_SIGNS = 60_000_000;
const GREATEST_COUNT = 1_000_000;
/** Most questions, objectives and slips that papers may name: a page with more rows would never be drawn. */
const MOST_NAMES = 600;
const MOST_SLIPS = 3000;

export interface CohortFile {
  readonly form: typeof COHORT_FORM;
  readonly edition: string;
  /** Moment at which it was made, as whoever made it says. */
  readonly madeAt: string;
  /** Cautions that go with every copy. */
  readonly notes: readonly string[];
  readonly papers: readonly Paper[];
}

type Fields = Readonly<Record<string, unknown>>;
type Check = (value: unknown) => boolean;

const isFields = (value: unknown): value is Fields => typeof value === "object" && value !== null && !Array.isArray(value);
const isText: Check = (value) => typeof value === "string" && value.length <= MOST_TEXT;
const isTextOrNull: Check = (value) => value === null || isText(value);
const isCount: Check = (value) => typeof value === "number" && Number.isInteger(value) && value >= 0 && value <= GREATEST_COUNT;
const isScore: Check = (value) => typeof value === "number" && value >= 0 && value <= 1;
const isFlag: Check = (value) => typeof value === "boolean";
const isListOf = (value: unknown, most: number, holds: Check): boolean => Array.isArray(value) && value.length <= most && value.every(holds);

const holdsAll = (value: unknown, checks: Readonly<Record<string, Check>>): boolean =>
  isFields(value) && Object.keys(value).length === Object.keys(checks).length && Object.entries(checks).every(([key, holds]) => Object.hasOwn(value, key) && holds(value[key]));

const MARK: Readonly<Record<keyof Mark, Check>> = {
  slot: isCount,
  family: isText,
  version: isCount,
  module: isText,
  objective: isText,
  seed: isText,
  verdict: (value) => VERDICTS.some((code) => code === value),
  score: isScore,
  slip: isTextOrNull,
  unsafe: isFlag,
  try: isCount,
};

const PAPER: Readonly<Record<keyof Paper, Check>> = {
  learner: isText,
  place: isTextOrNull,
  list: isText,
  attempt: isCount,
  handedInAt: isText,
  marks: (value) => isListOf(value, MOST_MARKS, (mark) => holdsAll(mark, MARK)),
};

/** True for a well-formed paper; used on everything that comes out of a file. */
export const isPaper = (value: unknown): value is Paper => holdsAll(value, PAPER);

/** The papers of a desk as one text, the same for the same papers. */
export const cohortText = (file: Omit<CohortFile, "form">): string => `${canonicalJson(wellFormed({ form: COHORT_FORM, ...file }))}\n`;

export type CohortReading =
  | { readonly fault: null; readonly papers: readonly Paper[]; /** Places of papers that could not be read, from 1. */ readonly aside: readonly number[]; readonly edition: string }
  | { readonly fault: "too-long" | "no-json" | "other-file" | "other-form" | "too-many" | "too-many-names" };

const hasMore = (names: Iterable<string>, most: number): boolean => new Set(names).size > most;

/** True where papers name more than any course has: each part is small, and all of them together would stop the page. */
const isOvergrown = (papers: readonly Paper[]): boolean => {
  const marks = papers.flatMap((paper) => paper.marks);
  if (hasMore(marks.map(({ objective }) => objective), MOST_NAMES) || hasMore(papers.map(({ list }) => list), MOST_NAMES)) return true;
  return hasMore(marks.map(({ family, version }) => `${family} ${version}`), MOST_NAMES) || hasMore(marks.map(({ family, slip }) => `${family} ${slip}`), MOST_SLIPS);
};

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
};

/** Reads a file that a desk saved. Papers that cannot be read are counted and set aside, the others stand. Never throws. */
export const readCohort = (text: string): CohortReading => {
  if (text.length > MOST_SIGNS) return { fault: "too-long" };
  const value = parsed(text.replace(/^\ufeff/, ""));
  if (value === undefined) return { fault: "no-json" };
  if (!isFields(value) || typeof value["form"] !== "string" || !Array.isArray(value["papers"])) return { fault: "other-file" };
  if (value["form"] !== COHORT_FORM) return { fault: value["form"].startsWith(COHORT_FORM.slice(0, -1)) ? "other-form" : "other-file" };
  const { papers, edition } = value as { readonly papers: readonly unknown[]; readonly edition?: unknown };
  if (papers.length > MOST_PAPERS) return { fault: "too-many" };
  const whole = papers.filter(isPaper);
  if (isOvergrown(whole)) return { fault: "too-many-names" };
  const aside = papers.flatMap((paper, index) => (isPaper(paper) ? [] : [index + 1]));
  return { fault: null, papers: whole, aside, edition: typeof edition === "string" && isText(edition) ? edition : "" };
};
