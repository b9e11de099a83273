import fc from "fast-check";
import { howMany } from "../support/how-many.ts";
import { describe, expect, it } from "vitest";
import cautions from "../../content/cautions.json" with { type: "json" };
import sources from "../../content/sources.json" with { type: "json" };
import { answerTo, draw, families, grade, slipsOf } from "../../src/bank/index.ts";
import { isResponse, KINDS } from "../../src/engine/question/response.ts";
import { isEvent } from "../../src/engine/record/event.ts";
import { LEDGER } from "../../src/facts/ledger.ts";
import { cautionsSchema } from "../../src/schemas/caution.ts";
import { eventSchema } from "../../src/schemas/event.ts";
import { itemSchema } from "../../src/schemas/item.ts";
import { ledgerTopicSchema } from "../../src/schemas/ledger.ts";
import { responseSchema } from "../../src/schemas/response.ts";
import { sourcesSchema } from "../../src/schemas/source.ts";
import { verdictSchema } from "../../src/schemas/verdict.ts";

const SEED = 20261125;
const SEEDS = howMany(50, 5);

const EXAMPLES: Readonly<Record<string, unknown>> = {
  sum: { kind: "sum", text: "7.2" },
  range: { kind: "range", from: "9.5", to: "18.5" },
  mark: { kind: "mark", points: { artery: { xMm: "1", yMm: "2" } } },
  line: { kind: "line", angleDeg: "12", depthMm: "7" },
  order: { kind: "order", cards: ["a", "b"] },
  tray: { kind: "tray", found: ["missing:clamp"] },
  name: { kind: "name", picks: { pattern: "radial" } },
  count: { kind: "count", byClass: { needles: "-1" } },
  judge: { kind: "judge", picks: "reject", reasons: ["line"] },
  chain: { kind: "chain", steps: [{ kind: "sum", says: "none" }, { kind: "order", cards: [] }] },
};

const EVENT = {
  id: "e1", at: "2027-02-03T10:15:00Z", offsetMin: "60", kind: "answered", family: "window", version: "1", seed: "7", language: "en",
  givens: { entryToJunctionMm: "4.0" }, asks: { leastMm: "mm up 0.1" }, accepted: { leastMm: { from: "12", to: "12" } },
  response: { kind: "sum", says: "none" }, verdict: "right", try: "1", hint: false, prev: "",
};

const damaged = (whole: Record<string, unknown>): unknown[] => [
  null, 7, "text", [], { ...whole, more: 1 },
  ...Object.keys(whole).flatMap((key) => [
    Object.fromEntries(Object.entries(whole).filter(([one]) => one !== key)),
    { ...whole, [key]: null }, { ...whole, [key]: 12 }, { ...whole, [key]: "x".repeat(600) }, { ...whole, [key]: { a: { b: 1 } } }, { ...whole, [key]: [1] },
  ]),
];

describe("responses", () => {
  it("have an example of every kind", () => expect(Object.keys(EXAMPLES).sort()).toEqual([...KINDS].sort()));

  it.each(Object.entries(EXAMPLES))("the guard and the schema agree on %s, whole and damaged", (_, whole) => {
    expect(isResponse(whole)).toBe(true);
    expect(responseSchema.safeParse(whole).success).toBe(true);
    const differing = damaged(whole as Record<string, unknown>).filter((value) => isResponse(value) !== responseSchema.safeParse(value).success);
    expect(differing).toEqual([]);
    expect(damaged(whole as Record<string, unknown>).filter(isResponse).length).toBeLessThan(damaged(whole as Record<string, unknown>).length / 2);
  });

  it(`the guard and the schema agree on anything (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.anything({ maxDepth: 3 }), (value) => isResponse(value) === responseSchema.safeParse(value).success), { seed: SEED, numRuns: 500 });
  });
});

describe("events", () => {
  it("take a whole line and refuse a damaged one, guard and schema alike", () => {
    expect(isEvent(EVENT)).toBe(true);
    expect(eventSchema.safeParse(EVENT).success).toBe(true);
    const optional = { ...EVENT, sheet: "7F3K", local: "2", slip: "width-twice" };
    expect([isEvent(optional), eventSchema.safeParse(optional).success]).toEqual([true, true]);
    expect(damaged(EVENT).filter((value) => isEvent(value) !== eventSchema.safeParse(value).success)).toEqual([]);
    expect(isEvent({ ...EVENT, at: "3 February 2027" })).toBe(false);
    expect(isEvent({ ...EVENT, response: { kind: "sum", text: 7 } })).toBe(false);
  });
});

describe("what the engine gives", () => {
  it.each(families.map(({ id }) => id))("%s: items and verdicts keep their schemas and survive JSON", (id) => {
    for (let seed = 0; seed < SEEDS; seed += 1) {
      const item = draw(id, seed);
      expect(itemSchema.safeParse(item).error?.issues ?? []).toEqual([]);
      expect(JSON.parse(JSON.stringify(item))).toEqual(item);
      for (const response of [answerTo(item), ...slipsOf(item).map((slip) => slip.response), { kind: "sum", text: "?" } as const]) {
        const verdict = grade(item, response);
        expect(verdictSchema.safeParse(verdict).error?.issues ?? []).toEqual([]);
        expect(JSON.parse(JSON.stringify(verdict))).toEqual(verdict);
      }
    }
  });
});

describe("content", () => {
  it("keeps the schemas of ledger, sources and cautions", () => {
    for (const topic of LEDGER) expect(ledgerTopicSchema.safeParse(topic).error?.issues ?? []).toEqual([]);
    expect(sourcesSchema.safeParse(sources).error?.issues ?? []).toEqual([]);
    expect(cautionsSchema.safeParse(cautions).error?.issues ?? []).toEqual([]);
    expect(cautions.map(({ id }) => id)).toEqual(Array.from({ length: 16 }, (_, index) => `C${index + 1}`));
  });
});
