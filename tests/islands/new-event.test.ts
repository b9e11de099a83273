import { describe, expect, it } from "vitest";
import { answerTo, draw, explain, grade } from "../../src/bank/index.ts";
import { isEvent } from "../../src/engine/record/event.ts";
import type { Item } from "../../src/engine/question/item.ts";
import { answeredEvent, leftEvent } from "../../src/islands/new-event.ts";

const answered = (item: Item) => {
  const response = answerTo(item);
  return answeredEvent(item, { response, verdict: grade(item, response), explanation: explain(item, response) }, { tries: 1, hasHint: false });
};

describe("the line that an answer leaves", () => {
  it("names the local list that the question read, and none where it read none", () => {
    const tray = draw("pack-check", 7);
    expect(tray.local).toMatch(/./);
    expect([answered(tray).local, leftEvent(tray, "0000").local]).toEqual([tray.local, tray.local]);
    expect("local" in answered(draw("path-width", 7))).toBe(false);
  });

  it("is a whole event, with what was shown as text", () => {
    const item = draw("path-width", 7);
    const event = answered(item);
    expect(isEvent({ ...event, prev: "" })).toBe(true);
    expect(event.givens).toEqual(Object.fromEntries(item.givens.map(({ key, text }) => [key, text])));
  });
});
