import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { learnerState } from "../../src/engine/record/learner-state.ts";
import { chainOf, eventsOf, FIRST_DAY } from "../support/events.ts";
import { howMany } from "../support/how-many.ts";

const SEED = 20261125;
const GAPS = [2, 2, 4, 6, 10, 16, 26, 42, 68, 90];
const OBJECTIVES = [{ id: "m10-window", module: "m10", families: ["window"] }];

interface Word {
  readonly day: number;
  readonly letter: string;
}

/** Days on which the history holds an answer that the rule looks at, each with its letters in order. */
const daysOf = (history: readonly Word[]): readonly (readonly [day: number, letters: string])[] =>
  [...new Set(history.map(({ day }) => day))].map((day) => [day, history.filter((word) => word.day === day && "+-x!".includes(word.letter)).map(({ letter }) => letter).join("")]);

/** What a day of a stopped objective leaves: the letters after the two clean draws that settle it, or null where it is not settled. */
const settledRest = (letters: string): string | null => {
  const from = letters.lastIndexOf("!") + 1;
  const second = letters.indexOf("+", letters.indexOf("+", from) + 1);
  return from > 0 || !letters.includes("+") || second <= letters.indexOf("+") ? null : letters.slice(second + 1);
};

/** The rule of return said once more, a whole day at a time: what the letters of one day do to place and date. */
const returnByDays = (history: readonly Word[]): number | null => {
  let place: number | null = null;
  let due: number | null = null;
  let isStopped = false;
  let rights = 0;
  const land = (day: number, where: number) => {
    place = Math.max(0, Math.min(where, GAPS.length - 1));
    due = day + (GAPS[place] ?? 0);
  };
  for (const [day, letters] of daysOf(history)) {
    if (letters === "") continue;
    const rightsBefore = rights;
    rights += [...letters].filter((letter) => letter === "+").length;
    if (isStopped) {
      const rest = settledRest(letters.includes("!") ? letters.slice(0, letters.indexOf("!")) : letters);
      if (rest !== null) land(day, (place ?? 0) - 1);
      else due = day + 1;
      isStopped = rest === null;
    } else if (place === null) {
      const calm = letters.split("!")[0] ?? "";
      if (rightsBefore + [...calm].filter((letter) => letter === "+").length >= 2) land(day, 0);
    } else if (letters.startsWith("+")) {
      if (day >= (due ?? 0)) land(day, place + 1);
    } else if (!letters.startsWith("!")) {
      land(day, place - 1);
    }
    if (letters.includes("!")) {
      isStopped = true;
      due = day + 1;
    }
  }
  return due;
};

describe("the date of return against a second reading of the rule", () => {
  it("has a second reading that knows the worked examples", () => {
    const words = (text: string): Word[] => text.split(" ").map((word) => ({ day: Number(word.slice(0, -1)), letter: word.slice(-1) }));
    for (const [text, day] of [["0+ 0+", 2], ["0+ 0+ 2+ 4+ 8-", 10], ["0! 1+ 1+", 3], ["0+ 0+ 2+ 4+ 8+ 14! 15+ 15+", 19], ["0+ 0+ 2+ 4+ 5+", 8], ["0!", 1]] as const) expect(returnByDays(words(text))).toBe(day);
  });

  it(`agrees on 1,000 random histories (seed ${SEED})`, () => {
    const words = fc.array(fc.record({ gap: fc.constantFrom(0, 0, 0, 1, 2, 2, 4, 6, 10), letter: fc.constantFrom("+", "+", "+", "+", "+", "h", "o", "-", "x", "!", "?", "r") }), { minLength: 1, maxLength: 20 });
    let dated = 0;
    fc.assert(fc.property(words, (list) => {
      let day = 0;
      const history = list.map(({ gap, letter }) => {
        day += gap;
        return { day, letter };
      });
      const text = history.map((word) => `${word.day}${word.letter}`).join(" ");
      const returns = learnerState(chainOf(eventsOf(text)), { objectives: OBJECTIVES, todayDay: FIRST_DAY + day }).objectives[0]?.returns ?? null;
      dated += returns === null ? 0 : 1;
      expect([text, returns === null ? null : returns.day - FIRST_DAY]).toEqual([text, returnByDays(history)]);
    }), { seed: SEED, numRuns: howMany(1000, 100) });
    expect(dated).toBeGreaterThan(howMany(500, 50));
  });
});
