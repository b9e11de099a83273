import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { carryCode, type CarryPlan, readCarryCode } from "../../src/engine/record/carry-code.ts";
import { learnerState } from "../../src/engine/record/learner-state.ts";
import { readSheetNumber, sheetNumberText, type SheetEdition, sheetOf } from "../../src/engine/record/sheet-number.ts";
import { CODE_WORDS } from "../../src/engine/record/words.ts";
import { chainOf, eventsOf, FIRST_DAY } from "../support/events.ts";
import { howMany } from "../support/how-many.ts";

const SEED = 20261125;
const SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

const sheetNumber = fc.record({
  edition: fc.nat(31), plan: fc.nat(31), nonce: fc.nat(1_048_575), picks: fc.array(fc.nat(1023), { minLength: 1, maxLength: 25 }),
}).map((number) => ({ ...number, picks: number.plan === 0 ? number.picks : [] }));

/** Every code that differs in one sign, and every code in which two signs changed places that stand side by side or one apart. */
const oneAway = (code: string): readonly string[] => {
  const bare = code.replaceAll("-", "");
  const places = Array.from({ length: bare.length }, (_, place) => place);
  const changed = places.flatMap((place) => [...SIGNS, "U", "#"].filter((sign) => sign !== bare[place]).map((sign) => `${bare.slice(0, place)}${sign}${bare.slice(place + 1)}`));
  const swapped = [1, 2].flatMap((apart) => places.slice(apart).filter((place) => bare[place] !== bare[place - apart]).map((place) => [...bare].with(place, bare[place - apart] ?? "").with(place - apart, bare[place] ?? "").join("")));
  return [...changed, ...swapped];
};

const MODULES = Array.from({ length: 15 }, (_, index) => `m${String(index + 1).padStart(2, "0")}`);
/** As many modules and objectives with an unsafe side as the course can have. */
const PLAN: CarryPlan = { edition: 3, modules: MODULES, safety: Array.from({ length: 40 }, (_, index) => `${MODULES[index % 15]}-s${index}`) };
const OBJECTIVES = [...PLAN.safety, ...MODULES.map((module) => `${module}-plain`)].map((id) => ({ id, module: id.slice(0, 3), families: [`family-${id}`] }));

const PASTS = ["", "0r", "0h", "0+ 0+", "0+ 0+ 2+", "0+ 0+ 2+ 4+ 8+ 14+ 24+", "0!", "0+ 0+ 2+ 4!", "0+ 0+ 2+ 3-"];
const stateOf = (pasts: readonly number[], todayDay: number) => {
  const events = OBJECTIVES.flatMap(({ id }, index) => eventsOf(PASTS[(pasts[index] ?? 0) % PASTS.length] ?? "", `family-${id}`).map((event, place) => ({ ...event, id: `${id}-${place}` })));
  return learnerState([...chainOf(events.sort((one, other) => (one.at < other.at ? -1 : Number(one.at > other.at))))], { objectives: OBJECTIVES, todayDay });
};
const pasts = fc.array(fc.nat(PASTS.length - 1), { minLength: OBJECTIVES.length, maxLength: OBJECTIVES.length });

describe("a sheet number", () => {
  it(`reads back as what it was made of (seed ${SEED})`, () => {
    fc.assert(fc.property(sheetNumber, (number) => {
      expect(readSheetNumber(sheetNumberText(number))).toEqual(number);
    }), { seed: SEED, numRuns: howMany(1000, 100) });
  });

  it(`with any one wrong sign, or two swapped that stand side by side or one apart, is refused (seed ${SEED})`, () => {
    fc.assert(fc.property(sheetNumber, (number) => {
      const passed = oneAway(sheetNumberText(number)).filter((typed) => !("fault" in readSheetNumber(typed)));
      expect(passed).toEqual([]);
    }), { seed: SEED, numRuns: howMany(60, 10) });
  });

  it("of a planned sheet has eight signs in two groups, and ten more for five families of its own", () => {
    expect(sheetNumberText({ edition: 1, plan: 2, nonce: 12_345, picks: [] })).toMatch(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/);
    expect(sheetNumberText({ edition: 1, plan: 0, nonce: 12_345, picks: [1, 2, 3, 4, 5] }).replaceAll("-", "")).toHaveLength(18);
  });

  it("may be typed small, without hyphens, with spaces, and with the letters that look like digits", () => {
    const number = { edition: 1, plan: 2, nonce: 1, picks: [] };
    const text = sheetNumberText(number);
    expect(text).toContain("0");
    for (const typed of [text.toLowerCase(), text.replace("-", ""), ` ${text.replace("-", " ")} `, text.replaceAll("0", "O").replaceAll("1", "l"), text.replaceAll("1", "I"), text.replace("-", "–")]) {
      expect(readSheetNumber(typed)).toEqual(number);
    }
  });

  it("says in a sentence what is wrong with a code", () => {
    const text = sheetNumberText({ edition: 1, plan: 2, nonce: 1, picks: [] });
    const carry = carryCode(stateOf([], FIRST_DAY), PLAN, FIRST_DAY);
    const rows = [["", "empty"], [" - ", "empty"], ["12#4", "foreign-sign"], ["12", "short"], ["abc", "short"], [text.slice(0, 4), "short"], [text.slice(0, -1), "short"], [`${text.slice(0, -1)}${text.endsWith("0") ? "1" : "0"}`, "check"], [text.repeat(9), "length"], [carry, "other-kind"], ["0".repeat(300), "length"]] as const;
    for (const [typed, fault] of rows) {
      expect([typed, readSheetNumber(typed)]).toEqual([typed, { fault }]);
      expect(CODE_WORDS.en[fault]).toMatch(/^[A-Z].+\.$/);
    }
    for (const typed of ["abc", "7", carry.slice(0, 5)]) expect([typed, readCarryCode(typed, [PLAN])]).toEqual([typed, { fault: "short" }]);
    expect(readCarryCode(text, [PLAN])).toEqual({ fault: "other-kind" });
  });

  it("refuses to be made of what it cannot hold", () => {
    for (const wrong of [{ edition: 32 }, { plan: 32 }, { nonce: 1_048_576 }, { nonce: -1 }, { nonce: 0.5 }, { picks: [1] }, { plan: 0 }, { plan: 0, picks: [1024] }, { plan: 0, picks: Array.from({ length: 26 }, () => 1) }]) {
      expect(() => sheetNumberText({ edition: 1, plan: 2, nonce: 1, picks: [], ...wrong })).toThrow(RangeError);
    }
  });
});

describe("the sheet behind a number", () => {
  const families = Array.from({ length: 60 }, (_, index) => ({ id: `family-${index}`, version: 1 + (index % 3), module: `m${index % 15}` }));
  const poolOf = (module: number) => families.filter((family) => family.module === `m${module}`).map(({ id }) => id);
  const first: SheetEdition = { edition: 1, families, plans: [{ plan: 1, kind: "entry", slots: MODULES.map((_, module) => poolOf(module)) }, { plan: 2, kind: "mixed", slots: [10, 10, 10, 12, 12, 5].map(poolOf) }] };
  const later: SheetEdition = { edition: 2, families: families.slice(5).map((family) => ({ ...family, version: 9 })), plans: [] };
  const sheet = (nonce: number, plan = 1, editions: readonly SheetEdition[] = [first]) => {
    const found = sheetOf({ edition: 1, plan, nonce, picks: [] }, editions);
    if ("fault" in found) throw new RangeError(`sheet must be found, got ${found.fault}`);
    return found;
  };

  it("is the same on every call, and in a later edition that keeps the list", () => {
    for (const nonce of [0, 7, 1_048_575]) expect(sheet(nonce, 1, [later, first])).toEqual(sheet(nonce));
  });

  it("of an entry has one question from each module", () => {
    for (let nonce = 0; nonce < 200; nonce += 1) {
      const { items, kind } = sheet(nonce);
      expect(kind).toBe("entry");
      expect(items.map(({ module }) => module).sort()).toEqual(MODULES.map((_, module) => `m${module}`).sort());
      expect(new Set(items.map(({ seed }) => seed)).size).toBe(15);
    }
  });

  it("differs with the nonce in families, order and seeds, and takes every family of a pool in turn", () => {
    const sheets = Array.from({ length: 300 }, (_, nonce) => sheet(nonce));
    expect(new Set(sheets.map(({ items }) => items.map(({ family }) => family).join())).size).toBe(300);
    expect(new Set(sheets.flatMap(({ items }) => items.map(({ family }) => family))).size).toBe(60);
    expect(new Set(sheets.map(({ items }) => items[0]?.module)).size).toBe(15);
    expect(sheets.flatMap(({ items }) => items).every(({ seed }) => /^[0-9a-f]{32}$/.test(seed))).toBe(true);
  });

  it("of a mixed plan repeats no family and puts no two of one module side by side", () => {
    for (let nonce = 0; nonce < 300; nonce += 1) {
      const { items } = sheet(nonce, 2);
      expect(new Set(items.map(({ family }) => family)).size).toBe(6);
      expect(items.filter((item, index) => item.module === items[index - 1]?.module)).toEqual([]);
    }
  });

  it("of a list of its own keeps the order of the list, with the versions of its edition", () => {
    const found = sheetOf({ edition: 1, plan: 0, nonce: 5, picks: [50, 3, 50] }, [first]);
    expect(found).toMatchObject({ kind: "practice", items: [{ family: "family-50", version: 3 }, { family: "family-3", version: 1 }, { family: "family-50", version: 3 }] });
    if ("items" in found) expect(new Set(found.items.map(({ seed }) => seed)).size).toBe(3);
  });

  it("is named as unknown where the edition, the plan or a family is not there", () => {
    expect(sheetOf({ edition: 9, plan: 1, nonce: 1, picks: [] }, [first])).toEqual({ fault: "unknown-edition" });
    expect(sheetOf({ edition: 1, plan: 9, nonce: 1, picks: [] }, [first])).toEqual({ fault: "content" });
    expect(sheetOf({ edition: 1, plan: 0, nonce: 1, picks: [60] }, [first])).toEqual({ fault: "content" });
  });
});

describe("a carry code", () => {
  const todayDay = FIRST_DAY + 24;

  it(`has at most 60 signs in groups of five for a course of 15 modules and 40 objectives with an unsafe side (seed ${SEED})`, () => {
    fc.assert(fc.property(pasts, (list) => {
      const code = carryCode(stateOf(list, todayDay), PLAN, todayDay);
      expect(code).toMatch(/^([0-9A-Z]{5}-)*[0-9A-Z]{1,5}$/);
      expect(code.replaceAll("-", "").length).toBeLessThanOrEqual(60);
    }), { seed: SEED, numRuns: howMany(30, 5) });
  });

  it(`brings the lowest level and the next day of each module, and the level of each objective with an unsafe side (seed ${SEED})`, () => {
    const ranks = ["stop", "unseen", "read", "helped", "worked", "steady"];
    fc.assert(fc.property(pasts, (list) => {
      const state = stateOf(list, todayDay);
      const reading = readCarryCode(carryCode(state, PLAN, todayDay), [PLAN]);
      if ("fault" in reading) throw new RangeError(`code must be read, got ${reading.fault}`);
      const levelOf = (level: string) => (level === "due" ? "steady" : level);
      for (const { objective, level } of state.objectives.filter((one) => PLAN.safety.includes(one.objective))) expect(reading.summary.safety[objective]).toBe(levelOf(level));
      for (const module of MODULES) {
        const own = state.objectives.filter((one) => one.module === module && (one.level !== "stop" || one.objective.endsWith("plain")));
        const days = own.flatMap(({ returns }) => (returns === null ? [] : [Math.max(todayDay, returns.day)]));
        const least = own.map(({ level }) => levelOf(level)).sort((one, other) => ranks.indexOf(one) - ranks.indexOf(other))[0];
        expect(reading.summary.modules[module]).toEqual({ level: least ?? "unseen", returnDay: days.length === 0 ? null : Math.min(...days) });
      }
      expect([reading.writtenDay, reading.edition]).toEqual([todayDay, 3]);
    }), { seed: SEED, numRuns: howMany(30, 5) });
  });

  it(`with any one wrong sign, or two swapped that stand side by side or one apart, is refused (seed ${SEED})`, () => {
    fc.assert(fc.property(pasts, (list) => {
      const passed = oneAway(carryCode(stateOf(list, todayDay), PLAN, todayDay)).filter((typed) => !("fault" in readCarryCode(typed, [PLAN])));
      expect(passed).toEqual([]);
    }), { seed: SEED, numRuns: 5 });
  });

  it("typed on an empty device gives back what it says, as an event of its own kind", () => {
    const list = OBJECTIVES.map((_, index) => index);
    const before = stateOf(list, todayDay);
    const code = carryCode(before, PLAN, todayDay);
    const readCarry = (typed: string) => {
      const reading = readCarryCode(typed, [PLAN]);
      return "fault" in reading ? null : reading.summary;
    };
    const [event] = eventsOf("24r");
    if (!event) throw new RangeError("an event is needed");
    const carried = learnerState(chainOf([{ ...event, kind: "carried", family: "", givens: { code } }]), { objectives: OBJECTIVES, todayDay, readCarry });
    expect(carried.unplaced).toEqual([]);
    for (const { objective, level } of carried.objectives.filter((one) => PLAN.safety.includes(one.objective))) {
      const was = before.objectives.find((one) => one.objective === objective)?.level ?? "";
      expect(level === "due" ? "steady" : level).toBe(was === "due" ? "steady" : was);
    }
    expect(readCarryCode(carryCode(carried, PLAN, todayDay), [PLAN])).not.toHaveProperty("fault");
  });

  it("of an edition that is not here, and a sheet number in its place, are named", () => {
    const code = carryCode(stateOf([], todayDay), PLAN, todayDay);
    expect(readCarryCode(code, [])).toEqual({ fault: "unknown-edition" });
    expect(readCarryCode(code, [{ ...PLAN, modules: MODULES.slice(1) }])).toEqual({ fault: "content" });
    expect(readCarryCode(sheetNumberText({ edition: 3, plan: 1, nonce: 1, picks: [] }), [PLAN])).toEqual({ fault: "other-kind" });
  });

  it("bounds what it cannot hold: a date far off is carried as 90 days, a clock before 2026 as its first day", () => {
    const state = stateOf([5, 5, 5, 5], FIRST_DAY + 24);
    const far = readCarryCode(carryCode({ ...state, objectives: state.objectives.map((one) => ({ ...one, returns: { day: 99_999, reason: "right" as const } })) }, PLAN, todayDay), [PLAN]);
    expect("summary" in far && far.summary.modules["m01"]?.returnDay).toBe(todayDay + 90);
    const early = readCarryCode(carryCode(state, PLAN, 3), [PLAN]);
    expect("writtenDay" in early && early.writtenDay).toBe(Date.UTC(2026, 0, 1) / 86_400_000);
  });
});
