import { expect, it } from "vitest";
import { answerTo, draw } from "../../src/bank/index.ts";
import type { MarkItem } from "../../src/engine/question/item.ts";
import { backOfMeniscus } from "../../src/figures/pictures/rim.ts";
import { placeUnder } from "../../src/figures/places-in-picture.ts";

/** The back of a meniscus with places for stitches. What is expected follows from geometry alone. */

const items = Array.from({ length: 200 }, (_, seed) => draw("spread", seed)).filter((item): item is MarkItem => item.kind === "mark");
const circles = (markup: string, name: string): readonly (readonly [number, number])[] =>
  [...markup.matchAll(new RegExp(`<circle cx="([\\d.-]+)" cy="([\\d.-]+)" r="[\\d.]+" class="${name}"`, "g"))].map(([, x, y]) => [Number(x), Number(y)] as const);
const WIDTH_PX = 356;

it("places lie where a pointer over them finds them, each inside the drawing, two millimetres apart along the tear", () => {
  for (const item of items) {
    const places = circles(backOfMeniscus(item)?.markup ?? "", "place");
    expect(places).toHaveLength(item.regions.length);
    places.forEach(([x, y], at) => {
      const region = item.regions[at];
      const under = placeUnder(item, x / WIDTH_PX, y / WIDTH_PX);
      expect(Math.hypot((under?.xMm ?? 99) - Number(region?.xMm), (under?.yMm ?? 99) - Number(region?.yMm))).toBeLessThan(0.02);
      expect(x > 11 && x < WIDTH_PX - 11 && y > 11).toBe(true);
    });
    const [first, second] = item.regions.map(({ xMm, yMm }) => [Number(xMm), Number(yMm)] as const);
    const chord = Math.hypot((first?.[0] ?? 0) - (second?.[0] ?? 0), (first?.[1] ?? 0) - (second?.[1] ?? 0));
    // A chord of two millimetres' arc is shorter by less than a hundredth.
    expect(chord).toBeGreaterThan(1.97);
    expect(chord).toBeLessThan(2.01);
  }
});

it("the body lies on the outer side of the knee's own side, and the picture rings only what was chosen", () => {
  for (const item of items.slice(0, 60)) {
    const isRimRight = (item.about["meniscus"] === "lateral") === (item.about["side"] === "right");
    expect(Number(item.regions[0]?.xMm) > 0).toBe(isRimRight);
    expect(circles(backOfMeniscus(item)?.markup ?? "", "ownring")).toHaveLength(0);
    const after = backOfMeniscus(item, { values: {}, response: answerTo(item) });
    expect(circles(after?.markup ?? "", "ownring")).toHaveLength(item.targets.length);
    expect(after?.text).toContain("You chose ");
  }
});
