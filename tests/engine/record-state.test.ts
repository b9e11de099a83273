import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineText, readLog } from "../../src/engine/record/chain.ts";
import { learnerState } from "../../src/engine/record/learner-state.ts";
import { mergeLogs } from "../../src/engine/record/merge.ts";
import type { CarrySummary } from "../../src/engine/record/attempts.ts";
import { bareEvent, chainOf, eventsOf, FIRST_DAY } from "../support/events.ts";
import { howMany } from "../support/how-many.ts";

const SEED = 20261125;
const SETTINGS = { seed: SEED, numRuns: howMany(200, 40) } as const;
const OBJECTIVES = [
  { id: "m10-window", module: "m10", families: ["window"] },
  { id: "m10-stop", module: "m10", families: ["stop", "window"], capDays: 7 },
  { id: "m12-dose", module: "m12", families: ["dose"] },
];
const options = { objectives: OBJECTIVES, todayDay: FIRST_DAY + 12 };
const word = fc.tuple(fc.integer({ min: 0, max: 12 }), fc.constantFrom("+", "+", "+", "h", "o", "-", "x", "!", "?", "r", "l", "i", "d"), fc.constantFrom("", "", "=1", "=2"));
const history = fc.array(fc.tuple(word, fc.constantFrom("window", "stop", "dose", "gone")), { maxLength: 25 }).map((list) =>
  list.map(([[day, letter, draw], family], index) => ({ ...eventsOf(`${day}${letter}${draw}`, family)[0], ...{ id: `w${index}` } }) as ReturnType<typeof bareEvent>));

describe("the state that a log folds into", () => {
  it(`is the same when the log is written, read and replayed (seed ${SEED})`, () => {
    fc.assert(fc.property(history, (events) => {
      const lines = chainOf(events);
      const state = learnerState(lines, options);
      expect(learnerState(readLog(lines.map(lineText)).lines, options)).toEqual(state);
      expect(JSON.parse(JSON.stringify(state))).toEqual(state);
    }), SETTINGS);
  });

  it(`does not depend on the order or the number of the lines handed in (seed ${SEED})`, () => {
    fc.assert(fc.property(history, (events) => {
      const lines = chainOf(events);
      const state = learnerState(lines, options);
      expect(learnerState([...lines].reverse(), options)).toEqual(state);
      expect(learnerState(mergeLogs(lines, lines.slice(3), lines), options)).toEqual(state);
    }), SETTINGS);
  });

  it(`of one objective does not hear of another's answers on the same days (seed ${SEED})`, () => {
    fc.assert(fc.property(history, (events) => {
      const [, , dose] = learnerState(chainOf(events), options).objectives;
      const others = learnerState(chainOf(events.map((event) => (event.family === "dose" ? event : { ...event, family: "gone" }))), options);
      expect(others.objectives[2]).toEqual(dose);
    }), SETTINGS);
  });

  it(`stops, and comes back every day, together: level and date speak of the same unsafe answer (seed ${SEED})`, () => {
    fc.assert(fc.property(history, (events) => {
      for (const { level, returns, isBack, madeBy } of learnerState(chainOf(events), options).objectives) {
        if (level === "stop") expect([returns?.reason, madeBy.length]).toEqual(["unsafe", 1]);
        if (level === "due") expect(isBack).toBe(true);
        if (level === "worked" || level === "steady") expect(returns).not.toBeNull();
        if (level === "unseen" || level === "read" || level === "helped") expect(returns).toBeNull();
      }
    }), SETTINGS);
  });

  it("counts an event once, and names what this course does not have", () => {
    // One id with two contents, as a copy would have that was changed and hashed anew.
    const twice = mergeLogs(chainOf(eventsOf("0+=1")), chainOf(eventsOf("0+=2")));
    expect([twice.length, learnerState(twice, options).objectives[0]?.level]).toEqual([2, "helped"]);
    const gone = chainOf(eventsOf("0+ 1-", "gone"));
    expect(learnerState(gone, options).unplaced).toEqual(["e0", "e1"]);
    expect(learnerState(gone, options).objectives.map(({ level }) => level)).toEqual(["unseen", "unseen", "unseen"]);
  });
});

describe("a carried summary", () => {
  const carried = (at = "2027-02-06T09:00:00Z") => bareEvent(50, { kind: "carried", family: "", at, offsetMin: "0", givens: { code: "THE-CODE" }, response: { kind: "sum", text: "" }, verdict: "not-recognised" });
  const stateOf = (events: readonly ReturnType<typeof bareEvent>[], summary: CarrySummary | null, day = 6) =>
    learnerState(chainOf(events), { ...options, todayDay: FIRST_DAY + day, readCarry: (code) => (code === "THE-CODE" ? summary : null) });
  const steady: CarrySummary = { modules: { m10: { level: "steady", returnDay: FIRST_DAY + 9 } }, safety: {} };

  it("raises what stands lower, and brings the date where there is none", () => {
    const [window, stop, dose] = stateOf([carried()], steady).objectives;
    expect([window?.level, stop?.level, dose?.level]).toEqual(["steady", "steady", "unseen"]);
    expect(window?.returns).toEqual({ day: FIRST_DAY + 9, reason: "carried" });
    expect(window?.madeBy).toEqual(["e50"]);
    expect(stateOf([carried()], steady, 9).objectives[0]?.level).toBe("due");
  });

  it("brings its date right after the clock was set back", () => {
    const [window] = stateOf([...eventsOf("20r"), carried()], steady).objectives;
    expect(window?.returns).toEqual({ day: FIRST_DAY + 9, reason: "carried" });
  });

  it("lowers nothing, and leaves a date that is there", () => {
    const before = eventsOf("0+ 0+ 2+ 4+");
    const low: CarrySummary = { modules: { m10: { level: "read", returnDay: FIRST_DAY + 5 } }, safety: {} };
    expect(stateOf([...before, carried()], low).objectives[0]).toEqual(stateOf(before, null).objectives[0]);
  });

  it("always carries a stop over, for the objective that it names", () => {
    const stopped: CarrySummary = { modules: steady.modules, safety: { "m10-window": "stop" } };
    const [window, stop] = stateOf([...eventsOf("0+ 0+ 2+"), carried()], stopped).objectives;
    expect([window?.level, window?.returns?.reason, stop?.level]).toEqual(["stop", "unsafe", "due"]);
  });

  it("is followed by the learner's own answers as if they went on", () => {
    const text = eventsOf("9+ 9- 10-").map((event, index) => ({ ...event, id: `late${index}` }));
    const [window] = stateOf([carried(), ...text.slice(0, 1)], steady, 9).objectives;
    expect([window?.level, window?.returns]).toEqual(["steady", { day: FIRST_DAY + 11, reason: "right" }]);
    expect(stateOf([carried(), ...text], steady, 10).objectives[0]?.level).toBe("worked");
  });

  it("that cannot be read counts for nothing and is named", () => {
    const state = stateOf([carried()], null);
    expect([state.unplaced, state.objectives[0]?.level]).toEqual([["e50"], "unseen"]);
  });
});
