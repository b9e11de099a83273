import { howMany } from "../support/how-many.ts";
import { describe, expect, it } from "vitest";
import { answerTo, draw, explain, grade, slipsOf } from "../../src/bank/index.ts";
import type { ChainResponse, SumResponse } from "../../src/engine/question/response.ts";

const textsOf = (response: ChainResponse): readonly string[] => response.steps.flatMap((step) => ("text" in step ? [(step as Extract<SumResponse, { text: string }>).text] : []));

describe("a chain", () => {
  it("shows beside each step the very number that is its answer", () => {
    for (let seed = 0; seed < howMany(400, 50); seed += 1) {
      const item = draw("depth-to-stop", seed);
      const response = answerTo(item) as ChainResponse;
      const shown = explain(item, response).compare.filter(({ answer }) => /^\d/.test(answer)).map(({ answer }) => Number.parseFloat(answer));
      expect(shown).toEqual(textsOf(response).map(Number));
    }
  });

  it("carries an error forward: after one slip every later step is right on its own terms", () => {
    for (let seed = 0; seed < howMany(200, 50); seed += 1) {
      const item = draw("depth-to-stop", seed);
      for (const { response } of slipsOf(item)) {
        const { parts, score } = grade(item, response);
        expect(parts.filter(({ verdict }) => verdict !== "right").length).toBe(1);
        expect(score).toBeCloseTo(2 / 3, 10);
      }
    }
  });
});
