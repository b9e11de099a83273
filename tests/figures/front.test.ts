import { describe, expect, it } from "vitest";
import { answerTo, draw } from "../../src/bank/index.ts";
import { cautionText } from "../../src/facts/cautions.ts";
import { frontOfKnee } from "../../src/figures/pictures/front.ts";
import { placeUnder } from "../../src/figures/places-in-picture.ts";

const DRAWS = 200;
const WIDTH_PX = 356;

describe("the front of the knee", () => {
  it("has each number once, where a finger finds its place again", () => {
    for (let seed = 0; seed < DRAWS; seed += 1) {
      const item = draw("portal", seed);
      const figure = frontOfKnee(item);
      if (item.kind !== "mark" || !figure) throw new Error("no marks");
      const circles = [...figure.markup.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="11" class="place"\/>/g)].map(([, x = "", y = ""]) => [Number(x), Number(y)] as const);
      expect(circles).toHaveLength(item.regions.length);
      item.regions.forEach(({ xMm, yMm }, index) => {
        const [x = 0, y = 0] = circles[index] ?? [];
        const point = placeUnder(item, x / WIDTH_PX, y / WIDTH_PX) ?? { xMm: 0, yMm: 0 };
        expect(Math.hypot(point.xMm - Number(xMm), point.yMm - Number(yMm))).toBeLessThan(0.05);
      });
    }
  });

  it("keeps numbers clear of each other, and as many on one side of the tendon as on the other", () => {
    for (let seed = 0; seed < DRAWS; seed += 1) {
      const item = draw("portal", seed);
      const places = item.kind === "mark" ? item.regions.map(({ xMm, yMm }) => [Number(xMm) - Number(item.about["tendonAtMm"]), Number(yMm)] as const) : [];
      const gaps = places.flatMap(([x, y], index) => places.slice(index + 1).map(([u, v]) => Math.hypot(x - u, y - v)));
      expect(Math.min(...gaps)).toBeGreaterThanOrEqual(6);
      expect(places.filter(([x]) => x < 0)).toHaveLength(places.length / 2);
    }
  });

  it("draws the tendon as wide as the question says, and the fibula on the lateral side", () => {
    for (let seed = 0; seed < DRAWS; seed += 1) {
      const item = draw("portal", seed);
      const { markup = "", text = "" } = frontOfKnee(item) ?? {};
      const [, left = "0", right = "0"] = /class="t-fill" d="M([\d.]+) [\d.]+L[^Z]*L([\d.]+) [\d.]+Z"/.exec(markup) ?? [];
      expect((Number(right) - Number(left)) / 4).toBeCloseTo(Number(item.givens[0]?.text), 1);
      expect(text).toContain(`fibula stands at the lower ${item.about["side"] === "right" ? "left" : "right"}`);
      expect(text.endsWith(cautionText("C8"))).toBe(true);
      expect(markup).not.toMatch(/NaN|undefined|\d\.\d{3,}/);
    }
  });

  it("tells nothing by its numbers: each is right now and then, and none in more than a quarter of the draws", () => {
    const right = Array.from({ length: DRAWS }, (_, seed) => {
      const item = draw("portal", seed);
      const answer = answerTo(item);
      const point = answer.kind === "mark" ? answer.points["portal"] : undefined;
      return item.kind === "mark" ? item.regions.find(({ xMm, yMm }) => xMm === point?.xMm && yMm === point.yMm)?.id : undefined;
    });
    const often = ["1", "2", "3", "4", "5", "6", "7", "8"].map((id) => right.filter((one) => one === id).length);
    expect(Math.min(...often)).toBeGreaterThan(0);
    expect(Math.max(...often)).toBeLessThan(DRAWS / 4);
  });
});
