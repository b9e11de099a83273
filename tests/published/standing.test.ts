import { describe, expect, it } from "vitest";
import { knowledgeAfter, nextReturn } from "../../src/engine/index.ts";

const answersFrom = (marks: string): boolean[] => [...marks].map((mark) => mark === "1");

describe("knowledge tracing", () => {
  it("follows the row of a course slide", () => {
    // Parameters and answers of a university course slide (Baker): L0 .4, T .1, S .3, G .2, answers 0 1 1 0 0; digits worked once in another language.
    const steps = knowledgeAfter({ known: 0.4, learn: 0.1, slip: 0.3, guess: 0.2 }, answersFrom("01100"));
    const posteriors = [0.2, 0.5764705882, 0.8503464203, 0.7066767258, 0.5111227537];
    const nexts = [0.28, 0.6188235294, 0.8653117783, 0.7360090532, 0.5600104783];
    for (const [index, step] of steps.entries()) {
      expect(step.posterior).toBeCloseTo(posteriors[index] ?? 0, 8);
      expect(step.next).toBeCloseTo(nexts[index] ?? 0, 8);
    }
    expect(steps).toHaveLength(5);
  });

  it("updates once as in a published test file: .45 ÷ .55", () => {
    const [step] = knowledgeAfter({ known: 0.5, learn: 0, slip: 0.1, guess: 0.2 }, [true]);
    expect(step?.posterior).toBeCloseTo(0.8181818182, 8);
  });

  it("rises with right answers among four options, and forgets with a step of forgetting", () => {
    const right = knowledgeAfter({ known: 0.2, learn: 0.15, slip: 0.1, guess: 0.25 }, answersFrom("1111"));
    const mixed = knowledgeAfter({ known: 0.2, learn: 0.15, slip: 0.1, guess: 0.02, forget: 0.05 }, answersFrom("1101"));
    const digits = [0.5526315789, 0.8439524838, 0.9584756077, 0.9898925075, 0.8846938776, 0.947689634, 0.6691642119, 0.9413061567];
    for (const [index, { next }] of [...right, ...mixed].entries()) expect(next).toBeCloseTo(digits[index] ?? 0, 8);
  });

  it("is the forward pass of a hidden chain of two states, worked by summing over every hidden path", () => {
    const model = { known: 0.3, learn: 0.2, slip: 0.08, guess: 0.15, forget: 0.04 };
    const answers = answersFrom("0110100111");
    const start = [1 - model.known, model.known];
    const step = [[1 - model.learn, model.learn], [model.forget, 1 - model.forget]];
    const seen = (state: number, isRight: boolean) => {
      const right = state === 1 ? 1 - model.slip : model.guess;
      return isRight ? right : 1 - right;
    };
    const weights = [0, 0];
    for (let path = 0; path < 2 ** answers.length; path += 1) {
      const stateAt = (index: number) => (path >> index) & 1;
      let weight = 1;
      for (const [index, isRight] of answers.entries()) {
        const before = index === 0 ? start[stateAt(0)] : step[stateAt(index - 1)]?.[stateAt(index)];
        weight *= (before ?? 0) * seen(stateAt(index), isRight);
      }
      weights[stateAt(answers.length - 1)] = (weights[stateAt(answers.length - 1)] ?? 0) + weight;
    }
    const [not = 0, known = 0] = weights;
    expect(knowledgeAfter(model, answers).at(-1)?.posterior).toBeCloseTo(known / (known + not), 12);
  });

  it("stays where it was after an answer that the parameters hold impossible", () => {
    expect(knowledgeAfter({ known: 0, learn: 0.5, slip: 0, guess: 0 }, [true])).toEqual([{ posterior: 0, next: 0.5 }]);
    expect(knowledgeAfter({ known: 1, learn: 0, slip: 0, guess: 0 }, [false])).toEqual([{ posterior: 1, next: 1 }]);
    expect(knowledgeAfter({ known: 1, learn: 0, slip: 0, guess: 0 }, [])).toEqual([]);
  });
});

/** "3+" is right on day 3, "3-" wrong, "3!" unsafe. */
const history = (text: string) =>
  text.split(" ").map((word) => ({
    day: Number(word.slice(0, -1)),
    right: word.endsWith("+"),
    unsafe: word.endsWith("!"),
  }));

describe("the day of return, worked by hand from the public rule", () => {
  // Gaps 2, 2, 4, 6, 10, 16, 26, 42, 68, 90. The rule is our own; no published table exists for it.
  it.each([
    ["0+", 2, "first"],
    ["5+ 7+", 9, "right"],
    ["0+ 2+ 4+", 8, "right"],
    ["0+ 2+ 4+ 8+", 14, "right"],
    ["0+ 2+ 4+ 8+ 14+ 24+ 40+ 66+ 108+ 176+", 266, "right"],
    ["0+ 2+ 4+ 8+ 14+ 24+ 40+ 66+ 108+ 176+ 266+ 356+", 446, "right"],
    ["0+ 1+", 2, "early"],
    ["0+ 1+ 2+", 4, "right"],
    ["0+ 20+", 22, "right"],
    ["0+ 2+ 4+ 8-", 10, "wrong"],
    ["0+ 2+ 4+ 8- 10+", 14, "right"],
    ["0+ 2-", 4, "wrong"],
    ["0+ 2- 4-", 6, "wrong"],
    ["3-", 5, "wrong"],
    ["3- 5+", 7, "first"],
    ["3- 5+ 7+ 9+", 13, "right"],
    ["0+ 2+ 4!", 5, "unsafe"],
    ["0+ 2+ 4! 5+", 6, "unsafe"],
    ["0+ 2+ 4! 5+ 6+", 7, "unsafe"],
    ["0+ 2+ 4! 4+ 4+", 5, "unsafe"],
    ["0+ 2+ 4! 5+ 5-", 6, "unsafe"],
    ["0+ 2+ 4! 5+ 5+", 7, "unsafe"],
    ["0+ 2+ 4+ 8+ 14! 15+ 15+", 19, "unsafe"],
    ["0+ 2+ 4+ 8+ 14! 15+ 15+ 19+", 25, "right"],
    ["0+ 2+ 4+ 8+ 14! 15! 15+ 15+ 16+ 16+", 20, "unsafe"],
    // Later answers of a day count only where they are unsafe or an unsafe one stands.
    ["0+ 0-", 2, "first"],
    ["0+ 0!", 1, "unsafe"],
    // A clock set back: no time has passed, and the date does not move.
    ["10+ 12+ 3+", 14, "early"],
    ["10+ 12+ 3-", 14, "wrong"],
  ])("after %s is day %d, %s", (text, day, reason) => {
    expect(nextReturn(history(text))).toEqual({ day, reason });
  });

  it("moves with the calendar: the same history a week later returns a week later", () => {
    for (const text of ["0+ 2+ 4+ 8-", "0+ 2+ 4! 5+ 5+", "0+ 1+ 2+"]) {
      const late = history(text).map((answer) => ({ ...answer, day: answer.day + 7 }));
      expect(nextReturn(late).day).toBe(nextReturn(history(text)).day + 7);
    }
  });
});
