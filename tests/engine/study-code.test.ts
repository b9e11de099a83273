import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CarryPlan } from "../../src/engine/record/carry-code.ts";
import { learnerState } from "../../src/engine/record/learner-state.ts";
import { readStudyCode, studyCode, type StudyFacts, studyFacts } from "../../src/engine/record/study-code.ts";
import { STUDY_LEVELS } from "../../src/engine/record/study-level.ts";
import { CARRY_PLANS } from "../../src/facts/editions.ts";
import { chainOf, eventsOf, FIRST_DAY } from "../support/events.ts";
import { howMany } from "../support/how-many.ts";

const SEED = 20261130;
const MODULES = Array.from({ length: 15 }, (_, index) => `M${String(index + 1).padStart(2, "0")}`);
const PLAN: CarryPlan = { edition: 3, modules: MODULES, safety: [] };
const SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

const NOTHING: StudyFacts = { day: FIRST_DAY, modules: {}, path: null, stops: 0, answers: 12, answerDays: 3 };
const paths = fc.record({ number: fc.integer({ min: 1, max: 31 }), level: fc.constantFrom("worked" as const, "steady" as const), version: fc.nat(1023) });

const facts: fc.Arbitrary<StudyFacts> = fc.record({
  day: fc.integer({ min: 20_454, max: 20_454 + 8191 }),
  modules: fc.array(fc.constantFrom(...STUDY_LEVELS), { minLength: 15, maxLength: 15 }).map((levels) => Object.fromEntries(MODULES.map((module, at) => [module, levels[at] ?? "open"]))),
  path: fc.option(paths), stops: fc.nat(31), answers: fc.nat(8191), answerDays: fc.nat(511),
});

describe("the code of a certificate of study", () => {
  it(`reads back as what the paper says, in four groups of five signs and three more for a path (seed ${SEED})`, () => {
    fc.assert(fc.property(facts, fc.string(), (said, name) => {
      const code = studyCode(said, name, PLAN);
      expect(code).toMatch(said.path === null ? /^([0-9A-Z]{5}-){3}[0-9A-Z]{5}$/ : /^([0-9A-Z]{5}-){4}[0-9A-Z]{3}$/);
      const read = readStudyCode(code.toLowerCase(), [PLAN]);
      if ("fault" in read) throw new Error(read.fault);
      expect([read.facts, read.edition, read.hasName(name)]).toEqual([said, 3, true]);
    }), { seed: SEED, numRuns: howMany(500, 50) });
  });

  it("is refused with any one wrong sign, and as a code of another kind", () => {
    const codes = [NOTHING, { ...NOTHING, path: { number: 2, level: "worked", version: 700 } } as const].map((said) => studyCode(said, "A", PLAN).replaceAll("-", ""));
    const wrong = codes.flatMap((code) => [...code].flatMap((own, at) => [...SIGNS].filter((sign) => sign !== own).map((sign) => code.slice(0, at) + sign + code.slice(at + 1))));
    expect(wrong.filter((typed) => !("fault" in readStudyCode(typed, [PLAN])))).toEqual([]);
    for (const [typed, fault] of [["", "empty"], ["12#", "foreign-sign"], ["0".repeat(300), "length"]] as const) expect(readStudyCode(typed, [PLAN])).toEqual({ fault });
    expect(readStudyCode(codes[0] ?? "", [])).toEqual({ fault: "unknown-edition" });
  });

  // Printed before a certificate could name a path.
  it("from before there were paths reads as it did, and names none", () => {
    const [plan] = CARRY_PLANS;
    if (plan === undefined) throw new Error("there is no edition");
    const levels = (level: (at: number) => StudyFacts["modules"][string]) => Object.fromEntries(plan.modules.map((module, at) => [module, level(at)]));
    const held = [
      ["10HWB-DEJ8P-6H030-ANGWW", { day: 20_788, modules: levels((at) => STUDY_LEVELS[at % 3] ?? "open"), path: null, stops: 2, answers: 143, answerDays: 9 }, "Ida Sorrel"],
      ["1DNV6-0B5XJ-87FZZ-ZZZYK", { day: 28_645, modules: levels(() => "steady"), path: null, stops: 31, answers: 8191, answerDays: 511 }, ""],
    ] as const;
    for (const [code, said, name] of held) {
      const read = readStudyCode(code, CARRY_PLANS);
      if ("fault" in read) throw new Error(read.fault);
      expect([read.facts, read.hasName(name), studyCode(said, name, plan)]).toEqual([said, true, code]);
    }
  });

  it("tells a changed name, and takes capitals and spaces for the same", () => {
    const read = readStudyCode(studyCode(NOTHING, "Ida  Sorrel", PLAN), [PLAN]);
    if ("fault" in read) throw new Error(read.fault);
    expect([read.hasName("ida sorrel "), read.hasName("Ida Sorrell"), read.hasName("")]).toEqual([true, false, false]);
  });

  it("that lacks signs is called too short, however few they are", () => {
    const code = studyCode(NOTHING, "A", { ...PLAN, modules: [] }).replaceAll("-", "");
    for (let signs = 1; signs < code.length; signs += 1) expect([signs, readStudyCode(code.slice(0, signs), [PLAN])]).toEqual([signs, { fault: "short" }]);
  });

  it("never throws for what is typed", () => {
    fc.assert(fc.property(fc.string(), (typed) => { readStudyCode(typed, [PLAN]); }), { seed: SEED, numRuns: howMany(2000, 200) });
  });

  // The rule of levels that the page "Where you stand" prints: three draws right, two days apart, is Steady.
  it("counts a module only where every objective is at least Worked, and none where an unsafe answer is open", () => {
    const objectives = [{ id: "m01-a", module: "M01", families: ["a"] }, { id: "m02-a", module: "M02", families: ["b"] }, { id: "m02-b", module: "M02", families: ["c"] }, { id: "m03-a", module: "M03", families: ["d"] }, { id: "m04-a", module: "M04", families: ["e"] }];
    const pasts = [["a", "0+ 0+ 3+"], ["b", "0+ 1+"], ["c", "0+ 1+"], ["d", "0+ 0+ 3+ 4!"], ["e", "0+ 0?"]] as const;
    const lines = chainOf(pasts.flatMap(([family, past]) => eventsOf(past, family).map((event) => ({ ...event, id: `${family}${event.id}` }))).sort((one, other) => one.at.localeCompare(other.at)));
    const todayDay = FIRST_DAY + 4;
    const said = studyFacts(learnerState(lines, { objectives, todayDay }), lines, { plan: PLAN, todayDay });
    expect([said.modules["M01"], said.modules["M02"], said.modules["M03"], said.modules["M04"], said.modules["M05"]]).toEqual(["steady", "worked", "open", "open", "open"]);
    expect([said.stops, said.answers, said.answerDays]).toEqual([1, 12, 4]);
  });
});
