import { describe, expect, it } from "vitest";
import { learnerState } from "../../src/engine/record/learner-state.ts";
import { chainOf, eventsOf, FIRST_DAY } from "../support/events.ts";

const OBJECTIVES = [{ id: "m10-window", module: "m10", families: ["window"] }, { id: "m12-dose", module: "m12", families: ["dose"] }];
const DAYS_ALONE = -1;

/** Standing of the first objective; without a day, on the day of the last word. */
const standsAfter = (text: string, day = DAYS_ALONE, capDays?: number) => {
  const events = eventsOf(text);
  const last = Number.parseInt(text.split(" ").at(-1) ?? "0", 10) || 0;
  const todayDay = FIRST_DAY + (day === DAYS_ALONE ? last : day);
  const objectives = capDays === undefined ? OBJECTIVES : OBJECTIVES.map((entry) => ({ ...entry, capDays }));
  const [first] = learnerState(chainOf(events), { objectives, todayDay }).objectives;
  if (!first) throw new RangeError("state must hold an objective");
  return first;
};
const levels = (rows: readonly (readonly [string, string, number?])[]) => {
  for (const [text, level, day] of rows) expect([text, standsAfter(text, day).level]).toEqual([text, level]);
};
const returnsTo = (text: string, day?: number, capDays?: number) => {
  const { returns } = standsAfter(text, day, capDays);
  return returns === null ? null : [returns.day - FIRST_DAY, returns.reason];
};

// The rule is our own and public; no table outside exists for it. Each title is one of its sentences.
describe("the rule of levels", () => {
  it("unseen: nothing yet", () => {
    levels([["", "unseen"], ["0?", "unseen"], ["0l", "unseen"], ["0d", "unseen"], ["0i", "unseen"]]);
    expect(standsAfter("0+ 0+").objective).toBe("m10-window");
    expect(learnerState(chainOf(eventsOf("0+ 0+")), { objectives: OBJECTIVES, todayDay: FIRST_DAY }).objectives[1]?.level).toBe("unseen");
  });

  it("read: the page was read or a worked example opened; every answer shows its working", () => {
    levels([["0r", "read"], ["0-", "read"], ["0x", "read"], ["0o", "read"]]);
    const page = chainOf([{ ...eventsOf("0r")[0], family: "", givens: { module: "m12" } }].map((event) => event as ReturnType<typeof eventsOf>[number]));
    expect(learnerState(page, { objectives: OBJECTIVES, todayDay: FIRST_DAY }).objectives.map(({ level }) => level)).toEqual(["unseen", "read"]);
  });

  it("helped: right with a hint or at the second try", () => {
    levels([["0h", "helped"], ["02", "helped"], ["0-=1 0+=1", "helped"], ["0i=1 0+=1", "helped"], ["0h 0h 1h 4h", "helped"], ["0+", "helped"]]);
  });

  it("worked: two different draws right, no hint", () => {
    levels([["0+ 0+", "worked"], ["0+=1 0+=1", "helped"], ["0+ 3h", "helped"], ["0+ 1i=1 1+=1", "helped"], ["0+ 0- 5+", "worked"], ["0+ 1o 2+", "worked"]]);
  });

  it("steady: three different draws right without help", () => {
    levels([["0+ 1+ 2+", "steady"], ["0+ 2+", "worked"], ["0+=1 1+=1 2+ 2+=1", "worked"], ["0+ 1h 2+", "worked"], ["0+ 1h 2+ 2+", "steady"]]);
  });

  it("steady: the first and the last at least two days apart", () => {
    levels([["0+ 0+ 0+", "worked"], ["0+ 0+ 1+", "worked"], ["0+ 0+ 2+", "steady"], ["0+ 2+ 2+", "steady"], ["0+ 0+ 0+ 0+ 1+ 1+ 2+", "steady"]]);
  });

  it("steady: no unsafe answer among the last three", () => {
    levels([["0+ 1+ 2! 3+", "stop"], ["0+ 1+ 2! 3+ 3+", "worked"], ["0+ 1+ 2! 3+ 3+ 4+", "worked"], ["0+ 1+ 2! 3+ 3+ 5+", "steady"]]);
  });

  it("a wrong answer takes steady back to worked", () => {
    levels([["0+ 1+ 2+ 3-", "worked"], ["0+ 1+ 2+ 3x", "worked"], ["0+ 1+ 2+ 3- 4+ 4+ 5+", "worked"], ["0+ 1+ 2+ 3- 4+ 4+ 6+", "steady"]]);
    expect(standsAfter("0+ 1+ 2+ 3-").madeBy).toEqual(["e0", "e1", "e3"]);
  });

  it("nothing else falls", () => {
    levels([["0+ 0+ 1- 1- 1-", "worked"], ["0h 1- 2-", "helped"], ["0r 1-", "read"], ["0+ 0+ 2+ 3o", "steady"], ["0+ 0+ 2+ 3?", "steady"], ["0+ 0+ 2+ 3h", "steady"]]);
  });

  it("rounding neither adds to a run nor breaks it; everything else but right breaks it", () => {
    levels([["0+ 1o 1+ 2+", "steady"], ["0+ 1o 2o", "helped"], ["0+ 1- 1+ 2+", "worked"], ["0+ 1x 1+ 2+", "worked"]]);
  });

  it("due: steady, but the return date has come", () => {
    const steady = "0+ 0+ 2+";
    expect(returnsTo(steady)).toEqual([4, "right"]);
    levels([[steady, "steady", 3], [steady, "due", 4], [steady, "due", 40], [`${steady} 4+`, "steady", 7], [`${steady} 4+`, "due", 8], [`${steady} 4-`, "worked", 90], ["0+ 0+", "worked", 90]]);
    expect(standsAfter("0+ 0+", 90).isBack).toBe(true);
  });

  it("stop-and-ask: an unsafe answer on this objective, at whatever level", () => {
    levels([["0!", "stop"], ["0+ 0+ 2+ 3!", "stop"], ["0! 0+ 0+", "stop"], ["0! 1d", "stop"], ["0!", "stop", 300]]);
    expect(standsAfter("0+ 0+ 2+ 3!").madeBy).toEqual(["e3"]);
  });

  it("until two clean draws on one later day", () => {
    levels([["0! 1+", "stop"], ["0! 1+ 2+", "stop"], ["0! 1+ 1+", "worked"], ["0! 1+=1 1+=1", "stop"], ["0! 1+ 1h", "stop"], ["0! 1+ 1! 1+ 1+", "stop"], ["0! 1! 2+ 2+", "worked"], ["0! 1+ 1- 1+", "worked"]]);
  });

  it("says which events made the level", () => {
    expect(standsAfter("0r 0h 1+ 2+").madeBy).toEqual(["e2", "e3"]);
    expect(standsAfter("0+ 1+ 1o 1+ 2+").madeBy).toEqual(["e0", "e1", "e4"]);
    expect(standsAfter("0r 0h").madeBy).toEqual(["e1"]);
  });
});

describe("what would change the level", () => {
  const ROWS: readonly (readonly [string, number])[] = [["", 0], ["0r", 0], ["0h", 0], ["0+", 0], ["0+ 0+", 0], ["0+ 0-", 0], ["0+ 0+ 1-", 1], ["0+ 0+ 2+", 2], ["0+ 0+ 2+", 9], ["0!", 0], ["0! 1+", 1], ["0+ 0+ 0! 1+", 2]];

  it.each(ROWS)("after %j on day %d is true when it is done", (text, day) => {
    for (const { by, to, count, fromDay } of standsAfter(text, day).wouldChange) {
      const letter = { read: "r", helped: "h", right: "+", wrong: "-", unsafe: "!", day: "" }[by];
      const from = Math.max(day, (fromDay ?? FIRST_DAY) - FIRST_DAY);
      // All but the last are done today where it must be on one day only for a stop; the last on the first day that will do.
      const early = standsAfter(text, day).level === "stop" ? from : day;
      const words = Array.from({ length: by === "day" ? 0 : count }, (_, index) => `${index === count - 1 ? from : early}${letter}`);
      expect([by, standsAfter([text, ...words].join(" ").trim(), from).level]).toEqual([by, to]);
      if (by === "right" && count > 1) expect(standsAfter([text, ...words.slice(1)].join(" ").trim(), from).level).not.toBe(to);
      if (by === "day") expect(standsAfter(text, from - 1).level).not.toBe(to);
    }
  });

  it("names a right answer wherever a level can still rise by one", () => {
    for (const [text, day] of ROWS) {
      const { level, wouldChange } = standsAfter(text, day);
      expect([text, wouldChange.some(({ by }) => by === "right")]).toEqual([text, level !== "steady"]);
    }
  });
});

describe("the rule of return", () => {
  it("an objective gets place 0 the day it first reaches worked", () => {
    expect(returnsTo("0+")).toBeNull();
    expect(returnsTo("0h 1r 2-")).toBeNull();
    expect(returnsTo("0+ 3+")).toEqual([5, "first"]);
    expect(returnsTo("0- 0+ 0+")).toEqual([2, "first"]);
  });

  it("the gaps are 2, 2, 4, 6, 10, 16, 26, 42, 68 and 90 days, each the sum of the two before up to 68", () => {
    let text = "0+ 0+";
    const gaps: number[] = [];
    for (let day = 0; gaps.length < 12; ) {
      const next = Number(returnsTo(text)?.[0]);
      gaps.push(next - day);
      text = `${text} ${next}+`;
      day = next;
    }
    expect(gaps).toEqual([2, 2, 4, 6, 10, 16, 26, 42, 68, 90, 90, 90]);
    for (const index of [2, 3, 4, 5, 6, 7, 8]) expect(gaps[index]).toBe((gaps[index - 1] ?? 0) + (gaps[index - 2] ?? 0));
  });

  it("the first answer of a day counts, later ones of that day do not", () => {
    expect(returnsTo("0+ 0+ 2+ 2- 2-")).toEqual([4, "right"]);
    expect(returnsTo("0+ 0+ 2- 2+ 2+")).toEqual([4, "wrong"]);
    expect(returnsTo("0+ 0+ 0-")).toEqual([2, "first"]);
  });

  it("right on or after the date: one place on", () => {
    expect(returnsTo("0+ 0+ 2+ 4+")).toEqual([8, "right"]);
    expect(returnsTo("0+ 0+ 30+ 33+")).toEqual([37, "right"]);
  });

  it("right before the date: place and date unchanged", () => {
    expect(returnsTo("0+ 0+ 2+ 4+ 5+ 6+")).toEqual([8, "early"]);
    expect(returnsTo("0+ 0+ 2+ 4+ 5+ 8+")).toEqual([14, "right"]);
  });

  it("wrong: one place back, not below 0", () => {
    expect(returnsTo("0+ 0+ 2+ 4+ 8-")).toEqual([10, "wrong"]);
    expect(returnsTo("0+ 0+ 2+ 4+ 8+ 14-")).toEqual([18, "wrong"]);
    expect(returnsTo("0+ 0+ 2- 4- 6-")).toEqual([8, "wrong"]);
    expect(returnsTo("0+ 0+ 2- 4- 6- 8+ 10+")).toEqual([14, "right"]);
  });

  it("unsafe: back the next day and every day, until two clean draws on one later day, then one place back", () => {
    expect(returnsTo("0!")).toEqual([1, "unsafe"]);
    expect(returnsTo("0! 1+ 2+ 3-")).toEqual([4, "unsafe"]);
    expect(returnsTo("0+ 0+ 2+ 4+ 8+ 14! 15+ 15+")).toEqual([19, "unsafe"]);
    expect(returnsTo("0! 1+ 1+")).toEqual([3, "unsafe"]);
    expect(returnsTo("0! 1+ 1+ 3+")).toEqual([5, "right"]);
  });

  it("rounding, help and what is no answer leave the date alone, and do not use up the day", () => {
    expect(returnsTo("0+ 0+ 2o")).toEqual([2, "first"]);
    expect(returnsTo("0+ 0+ 2h 2? 2+")).toEqual([4, "right"]);
  });

  it("a teaching list may cap the gap, and says so", () => {
    expect(returnsTo("0+ 0+ 2+ 4+", 4, 3)).toEqual([7, "capped"]);
    expect(returnsTo("0+ 0+ 2+", 2, 3)).toEqual([4, "right"]);
    expect(returnsTo("0+ 0+ 2+ 4+ 7+ 10-", 10, 3)).toEqual([13, "capped"]);
  });

  it("a day is the learner's calendar day, by the offset in the event", () => {
    const [first, second] = eventsOf("0+ 0+");
    if (!first || !second) throw new RangeError("two events are needed");
    const late = chainOf([first, { ...second, at: "2027-02-01T22:30:00Z", offsetMin: "120" }]);
    const state = learnerState(late, { objectives: OBJECTIVES, todayDay: FIRST_DAY + 1 });
    expect(state.objectives[0]?.returns).toEqual({ day: FIRST_DAY + 3, reason: "first" });
  });

  it("a clock set back gives a gap of 0, never an error, and the days count on from there", () => {
    expect(returnsTo("10+ 10+ 5+", 5)).toEqual([7, "first"]);
    expect(returnsTo("10+ 10+ 5+ 7+", 7)).toEqual([9, "right"]);
    expect(standsAfter("10+ 10+ 5+ 6+ 7+", 7).level).toBe("steady");
    expect(standsAfter("10+ 10+ 5+", 5).level).toBe("worked");
    expect(returnsTo("9000+ 9000+ 5+ 7+ 9+", 9)).toEqual([13, "right"]);
    expect(learnerState(chainOf(eventsOf("10+ 10+ 5+ 6+")), { objectives: OBJECTIVES, todayDay: FIRST_DAY + 6 }).setBackBy).toEqual(["e2"]);
  });

  it("after a clock was set back, days are told by the calendar of today", () => {
    const back = standsAfter("10+ 10+ 5+ 5-", 5);
    expect([back.level, back.wouldChange[0]?.by, (back.wouldChange[0]?.fromDay ?? 0) - FIRST_DAY]).toEqual(["worked", "right", 7]);
    expect(standsAfter("10+ 5!", 5).wouldChange.map(({ fromDay }) => (fromDay ?? 0) - FIRST_DAY)).toEqual([6]);
  });

  it("a journey over a date line is no clock set back, and wins no day", () => {
    expect(standsAfter("10+ 9+ 10+ 9+ 10+ 9+", 10).level).toBe("worked");
    expect(learnerState(chainOf(eventsOf("10+ 9+ 10+")), { objectives: OBJECTIVES, todayDay: FIRST_DAY + 10 }).setBackBy).toEqual([]);
  });
});
