import { describe, expect, it } from "vitest";
import { compute, draw } from "../../src/bank/index.ts";
import { lineFigure } from "../../src/figures/line-figure.ts";
import { placesOn } from "../../src/figures/line-model.ts";
import { lineOfItem } from "../../src/figures/line-of-item.ts";

describe("the line figure", () => {
  it("stands on the same limit as the grading, for 500 questions of each family", () => {
    const failed: string[] = [];
    for (const id of ["greatest-depth", "least-depth"]) {
      for (let seed = 0; seed < 500; seed += 1) {
        const item = draw(id, seed);
        const model = lineOfItem(item, true);
        const answer = compute(id, Object.fromEntries(item.givens.map(({ key, text }) => [key, Number(text)])));
        const places = model ? placesOn(model) : null;
        const shown = id === "greatest-depth" ? places?.greatestMm : places?.leastMm;
        const graded = (answer as Record<string, number>)[id === "greatest-depth" ? "greatestMm" : "leastMm"];
        if (graded !== undefined && shown !== graded) failed.push(`${id} ${seed}`);
      }
    }
    expect(failed).toEqual([]);
  });

  it("says in words what is missing where no depth is left, and hatches only after an answer", () => {
    const item = Array.from({ length: 50 }, (_, seed) => draw("window", seed)).find((one) => {
      const model = lineOfItem(one, true);
      return model !== null && placesOn(model).isEmpty;
    });
    const asked = item ? lineOfItem(item, false) : null;
    const answered = item ? lineOfItem(item, true, [12]) : null;
    expect(asked && lineFigure(asked).markup).not.toContain("p-forbid");
    expect(answered && lineFigure(answered).markup).toContain("p-forbid");
    expect(answered && lineFigure(answered).text).toContain("no depth is left");
  });

  it.each(["greatest-depth", "least-depth", "window"])("is drawn as it was looked at: %s, before and after an answer", async (id) => {
    const drawn = [lineOfItem(draw(id, 1), false), lineOfItem(draw(id, 1), true, [9.5])].map((model) => (model ? lineFigure(model) : null));
    expect(drawn.every((figure) => figure && !/\d\.\d{4,}/.test(figure.markup))).toBe(true);
    await expect(drawn.map((figure) => `${figure?.markup}\n<!-- ${figure?.text} -->\n`).join("")).toMatchFileSnapshot(`golden/line-${id}.svg.txt`);
  });

  it("is null for a question about something else", () => expect(lineOfItem(draw("aim-error", 1), false)).toBeNull());

  it("holds nothing that is not a number, whatever is drawn", () => {
    for (let seed = 0; seed < 300; seed += 1) {
      const model = lineOfItem(draw("window", seed), true, [0.5, 80]);
      expect(model && lineFigure(model).markup).not.toMatch(/NaN|undefined|Infinity|style=/);
    }
  });
});
