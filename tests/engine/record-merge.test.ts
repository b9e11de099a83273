import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Line } from "../../src/engine/record/chain.ts";
import { mergeLogs } from "../../src/engine/record/merge.ts";
import { bareEvent, chainOf } from "../support/events.ts";
import { howMany } from "../support/how-many.ts";

const SEED = 20261125;
const SETTINGS = { seed: SEED, numRuns: howMany(200, 40) } as const;

/** Moments of a small span, so that many are equal and many run backwards; one in ten is no moment at all. */
const moment = fc.oneof(
  { weight: 9, arbitrary: fc.integer({ min: 0, max: 9 }).map((hour) => `2027-02-0${1 + (hour % 3)}T0${hour}:00:00Z`) },
  { weight: 1, arbitrary: fc.constant("2027-02-31T10:00:00Z") },
);
/** Three devices that share a beginning and then part; each gives its whole log or a piece of it. */
const devices = fc.record({
  shared: fc.array(moment, { maxLength: 5 }),
  own: fc.tuple(fc.array(moment, { maxLength: 8 }), fc.array(moment, { maxLength: 8 }), fc.array(moment, { maxLength: 8 })),
  kept: fc.infiniteStream(fc.integer({ min: 0, max: 3 })),
}).map(({ shared, own, kept }) => {
  const start = chainOf(shared.map((at, index) => bareEvent(index, { at })));
  return own.map((moments, device) => {
    const mine = chainOf(moments.map((at, index) => bareEvent(100 * (device + 1) + index, { at })), start.at(-1) ?? null);
    return [...start, ...mine].filter(() => kept.next().value !== 0);
  }) as [Line[], Line[], Line[]];
});

describe("merging the logs of several devices", () => {
  it(`gives the same log whichever comes first (seed ${SEED})`, () => {
    fc.assert(fc.property(devices, ([one, two]) => {
      expect(mergeLogs(one, two)).toEqual(mergeLogs(two, one));
    }), SETTINGS);
  });

  it(`gives the same log however they are grouped (seed ${SEED})`, () => {
    fc.assert(fc.property(devices, ([one, two, three]) => {
      const whole = mergeLogs(one, two, three);
      expect(mergeLogs(mergeLogs(one, two), three)).toEqual(whole);
      expect(mergeLogs(one, mergeLogs(two, three))).toEqual(whole);
    }), SETTINGS);
  });

  it(`changes nothing when it is done again (seed ${SEED})`, () => {
    fc.assert(fc.property(devices, ([one, two]) => {
      const merged = mergeLogs(one, two);
      expect(mergeLogs(merged, merged, one)).toEqual(merged);
      expect(mergeLogs(one, [...one].reverse())).toEqual(mergeLogs(one));
    }), SETTINGS);
  });

  it(`loses no line, repeats none, and puts none before the one it follows (seed ${SEED})`, () => {
    fc.assert(fc.property(devices, (logs) => {
      const merged = mergeLogs(...logs);
      const hashes = merged.map(({ hash }) => hash);
      expect([...hashes].sort()).toEqual([...new Set(logs.flat().map(({ hash }) => hash))].sort());
      const early = merged.filter(({ event }, index) => hashes.indexOf(event.prev) > index);
      expect(early).toEqual([]);
    }), SETTINGS);
  });

  it("keeps the order of a device whose clock was set back", () => {
    const lines = chainOf(["2027-02-03T10:00:00Z", "2027-02-01T10:00:00Z", "2027-02-01T11:00:00Z"].map((at, index) => bareEvent(index, { at })));
    expect(mergeLogs([...lines].reverse())).toEqual(lines);
  });

  it("orders two devices by time", () => {
    const phone = chainOf([bareEvent(1, { at: "2027-02-01T10:00:00Z" }), bareEvent(2, { at: "2027-02-03T10:00:00Z" })]);
    const ward = chainOf([bareEvent(3, { at: "2027-02-02T10:00:00Z" })]);
    expect(mergeLogs(ward, phone).map(({ event }) => event.id)).toEqual(["e1", "e3", "e2"]);
  });

  it("bears a long log without nesting calls", () => {
    const lines = chainOf(Array.from({ length: howMany(12_000, 3000) }, (_, index) => bareEvent(index)));
    expect(mergeLogs([...lines].reverse())).toHaveLength(lines.length);
    expect(mergeLogs([...lines].reverse()).at(-1)?.hash).toBe(lines.at(-1)?.hash);
  });
});
