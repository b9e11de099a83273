import { sha256Hex } from "../random/sha256.ts";
import { canonicalJson, wellFormed } from "./canonical.ts";
import { isEvent, type RecordEvent } from "./event.ts";
import { type Fault, FAULT_WORDS, type RecordLanguage } from "./words.ts";

/**
 * One kept line: an event and the hash of its canonical text. The event names the hash of the line before it. This
 * shows damage by accident. It proves nothing about who answered: whoever can write the file can write the hashes.
 */
export interface Line {
  readonly hash: string;
  readonly event: RecordEvent;
}

/** What was found in a log, by line number from 1. A line that is set aside keeps its text. */
export interface Finding {
  readonly line: number;
  readonly fault: Fault;
  readonly isAside: boolean;
  readonly text: string;
  readonly sentence: string;
}

export interface LogReading {
  readonly lines: readonly Line[];
  readonly findings: readonly Finding[];
  /** Number of the first line that is damaged or has lost the line before it; null where the log is whole. */
  readonly firstDamaged: number | null;
}

const MOST_CHARACTERS = 100_000;
const FORM = /^([0-9a-f]{64}) (\{[\s\S]*\})$/;
const STILL_WHOLE: readonly Fault[] = ["newer"];

/** The line that an event makes. */
export const lineOf = (event: RecordEvent): Line => ({ hash: sha256Hex(canonicalJson(event)), event });

/** An event that no log holds yet. */
export type NewEvent = Omit<RecordEvent, "prev">;

/** The line that follows the line of a hash; an empty hash stands for the beginning of a log. */
export const lineBehind = (hash: string, event: NewEvent): Line => lineOf(wellFormed({ ...event, prev: hash }));

/** The line that follows another; null stands for the beginning of a log. */
export const lineAfter = (before: Line | null, event: NewEvent): Line => lineBehind(before?.hash ?? "", event);

/** The hash in front of the text of a line, also of a damaged one; empty where none can be read. */
export const hashInFront = (text: string): string => /^[0-9a-f]{64}(?= )/.exec(text)?.[0] ?? "";

/** A line as it stands in a file: hash, space, canonical text. */
export const lineText = ({ hash, event }: Line): string => `${hash} ${canonicalJson(event)}`;

type Read = { readonly hash: string; readonly event: RecordEvent } | { readonly hash: string | null; readonly fault: Fault };

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
};

const hashOf = (value: unknown): string | null => {
  try {
    return sha256Hex(canonicalJson(value));
  } catch {
    return null;
  }
};

const readLine = (text: string): Read => {
  const [, hash, body] = text.length > MOST_CHARACTERS ? [] : (FORM.exec(text.trim()) ?? []);
  if (hash === undefined || body === undefined) return { hash: hashInFront(text) || null, fault: "unreadable" };
  const value = parsed(body);
  if (value === undefined) return { hash, fault: "unreadable" };
  if (hashOf(value) !== hash) return { hash, fault: "changed" };
  return isEvent(value) ? { hash, event: value } : { hash, fault: "newer" };
};

/**
 * Reads the lines of a stored or imported log. Damaged lines are set aside with a sentence, never dropped; a line whose
 * forerunner is missing is kept and reported. Empty lines and a line that stands twice count for nothing.
 */
export const readLog = (texts: readonly string[], language: RecordLanguage = "en"): LogReading => {
  const reads = texts.map((text, index) => ({ text, line: index + 1, read: readLine(text) })).filter(({ text }) => text.trim() !== "");
  const known = new Set(reads.map(({ read }) => read.hash));
  const lines = new Map<string, Line>();
  const findings: Finding[] = [];
  const report = (fault: Fault, at: { readonly line: number; readonly text: string }, isAside: boolean): void => {
    findings.push({ line: at.line, fault, isAside, text: at.text, sentence: FAULT_WORDS[language][fault](at.line) });
  };
  for (const { text, line, read } of reads) {
    if ("fault" in read) {
      report(read.fault, { line, text }, true);
      continue;
    }
    const { prev } = read.event;
    if (prev !== "" && !known.has(prev)) report("gap", { line, text }, false);
    if (!lines.has(read.hash)) lines.set(read.hash, { hash: read.hash, event: read.event });
  }
  const firstDamaged = findings.find(({ fault }) => !STILL_WHOLE.includes(fault))?.line ?? null;
  return { lines: [...lines.values()], findings, firstDamaged };
};

/** A whole history as one text, a line for each event, to be kept as a file. */
export const logText = (lines: readonly Line[]): string => lines.map((line) => `${lineText(line)}\n`).join("");

/** Reads a file of `logText`, also after a mail or an editor changed its line ends. */
export const readLogText = (text: string, language: RecordLanguage = "en"): LogReading => readLog(text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/), language);
