import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { knowledgeAfter } from "../../src/engine/index.ts";
import { learnerState } from "../../src/engine/record/learner-state.ts";
import { FORGET_PER_DAY, KNOWN_AT_START, LEARN, SLIP } from "../../src/engine/standing/estimate.ts";
import { chainOf, eventsOf, FIRST_DAY } from "../support/events.ts";
import { howMany } from "../support/how-many.ts";

const SEED = 20261125;
const SETTINGS = { seed: SEED, numRuns: howMany(1000, 100) } as const;
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
const model = fc.record({ known: share, learn: share, slip: share, guess: share, forget: share }).filter(({ slip, guess }) => slip + guess < 0.999);

type Pair = readonly [not: number, known: number];
type Matrix = readonly [Pair, Pair];
const times = ([not, known]: Pair, [fromNot, fromKnown]: Matrix): Pair => [not * fromNot[0] + known * fromKnown[0], not * fromNot[1] + known * fromKnown[1]];

describe("the estimate against a forward pass of a hidden chain of two states", () => {
  // Rabiner 1989, A tutorial on hidden Markov models, Proc IEEE 77:257-286, 10.1109/5.18626, equations 18 to 20: joint
  // weights carried along as a row times a matrix, nothing normalised until the end. Written apart from the engine.
  it(`agrees on 1,000 random histories and models (seed ${SEED})`, () => {
    fc.assert(fc.property(model, fc.array(fc.boolean(), { minLength: 1, maxLength: 30 }), (given, answers) => {
      const seenWhen = (isRight: boolean): Matrix => (isRight ? [[given.guess, 0], [0, 1 - given.slip]] : [[1 - given.guess, 0], [0, given.slip]]);
      const step: Matrix = [[1 - given.learn, given.learn], [given.forget, 1 - given.forget]];
      let weights: Pair = [1 - given.known, given.known];
      const steps = knowledgeAfter(given, answers);
      for (const [index, isRight] of answers.entries()) {
        const seen = times(weights, seenWhen(isRight));
        weights = times(seen, step);
        expect(steps[index]?.posterior).toBeCloseTo(seen[1] / (seen[0] + seen[1]), 9);
        expect(steps[index]?.next).toBeCloseTo(weights[1] / (weights[0] + weights[1]), 9);
      }
    }), SETTINGS);
  });

  it(`agrees on 1,000 random logs, with a step of forgetting for every day away (seed ${SEED})`, () => {
    const words = fc.array(fc.tuple(fc.integer({ min: 0, max: 5 }), fc.constantFrom("+", "-", "h", "!", "x")), { minLength: 1, maxLength: 15 });
    fc.assert(fc.property(words, fc.integer({ min: 0, max: 9 }), fc.constantFrom(0.001, 0.02, 0.125, 0.25, 0.6), (list, later, guess) => {
      const bounded = Math.max(0.02, Math.min(0.3, guess));
      const away: Matrix = [[1, 0], [FORGET_PER_DAY, 1 - FORGET_PER_DAY]];
      let weights: Pair = [1 - KNOWN_AT_START, KNOWN_AT_START];
      let day = 0;
      const text: string[] = [];
      for (const [index, [gap, letter]] of list.entries()) {
        for (let night = 0; night < gap && index > 0; night += 1) weights = times(weights, away);
        day += index > 0 ? gap : 0;
        text.push(`${day}${letter}`);
        weights = times(weights, letter === "+" ? [[bounded, 0], [0, 1 - SLIP]] : [[1 - bounded, 0], [0, SLIP]]);
        weights = times(weights, [[1 - LEARN, LEARN], [0, 1]]);
      }
      for (let night = 0; night < later; night += 1) weights = times(weights, away);
      const objectives = [{ id: "m10-window", module: "m10", families: ["window"] }];
      const state = learnerState(chainOf(eventsOf(text.join(" "))), { objectives, todayDay: FIRST_DAY + day + later, guessOf: () => guess });
      expect(state.objectives[0]?.known).toBeCloseTo(weights[1] / (weights[0] + weights[1]), 9);
      expect(state.objectives[0]?.firstTries).toEqual(list.map(([, letter]) => letter === "+"));
    }), SETTINGS);
  });
});

/** The level rule said once more, by looking at the whole history at once; nothing is carried from step to step. */
const levelByLooking = (history: readonly { readonly day: number; readonly letter: string }[]): string => {
  const isRight = (index: number) => history[index]?.letter === "+";
  const dayOf = (index: number) => history[index]?.day ?? 0;
  const all = history.map((_, index) => index);
  const breaks = (index: number) => "-x!".includes(history[index]?.letter ?? "");
  const unsafe = all.filter((index) => history[index]?.letter === "!").at(-1);
  const cleanDays = all.filter((index) => unsafe !== undefined && index > unsafe && isRight(index) && dayOf(index) > dayOf(unsafe)).map(dayOf);
  if (unsafe !== undefined && !cleanDays.some((day, index) => cleanDays.indexOf(day) !== index)) return "stop";
  const since = (all.filter(breaks).at(-1) ?? -1) + 1;
  const run = all.filter((index) => index >= since && isRight(index));
  const isSteady = run.some((first) => run.some((last) => dayOf(last) - dayOf(first) >= 2 && run.filter((index) => index >= first && index <= last).length >= 3));
  if (isSteady) return "steady";
  if (all.filter(isRight).length >= 2) return "worked";
  if (history.some(({ letter }) => letter === "+" || letter === "h")) return "helped";
  return history.some(({ letter }) => letter !== "?") ? "read" : "unseen";
};

describe("the level against a second reading of the rule", () => {
  it(`agrees on 1,000 random histories (seed ${SEED})`, () => {
    const words = fc.array(fc.record({ gap: fc.constantFrom(0, 0, 0, 1, 2, 3), letter: fc.constantFrom("+", "+", "+", "+", "h", "o", "-", "x", "!", "?", "r") }), { maxLength: 14 });
    const met = new Set<string>();
    fc.assert(fc.property(words, (list) => {
      let day = 0;
      const history = list.map(({ gap, letter }) => {
        day += gap;
        return { day, letter };
      });
      const text = history.map((word) => `${word.day}${word.letter}`).join(" ");
      const objectives = [{ id: "m10-window", module: "m10", families: ["window"] }];
      const level = learnerState(chainOf(eventsOf(text)), { objectives, todayDay: FIRST_DAY + day }).objectives[0]?.level ?? "";
      met.add(level);
      expect([text, level === "due" ? "steady" : level]).toEqual([text, levelByLooking(history)]);
    }), SETTINGS);
    expect([...met].sort()).toEqual(["due", "helped", "read", "steady", "stop", "unseen", "worked"]);
  });
});
