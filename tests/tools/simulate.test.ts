import { spawnSync } from "node:child_process";
import { resolve } from "node:path";
import { mean, sampleStandardDeviation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { type Chance, chanceFrom } from "../../src/engine/random/chance.ts";
import { splitmix32 } from "../../src/engine/random/xoshiro.ts";
import { learnerState } from "../../src/engine/record/learner-state.ts";
import { type Assumptions, inWords, SETS } from "../../src/tools/simulate/assumptions.ts";
import { COURSE, SHEET_SIZE } from "../../src/tools/simulate/course.ts";
import { keptBy, TEST_DAY } from "../../src/tools/simulate/keep.ts";
import { holdsZero, meanInterval } from "../../src/tools/simulate/mean-interval.ts";
import { ORDERS } from "../../src/tools/simulate/orders.ts";
import { traitsOf } from "../../src/tools/simulate/person.ts";
import { FIRST_DAY, MOST_DAYS, reachSteady } from "../../src/tools/simulate/reach-steady.ts";
import { endText, headText, setText } from "../../src/tools/simulate/report.ts";
import { runSet } from "../../src/tools/simulate/run-set.ts";
import { standingsFrom } from "../../src/tools/simulate/standings.ts";
import { chainOf } from "../support/events.ts";

const LEARNERS = 20;
const SEED = 20261125;
const HOLE = /undefined|NaN|\[object|\$\{|Infinity/;
const MIDDLE = SETS[0] ?? raise();
const PLAIN: Assumptions = { name: "plain", learn: 1, slip: 0, guess: 0, halfLifeDays: Infinity, gain: 0, unsafeOfWrong: 0, spread: 0 };

function raise(): never {
  throw new Error("there must be a set of assumptions");
}

const chanceOf = (seed: number): Chance => chanceFrom(splitmix32(seed));
const people = (set: Assumptions) => Array.from({ length: LEARNERS }, (_, seed) => ({ traits: traitsOf(set, chanceOf(seed)), chance: chanceOf(1000 + seed) }));
const kept = (set: Assumptions) => people(set).map(({ traits, chance }) => keptBy(traits, chance));
const questions = (set: Assumptions): number => mean(people(set).slice(0, 8).map(({ traits, chance }) => reachSteady(ORDERS[0] ?? raise(), traits, chance).questions));

const text = setText(runSet(MIDDLE, { learners: LEARNERS, seed: SEED }));

describe(`a simulation of ${LEARNERS} learners (seed ${SEED})`, () => {
  it("gives the same numbers twice, and others from another seed", () => {
    expect(setText(runSet(MIDDLE, { learners: LEARNERS, seed: SEED }))).toBe(text);
    expect(setText(runSet(MIDDLE, { learners: 2, seed: SEED + 1 }))).not.toBe(setText(runSet(MIDDLE, { learners: 2, seed: SEED })));
  });

  it("leaves no hole in any text", () => {
    const others = SETS.slice(1).map((set) => setText(runSet(set, { learners: 2, seed: SEED })));
    for (const one of [text, ...others, headText(LEARNERS, SEED), endText()]) expect(one).not.toMatch(HOLE);
    for (const { name } of ORDERS) expect(text).toContain(`\n  ${name}`);
  });

  it("states every assumption in words, within the bounds of the workbook's own estimate", () => {
    for (const set of SETS) {
      expect([set.slip <= 0.1, set.guess <= 0.3, set.learn > 0, set.learn < 1]).toEqual([true, true, true, true]);
      const words = inWords(set).join(" ");
      for (const number of [set.learn, set.slip, set.guess, set.unsafeOfWrong]) expect(words).toContain(`${Math.round(number * 100)} in 100`);
      expect(words).toContain(`after ${set.halfLifeDays} days`);
    }
  });

  it("says that there is no difference where the interval of the difference contains 0", () => {
    const plain = runSet(PLAIN, { learners: 3, seed: SEED });
    expect(plain.keeps.map(({ rightShare, moreRight }) => [rightShare.mean, moreRight.mean])).toEqual([[1, 0], [1, 0], [1, 0]]);
    expect(setText(plain)).toContain("equal gaps, as many: 0.0 (0.0 to 0.0) right answers in 100; no difference to be seen");
    expect(text).toMatch(/no return: -\d\d\.\d \(-.*\) right answers in 100; fewer under these assumptions/);
  });
});

describe("the assumptions carry the results", () => {
  it("without forgetting more is right after 60 days, in every way of coming back", () => {
    const [forgetting, never] = [kept(MIDDLE), kept({ ...MIDDLE, halfLifeDays: Infinity })];
    for (const way of ["rule", "equal", "none"] as const) {
      expect(mean(never.map((one) => one[way].rightShare))).toBeGreaterThan(mean(forgetting.map((one) => one[way].rightShare)) + 0.05);
    }
  });

  it("without a return what is left is the half-life law, plus what guessing adds", () => {
    // Learnt for certain on day 0 and never met again: 2^(−60/30) = 1/4 is still known, and a quarter of the rest is guessed.
    for (const { none } of kept({ ...PLAIN, guess: 0.25, halfLifeDays: 30 })) expect(none.rightShare).toBeCloseTo(0.25 + 0.75 * 0.25, 12);
  });

  it("who never errs comes back on days 2, 4, 8, 14, 24 and 40, or every 60/7 days", () => {
    const [one] = kept(PLAIN);
    expect(one?.rule).toEqual({ rightShare: 1, returns: 6, idleDays: TEST_DAY - 40 });
    expect(one?.equal).toEqual({ rightShare: 1, returns: 6, idleDays: TEST_DAY - 51 });
  });

  it("slower learning, more slips and quicker forgetting each cost questions", () => {
    const base = questions(MIDDLE);
    expect(questions({ ...MIDDLE, learn: 0.15 })).toBeGreaterThan(base);
    expect(questions({ ...MIDDLE, slip: 0.2 })).toBeGreaterThan(base);
    expect(questions({ ...MIDDLE, halfLifeDays: 2 })).toBeGreaterThan(base);
  });

  it("in every order who never errs needs at least three answers for each objective, on three days or more", () => {
    for (const order of ORDERS) {
      const reached = reachSteady(order, traitsOf(PLAIN, chanceOf(1)), chanceOf(2));
      expect(reached.isReached).toBe(true);
      expect(reached.questions).toBeGreaterThanOrEqual(3 * COURSE.length);
      expect(reached.days).toBeGreaterThanOrEqual(Math.max(3, Math.ceil((3 * COURSE.length) / SHEET_SIZE)));
      expect(reached.rightShare).toBe(1);
    }
  });

  it("who never learns is not there at the end, and is said not to be", () => {
    const never = runSet({ ...PLAIN, name: "never", learn: 0 }, { learners: 2, seed: SEED });
    expect(never.orders.map(({ notReached }) => notReached)).toEqual(ORDERS.map(() => 2));
    expect(setText(never)).toContain(`Not there after ${MOST_DAYS} days`);
    expect(setText(never).match(/questions not compared/g)).toHaveLength(ORDERS.length - 1);
    expect(text).not.toContain("questions not compared");
  });
});

describe("the standings of the simulation", () => {
  it("are those that the workbook reads from the log, on every day and with real hashes", () => {
    for (const [place, order] of ORDERS.entries()) {
      const { lines, days } = reachSteady(order, traitsOf(MIDDLE, chanceOf(place)), chanceOf(50 + place));
      const chain = chainOf(lines.map(({ event: { prev: _prev, ...event } }) => event));
      const standings = standingsFrom();
      let told = 0;
      for (let day = 0; day <= days; day += 4) {
        const todayDay = FIRST_DAY + day;
        const before = lines.filter(({ event }) => Date.parse(event.at) / 86_400_000 < todayDay + 1).length;
        for (const { event } of lines.slice(told, before)) {
          const objective = COURSE.find(({ families }) => families.includes(event.family))?.id ?? "";
          const kind = event.verdict === "right" ? "right" : ({ "safe-side": "wrong", "unsafe-side": "unsafe" } as const)[event.verdict as "safe-side"];
          standings.add(objective, { id: event.id, day: Math.floor(Date.parse(event.at) / 86_400_000), kind, isFirstTry: true, guess: MIDDLE.guess });
        }
        told = before;
        const { objectives } = learnerState(chain.slice(0, before), { objectives: COURSE, guessOf: () => MIDDLE.guess, todayDay });
        expect(standings.on(todayDay).map((one) => ({ ...one }))).toEqual(objectives);
      }
    }
  });
});

describe("a mean with its interval", () => {
  it("is that of simple-statistics, 1.96 standard errors to either side", () => {
    const values = [3, 7, 7, 19, 24, 31.5];
    const half = (1.96 * sampleStandardDeviation(values)) / Math.sqrt(values.length);
    expect(meanInterval(values).mean).toBeCloseTo(mean(values), 12);
    expect(meanInterval(values).low).toBeCloseTo(mean(values) - half, 12);
    expect(meanInterval(values).high).toBeCloseTo(mean(values) + half, 12);
    expect(() => meanInterval([1])).toThrow(new RangeError("values must hold at least 2 numbers, got 1"));
  });

  it("leaves room for no difference or does not", () => {
    expect([[-1, 2], [0, 2], [-2, 0], [1, 2], [-2, -1]].map(([low = 0, high = 0]) => holdsZero({ mean: 0, low, high }))).toEqual([true, true, true, false, false]);
  });
});

describe("the program", () => {
  it("refuses a number of learners that has no interval", () => {
    const { status, stderr } = spawnSync(process.execPath, [resolve(import.meta.dirname, "../../src/tools/simulate.ts"), "--learners=1"], { encoding: "utf8" });
    expect([status, stderr.trim()]).toEqual([1, "--learners must be a whole number from 2 to 100000, got 1"]);
  });
});
