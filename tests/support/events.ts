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
