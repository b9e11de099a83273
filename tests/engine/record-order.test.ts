import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceFrom } from "../../src/engine/random/chance.ts";
import { splitmix32 } from "../../src/engine/random/xoshiro.ts";
import { learnerState } from "../../src/engine/record/learner-state.ts";
import { interleaved, leftAfterEntry, practiceSheet } from "../../src/engine/record/order.ts";
import { chainOf, eventsOf, FIRST_DAY } from "../support/events.ts";

const SEED = 20261125;
const PASTS: Readonly<Record<string, string>> = {
  "m01-new": "", "m01-read": "0r", "m02-new": "", "m02-missed": "0- 0- 1-", "m03-early": "19+ 20+", "m03-steady": "17+ 17+ 19+",
  "m04-due": "0+ 0+ 2+", "m05-due-later": "0+ 0+ 2+ 4+ 8+", "m06-stop": "0+ 0+ 3!", "m06-stop-today": "20!", "m07-worked-back": "0+ 0+",
};
const OBJECTIVES = Object.keys(PASTS).map((id) => ({ id, module: id.slice(0, 3), families: [`${id}-a`, `${id}-b`, `${id}-c`] }));
const events = Object.entries(PASTS).flatMap(([id, past]) => eventsOf(past, `${id}-a`).map((event, index) => ({ ...event, id: `${id}${index}` })));
const state = learnerState(chainOf([...events].sort((one, other) => (one.at < other.at ? -1 : Number(one.at > other.at)))), { objectives: OBJECTIVES, todayDay: FIRST_DAY + 20 });
const sheet = (size: number, seed = 1, objectives = state.objectives) =>
  practiceSheet({ objectives, familiesOf: (id) => OBJECTIVES.find((one) => one.id === id)?.families ?? [], size, chance: chanceFrom(splitmix32(seed)) });

describe("mixing the order", () => {
  it(`loses nothing, and puts no two of one group side by side wherever that can be had (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.array(fc.constantFrom("a", "a", "a", "b", "b", "c", "d"), { maxLength: 14 }), (groups) => {
      const things = groups.map((group, index) => ({ group, index }));
      const mixed = interleaved(things, ({ group }) => group);
      expect([...mixed].sort((one, other) => one.index - other.index)).toEqual(things);
      const meetings = mixed.filter(({ group }, place) => group === mixed[place - 1]?.group).length;
      const most = Math.max(0, ...["a", "b", "c", "d"].map((group) => groups.filter((one) => one === group).length));
      // A group of n with m others beside it must meet n − m − 1 times, and needs to meet no more often.
      expect(meetings).toBe(Math.max(0, most - (groups.length - most) - 1));
    }), { seed: SEED, numRuns: 1000 });
  });

  it("leaves an order alone that is mixed already", () => {
    expect(interleaved([..."abcabcab"], (sign) => sign).join("")).toBe("abcabcab");
    expect(interleaved([..."aabb"], (sign) => sign).join("")).toBe("abab");
    expect(interleaved([], (sign: string) => sign)).toEqual([]);
  });
});

describe("a practice sheet", () => {
  it("takes first what an unsafe answer left open, with two draws from two families", () => {
    const two = sheet(2);
    expect(two.map(({ objective, why }) => [objective, why])).toEqual([["m06-stop", "unsafe"], ["m06-stop", "unsafe"]]);
    expect(new Set(two.map(({ family }) => family)).size).toBe(2);
  });

  it("then what has come back, longest over its date first", () => {
    const chosen = new Set(sheet(5).map(({ objective }) => objective));
    expect(chosen).toEqual(new Set(["m06-stop", "m07-worked-back", "m04-due", "m05-due-later"]));
    expect(sheet(4).map(({ objective }) => objective)).toContain("m04-due");
    expect(sheet(3).map(({ objective }) => objective)).toContain("m07-worked-back");
  });

  it("then what was begun, least known first, then what is new in the order of the course", () => {
    const added = [6, 7, 8, 9, 10].map((size) => sheet(size).map(({ objective }) => objective).find((id) => !sheet(size - 1).some(({ objective }) => objective === id)));
    const begun = state.objectives.filter(({ objective }) => ["m01-read", "m02-missed", "m03-early"].includes(objective)).sort((one, other) => one.known - other.known);
    expect(added).toEqual([...begun.map(({ objective }) => objective), "m01-new", "m02-new"]);
    expect(begun.at(-1)?.objective).toBe("m03-early");
  });

  it("asks neither what is steady and not yet back nor what was stopped today", () => {
    const all = sheet(60);
    expect(all.some(({ objective }) => objective === "m03-steady" || objective === "m06-stop-today")).toBe(false);
    expect(new Set(all.map(({ objective }) => objective)).size).toBe(OBJECTIVES.length - 2);
  });

  it("puts a worked example before the first question of an objective never met, and before no other", () => {
    const all = sheet(60);
    const examples = all.filter(({ hasExampleFirst }) => hasExampleFirst).map(({ objective }) => objective);
    expect(examples.sort()).toEqual(["m01-new", "m02-new"]);
    for (const id of examples) expect(all.find(({ objective }) => objective === id)?.hasExampleFirst).toBe(true);
  });

  it("is mixed by module", () => {
    for (const size of [6, 9, 12, 60]) {
      const order = sheet(size);
      expect(order.filter(({ module }, place) => module === order[place - 1]?.module)).toEqual([]);
    }
  });

  it("repeats an objective only with another family, and only where there is room", () => {
    const pairs = sheet(60).map(({ objective, family }) => `${objective} ${family}`);
    expect(new Set(pairs).size).toBe(pairs.length);
    expect(sheet(60).filter(({ objective }) => objective === "m04-due")).toHaveLength(1);
    expect(sheet(60).filter(({ objective }) => objective === "m02-missed")).toHaveLength(2);
    expect(new Set(sheet(10).map(({ objective }) => objective)).size).toBe(9);
  });

  it("is the same for the same seed, and takes other families with another", () => {
    expect(sheet(12, 5)).toEqual(sheet(12, 5));
    expect(new Set([1, 2, 3, 4, 5, 6].map((seed) => sheet(12, seed).map(({ family }) => family).join())).size).toBeGreaterThan(1);
  });

  it("is empty where nothing has come back and nothing is left", () => {
    expect(sheet(10, 1, state.objectives.filter(({ level }) => level === "steady"))).toEqual([]);
  });
});

describe("after the entry sheet", () => {
  const objectives = [{ id: "m01-share", families: ["z-score", "bands"] }, { id: "m01-band", families: ["band-pick"] }, { id: "m10-window", families: ["window"] }];

  it("what was right there is removed, what was missed or not asked stays", () => {
    expect(leftAfterEntry(objectives, { rightFamilies: ["bands"], safety: [] }).map(({ id }) => id)).toEqual(["m01-band", "m10-window"]);
    expect(leftAfterEntry(objectives, { rightFamilies: [], safety: [] })).toEqual(objectives);
  });

  it("an objective with an unsafe side stays, whatever was right", () => {
    expect(leftAfterEntry(objectives, { rightFamilies: ["bands", "window", "band-pick"], safety: ["m10-window"] }).map(({ id }) => id)).toEqual(["m10-window"]);
  });
});
