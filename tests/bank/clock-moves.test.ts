import { expect, test } from "vitest";
import { answerTo, draw, explain } from "../../src/bank/index.ts";

/** A clock is asked for in two numbers, and moves in minutes: 60 of them are an hour (ISO 8601), 1440 a day. */
const SEEDS = Array.from({ length: 60 }, (_, seed) => seed);

test("a cuff limit that is five minutes longer lets the alarm ring five minutes later, at every hour", () => {
  const moved = SEEDS.flatMap((seed) => {
    const item = draw("minutes-left", seed);
    const limit = explain(item, answerTo(item)).moves.find(({ key }) => key === "limitMin");
    return limit === undefined || Object.keys(limit.changes).length === 0 ? [] : [[limit.by, limit.changes["alarmMinute"], limit.changes["alarmHour"]]];
  });
  expect(moved.length).toBeGreaterThan(30);
  for (const [by, minutes, hour] of moved) {
    expect(Number.parseFloat((minutes ?? "").replace("−", "-"))).toBe(Number.parseFloat((by ?? "").replace("−", "-")));
    expect(hour).toBeUndefined();
  }
});

test("a repeat that is due an hour later moves its clock by sixty minutes, also past midnight", () => {
  const texts = SEEDS.flatMap((seed) => {
    const item = draw("repeat-time", seed);
    return explain(item, answerTo(item)).moves.filter(({ unit }) => unit === "h").flatMap(({ changes }) => Object.values(changes));
  });
  const minutes = new Set(texts.map((text) => Math.abs(Number.parseFloat(text.replace("−", "-")))));
  expect([...minutes].sort((first, second) => first - second)).toEqual([0, 60]);
});
