import { describe, expect, it } from "vitest";
import { learnerState } from "../../src/engine/record/learner-state.ts";
import { pathStudy, pathVersion, type StudyPart } from "../../src/engine/record/study-path.ts";
import { chainOf, eventsOf, FIRST_DAY } from "../support/events.ts";

const OBJECTIVES = [
  { id: "m01-one", module: "M01", families: ["a", "b"] },
  { id: "m01-two", module: "M01", families: ["c"] },
  { id: "m02-one", module: "M02", families: ["d"] },
  { id: "m03-one", module: "M03", families: ["e"] },
];
const PARTS: readonly StudyPart[] = [{ module: "M01", families: ["a", "b"] }, { module: "M02" }];

/** How far the path stands after these answers, question by question; days are those of `eventsOf`. */
const studied = (pasts: Readonly<Record<string, string>>, parts = PARTS) => {
  const events = Object.entries(pasts).flatMap(([family, past]) => eventsOf(past, family).map((event) => ({ ...event, id: `${family}${event.id}` })));
  const lines = chainOf(events.sort((one, other) => one.at.localeCompare(other.at)));
  const course = { objectives: OBJECTIVES };
  return pathStudy(parts, { state: learnerState(lines, { ...course, todayDay: FIRST_DAY + 9 }), lines, course });
};

describe("a path that was worked through", () => {
  it("is none in an empty record, and every named question is missing", () => {
    const { level, parts } = studied({});
    expect([level, ...parts.map(({ isDone, lacking }) => [isDone, lacking])]).toEqual(["open", [false, ["a", "b"]], [false, []]]);
  });

  it("needs the objectives behind its parts and no others: a question that it does not name may stay open", () => {
    expect(studied({ a: "0+", b: "0+", d: "0+ 1+" }).level).toBe("worked");
    expect(studied({ a: "0+", b: "0+", c: "0-", d: "0+ 1+", e: "0!" }).level).toBe("worked");
  });

  it("needs every named question right once, however steady its objective is by another", () => {
    const { level, parts } = studied({ a: "0+ 2+ 4+", d: "0+ 1+" });
    expect([level, parts.map(({ isDone, lacking }) => [isDone, lacking])]).toEqual(["open", [[false, ["b"]], [true, []]]]);
  });

  it.each([["with a hint", "0h"], ["at the second try", "0-=5 0+=5"], ["after a hint at the same draw", "0i=5 0+=5"], ["only in rounding", "0o"], ["not at all", "0-"], ["as what could not be read", "0?"]])("takes an answer %s for none", (_, past) => {
    expect(studied({ a: "0+ 1+", b: past, d: "0+ 1+" }).parts[0]?.lacking).toEqual(["b"]);
  });

  it("keeps a question that was right once when it is missed later, as long as the objective holds", () => {
    expect(studied({ a: "0+ 3-", b: "0+ 4-", d: "0+ 1+" }).level).toBe("worked");
  });

  it("is open while an unsafe answer is open behind a part, also by a question that the path does not name", () => {
    const path = [{ module: "M01", families: ["a"] }, { module: "M02" }];
    const done = { a: "0+ 1+", d: "0+ 1+" };
    expect([studied(done, path).level, studied({ ...done, b: "2!" }, path).level, studied({ ...done, a: "0+ 1+ 2! 3+ 3+" }, path).level]).toEqual(["worked", "open", "worked"]);
  });

  it("is Steady where every objective behind it is, also with its date come", () => {
    expect(studied({ a: "0+ 3+", b: "1+", d: "0+ 0+ 3+" }).level).toBe("steady");
    expect(studied({ a: "0+ 3+", b: "1+", d: "0+ 0+" }).level).toBe("worked");
  });

  it("does not count reading", () => {
    expect(studied({ a: "0r", b: "0r", d: "0+ 1+" }).parts[0]?.lacking).toEqual(["a", "b"]);
  });

  it("of no known objective is open: nothing is worked through where nothing is asked", () => {
    expect(studied({ d: "0+ 1+" }, [{ module: "M09" }, { module: "M02" }]).level).toBe("open");
  });

  it("takes objectives as a carry code brings them, and named questions only as answered", () => {
    const lines = chainOf([...eventsOf("0r", "")].map((event) => ({ ...event, kind: "carried" as const, givens: { code: "X" } })));
    const course = { objectives: OBJECTIVES, readCarry: () => ({ modules: { M01: { level: "worked" as const, returnDay: null }, M02: { level: "worked" as const, returnDay: null } }, safety: {} }) };
    const { parts } = pathStudy(PARTS, { state: learnerState(lines, { ...course, todayDay: FIRST_DAY }), lines, course });
    expect(parts.map(({ isDone, lacking }) => [isDone, lacking])).toEqual([[false, ["a", "b"]], [true, []]]);
  });
});

describe("the version of a path", () => {
  it("is the same in whatever order the parts stand, and another when a question or a module comes or goes", () => {
    const version = pathVersion(PARTS);
    expect(pathVersion([{ module: "M02" }, { module: "M01", families: ["b", "a"] }])).toBe(version);
    const changed: readonly (readonly StudyPart[])[] = [[{ module: "M01", families: ["a"] }, { module: "M02" }], [{ module: "M01" }, { module: "M02" }], PARTS.slice(0, 1), [...PARTS, { module: "M03" }]];
    expect(changed.map(pathVersion)).not.toContain(version);
  });
});
