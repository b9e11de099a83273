import { describe, expect, it } from "vitest";
import { compute, draw } from "../../src/bank/index.ts";
import { cautionText } from "../../src/facts/cautions.ts";
import { zoneOfItem } from "../../src/figures/zone-figure.ts";

const vertices = (markup: string): readonly (readonly [number, number])[] =>
  (/class="t-out" d="M([^Z]+)Z"/.exec(markup)?.[1] ?? "").split("L").map((pair) => pair.split(" ").map(Number) as unknown as readonly [number, number]);

describe("the triangle of the zone", () => {
  it("has the sides of the question in proportion and the graded angle, for 300 draws", () => {
    for (let seed = 0; seed < 300; seed += 1) {
      const item = draw("zone-angle", seed);
      const { markup = "", text = "" } = zoneOfItem(item, 30) ?? {};
      const givens = Object.fromEntries(item.givens.map(({ key, text: printed }) => [key, Number(printed)]));
      const [portal, near, far] = vertices(markup);
      if (!portal || !near || !far) throw new Error("the triangle has no corners");
      const length = (one: readonly [number, number], two: readonly [number, number]): number => Math.hypot(one[0] - two[0], one[1] - two[1]);
      // Corners are printed to a tenth of a pixel.
      expect(length(portal, near) / length(portal, far)).toBeCloseTo((givens["nearEdgeMm"] ?? 0) / (givens["farEdgeMm"] ?? 1), 2);
      expect(length(near, far) / length(portal, far)).toBeCloseTo((givens["widthMm"] ?? 0) / (givens["farEdgeMm"] ?? 1), 2);
      const { angleDeg } = compute("zone-angle", givens) as { readonly angleDeg: number };
      expect(text).toContain(`The angle at the portal is ${angleDeg.toFixed(1)}°.`);
      expect(text).toContain("Your angle of 30.0°");
      expect(text).toContain(cautionText("C8"));
      expect(markup).not.toMatch(/NaN|undefined|Infinity|style=/);
    }
  });

  it("leaves out a line that would leave the picture, and is null for another question", () => {
    expect(zoneOfItem(draw("zone-angle", 1), 400)?.markup).not.toContain('class="mine"');
    expect(zoneOfItem(draw("path-width", 1))).toBeNull();
  });
});
