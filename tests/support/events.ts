import type { RecordEvent } from "../../src/engine/record/event.ts";
import { type Line, lineAfter } from "../../src/engine/record/chain.ts";

export type BareEvent = Omit<RecordEvent, "prev">;

/** An answer that can be told apart by its number; everything else as a question of one family would leave it. */
export const bareEvent = (number: number, over: Partial<BareEvent> = {}): BareEvent => ({
  id: `e${number}`, at: "2027-02-03T10:15:00Z", offsetMin: "60", kind: "answered", family: "window", version: "1", seed: String(number), language: "en",
  givens: { entryToJunctionMm: "4.0" }, asks: { leastMm: "mm up 0.1" }, accepted: { leastMm: { from: "12", to: "12" } },
  response: { kind: "sum", text: "12" }, verdict: "right", try: "1", hint: false, ...over,
});

/** A log of one device: every event follows the one before it. */
export const chainOf = (events: readonly BareEvent[], start: Line | null = null): readonly Line[] => {
  const lines: Line[] = [];
  for (const event of events) lines.push(lineAfter(lines.at(-1) ?? start, event));
  return lines;
};

/** 1 February 2027, the day that histories count from. */
export const FIRST_DAY = Date.UTC(2027, 1, 1) / 86_400_000;

const LETTERS: Readonly<Record<string, Partial<BareEvent>>> = {
  "+": { verdict: "right" },
  h: { verdict: "right", hint: true },
  "2": { verdict: "right", try: "2" },
  "-": { verdict: "safe-side" },
  x: { verdict: "unit-or-power" },
  o: { verdict: "rounding" },
  "!": { verdict: "unsafe-side" },
  "?": { verdict: "not-recognised" },
  r: { kind: "read", verdict: "not-recognised" },
  l: { kind: "left", verdict: "not-recognised" },
  i: { kind: "hinted", verdict: "not-recognised" },
  d: { kind: "discussed", verdict: "not-recognised" },
};

/**
 * Events from words such as "3+": day, then + right, h right with a hint, 2 right at the second try, - off, x a power of
 * ten, o rounding, ! unsafe, ? not an answer, r read, l left, i a hint shown, d discussed. Each word is a new draw unless
 * "=n" names one: "3+=7". The number of a word is the id of its event: e0, e1 and so on.
 */
export const eventsOf = (text: string, family = "window"): readonly BareEvent[] =>
  text.split(" ").filter((word) => word !== "").map((word, index) => {
    const [, day = "", letter = "", draw = String(1000 + index)] = /^(-?\d+)(\D|[2](?==|$))(?:=(\d+))?$/.exec(word) ?? [];
    const over = LETTERS[letter];
    if (!over) throw new RangeError(`word must be a day and a known letter, got ${word}`);
    const minutes = String(index % 60).padStart(2, "0");
    const at = new Date((FIRST_DAY + Number(day)) * 86_400_000).toISOString().replace("T00:00:00.000Z", `T09:${minutes}:00Z`);
    return bareEvent(index, { family, at, offsetMin: "0", seed: draw, ...over });
  });
