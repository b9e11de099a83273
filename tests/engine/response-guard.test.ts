import { describe, expect, it } from "vitest";
import { isResponse } from "../../src/engine/question/response.ts";

/** Whatever comes from storage or a stranger is looked at to the last field, and nothing is longer than we keep. */

const LONG = "x".repeat(500);
const record = (entries: number): Record<string, string> => Object.fromEntries(Array.from({ length: entries }, (_, index) => [`k${index}`, "1"]));
const list = (entries: number): string[] => Array.from({ length: entries }, () => "a");
const steps = (entries: number): unknown[] => Array.from({ length: entries }, () => ({ kind: "sum", text: "1" }));
const point = { xMm: "1", yMm: "2" };

const WHOLE: Readonly<Record<string, readonly Record<string, unknown>[]>> = {
  sum: [{ text: "7" }, { text: LONG }, { texts: { a: "1" } }, { texts: {} }, { texts: record(100) }, { says: "none" }, { says: "cannot-be-told" }, { says: "ask-locally" }],
  range: [{ from: "1", to: LONG }],
  mark: [{ points: {} }, { points: { a: point } }],
  line: [{ angleDeg: "1", depthMm: "2" }],
  order: [{ cards: [] }, { cards: list(100) }],
  tray: [{ found: ["a"] }],
  name: [{ picks: { a: "b" } }],
  count: [{ byClass: { a: "1" } }],
  judge: [{ picks: "a", reasons: [] }],
  chain: [{ steps: steps(1) }, { steps: steps(100) }],
};

const DAMAGED: Readonly<Record<string, readonly Record<string, unknown>[]>> = {
  sum: [{}, { text: 7 }, { text: `${LONG}x` }, { texts: { a: 1 } }, { texts: ["a"] }, { texts: null }, { texts: "a" }, { texts: record(101) }, { texts: { [`${LONG}x`]: "1" } }, { says: "never" }, { says: "none", text: "7" }, { text: "7", more: "1" }],
  range: [{ from: "1" }, { from: 1, to: "2" }, { from: "1", to: 2 }, { from: "1", too: "2" }, { from: "1", to: "2", more: "3" }],
  mark: [{}, { points: [] }, { points: { a: { xMm: "1" } } }, { points: { a: { ...point, z: "1" } } }, { points: { a: { xMm: 1, yMm: "2" } } }, { points: { a: { xMm: "1", yMm: 2 } } }, { points: { a: "1" } }, { points: {}, more: "1" }, { more: "1" }],
  line: [{ angleDeg: 1, depthMm: "2" }, { angleDeg: "1", depthMm: 2 }, { angleDeg: "1" }, { angleDeg: "1", depthMm: "2", more: "3" }],
  order: [{ cards: "a" }, { cards: ["a", 1] }, { cards: list(101) }, { cards: [`${LONG}x`] }, { cards: [], more: "1" }, { cards: { length: 0 } }],
  tray: [{ found: "a" }, { found: [1] }, { found: [], more: "1" }],
  name: [{ picks: "a" }, { picks: { a: 1 } }, { picks: {}, more: "1" }],
  count: [{ byClass: "a" }, { byClass: { a: 1 } }, { byClass: {}, more: "1" }],
  judge: [{ picks: 1, reasons: [] }, { picks: "a", reasons: [1] }, { picks: "a", reasons: "b" }, { picks: "a", reasons: [], more: "1" }],
  chain: [{ steps: [] }, { steps: "a" }, { steps: [{ kind: "sum" }] }, { steps: [...steps(1), { kind: "x" }] }, { steps: [{ kind: "chain", steps: steps(1) }] }, { steps: steps(101) }, { steps: steps(1), more: "1" }],
};

describe("the guard of responses", () => {
  it.each(Object.entries(WHOLE))("takes a whole %s", (kind, bodies) => {
    expect(bodies.map((body) => isResponse({ kind, ...body }))).toEqual(bodies.map(() => true));
  });
  it.each(Object.entries(DAMAGED))("refuses a damaged %s", (kind, bodies) => {
    expect(bodies.map((body) => isResponse({ kind, ...body }))).toEqual(bodies.map(() => false));
  });
  it("refuses what is no response at all", () => {
    expect([null, undefined, 7, "sum", [], {}, { kind: "essay", text: "x" }, { kind: "toString", text: "x" }, { text: "7" }].map(isResponse)).toEqual(Array(9).fill(false));
  });
});
