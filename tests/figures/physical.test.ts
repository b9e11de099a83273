import { describe, expect, it } from "vitest";
import { answerTo, draw } from "../../src/bank/index.ts";
import { annularFlow } from "../../src/engine/index.ts";
import { cautionText } from "../../src/facts/cautions.ts";
import { MODULE_FIGURES, moduleFigure } from "../../src/figures/module-figures.ts";
import { pictureOfItem } from "../../src/figures/picture-of-item.ts";
import { annulusGap } from "../../src/figures/physical/annulus-gap.ts";
import { fieldCone } from "../../src/figures/physical/field-cone.ts";
import { papersCompared } from "../../src/figures/physical/spreads.ts";

const AIR = { refractiveIndex: 1.335, distanceMm: 10 } as const;
const lettersOf = (markup: string): readonly number[] => [...markup.matchAll(/font-size="([\d.]+)"/g)].map(([, size = ""]) => Number(size));

describe.each(MODULE_FIGURES)("the figure %s", (name) => {
  it("is sound, says C8 in picture and words, and has letters that can be read on a phone", () => {
    const figure = moduleFigure(name);
    expect(figure?.markup).not.toMatch(/NaN|undefined|Infinity|style=|null/);
    expect(`${figure?.text ?? ""}${figure?.caption ?? ""}`).not.toMatch(/NaN|undefined|Infinity|null/);
    expect(figure?.text.endsWith(cautionText("C8"))).toBe(true);
    expect(figure?.markup).toContain(">C8<");
    expect(Math.min(...lettersOf(figure?.markup ?? ""))).toBeGreaterThanOrEqual(15);
  });
});

describe("the cone of a scope", () => {
  it.each([
    // Snell's law at a flat window and the round at a distance, computed apart from the site: 105° → 72.9°, 26.06 and 14.78 mm; 115° → 78.4°, 31.39 and 16.30 mm.
    [0, 105, "105° in air and 73° in saline", "26.1\u2009mm wide in air and 14.8\u2009mm in saline"],
    [70, 115, "115° in air and 78° in saline", "31.4\u2009mm wide in air and 16.3\u2009mm in saline"],
  ])("at %s° and %s° says field and round", (viewDeg, fieldInAirDeg, field, round) => {
    const { text } = fieldCone({ viewDeg, fieldInAirDeg, ...AIR });
    expect(text).toContain(field);
    expect(text).toContain(round);
  });

  it("tells what a turn sweeps: nothing new straight ahead; 30° with 65° sweeps 107° round a blind 13°", () => {
    expect(fieldCone({ viewDeg: 0, fieldInAirDeg: 105, ...AIR }).text).toContain("shows the same cone again");
    expect(fieldCone({ viewDeg: 30, fieldInAirDeg: 65, ...AIR }).text).toContain("sweeps 107° and leaves a cone of 13° straight ahead unseen");
    expect(fieldCone({ viewDeg: 30, fieldInAirDeg: 115, ...AIR }).text).toContain("leaves nothing out straight ahead");
  });

  it("stays inside its picture at every tilt and field", () => {
    for (const viewDeg of [0, 12, 30, 45, 70, 90]) for (const fieldInAirDeg of [40, 65, 90, 105, 120]) {
      const [, , width = 0, height = 0] = /viewBox="([^"]+)"/.exec(fieldCone({ viewDeg, fieldInAirDeg, ...AIR }).markup)?.[1]?.split(" ").map(Number) ?? [];
      const places = [...fieldCone({ viewDeg, fieldInAirDeg, ...AIR }).markup.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x = "", y = ""]) => [Number(x), Number(y)] as const);
      expect(places.filter(([x, y]) => x < 0 || x > width || y < 0 || y > height - 46)).toEqual([]);
    }
  });
});

describe("the cone with its target", () => {
  it("comes after the answer, and says the answer that is right", async () => {
    const says: Readonly<Record<string, string>> = { still: "inside the cone as the scope stands", rotating: "once the scope is turned", tilting: "outside the cone" };
    for (let seed = 0; seed < 200; seed += 1) {
      const item = draw("in-view", seed);
      const response = answerTo(item);
      expect(await pictureOfItem(item)).toBeNull();
      const picture = await pictureOfItem(item, { values: {}, response });
      expect(picture?.text).toContain(response.kind === "name" ? says[response.picks["way"] ?? ""] : "");
      expect(picture?.markup).not.toMatch(/NaN|undefined/);
    }
  });
});

describe("the gap round a scope", () => {
  it("is half the difference of the two widths, and lets through 2.5 times as much where it touches, as the engine's thin gap does", () => {
    expect(annulusGap({ scopeMm: 2.3, boreMm: 2.7 }).text).toContain("the gap is 0.20\u2009mm all round");
    const flow = (eccentricity: number) => annularFlow({ scopeMm: 2.3, boreMm: 2.7, lengthMm: 120, dropMmHg: 20, viscosityMPaS: 1, densityKgPerM3: 1000, eccentricity }).flowMlPerMin ?? 0;
    expect(flow(1) / flow(0)).toBeCloseTo(2.5, 6);
    expect(annulusGap({ scopeMm: 2.3, boreMm: 2.7 }).text).toContain("about 2.5 times");
  });

  it("refuses a scope that does not fit", () => {
    expect(() => annulusGap({ scopeMm: 3, boreMm: 2.7 })).toThrow("scopeMm must be greater than 0 and less than boreMm, got 3");
  });
});

describe("published values", () => {
  it("stand as they were printed: Beck 2019 and Shea 2019, by band", () => {
    const text = moduleFigure("growth-curves")?.text ?? "";
    for (const one of ["5–7 years 14.1\u2009mm, standard deviation 3.1\u2009mm", "11–13 years 17.0\u2009mm, standard deviation 3.3\u2009mm", "9–11 years 8.2\u2009mm, no spread printed"]) expect(text).toContain(one);
  });

  it("stand at their place on the scale, with a bar of one spread each way", () => {
    const { markup } = papersCompared({ title: "Two", greatestMm: 20, rows: [{ name: "one", mean: 10, sd: 4, said: { mean: "10", sd: "4" } }, { name: "other", mean: 5, sd: null, said: { mean: "5", sd: "" } }] });
    const dots = [...markup.matchAll(/cx="([\d.]+)"/g)].map(([, x = ""]) => Number(x));
    expect(dots).toEqual([178, 93]);
    expect(markup).toContain('d="M110 54L246 54"');
  });
});

it("a setting that is no number is refused", () => {
  expect(() => moduleFigure("field-cone", { view: "wide" })).toThrow("view must be a number of at least 0, got wide");
  expect(moduleFigure("bundle-line")).toBeNull();
});
