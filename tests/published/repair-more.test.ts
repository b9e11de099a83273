import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clearanceMm, stitchCount } from "../../src/engine/index.ts";
import { aimErrorMm } from "../../src/engine/repair/aim-error-mm.ts";
import { curvedReachMm } from "../../src/engine/repair/curved-reach-mm.ts";
import { needAlongMm } from "../../src/engine/repair/need-along-mm.ts";
import { passes } from "../../src/engine/repair/passes.ts";
import { stitchGapMm } from "../../src/engine/repair/stitch-gap-mm.ts";
import { asPrinted, evaluate, examplesIn, numbersIn } from "../support/examples.ts";

const SEED = 20261125;
const SCOPE = { aimErrorMm, curvedReachMm, needAlongMm, passes, stitchGapMm };
const FILES = ["aim-error-mm", "curved-reach-mm", "need-along-mm", "passes", "stitch-gap-mm"].map((name) => `src/engine/repair/${name}.ts`);

describe("examples in the doc comments", () => {
  it.each(examplesIn(FILES))("$call gives $printed", ({ call, printed }) => {
    expect(asPrinted(evaluate(call, SCOPE), numbersIn(printed))).toEqual(asPrinted(evaluate(printed, SCOPE), numbersIn(printed)));
  });
});

describe("a tilted needle", () => {
  it(`needs the length of the slant side of a right triangle (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.double({ min: 0.5, max: 20, noNaN: true }), fc.double({ min: 0, max: 80, noNaN: true }), (needMm, tiltDeg) => {
      const across = needMm * Math.tan((tiltDeg * Math.PI) / 180);
      return Math.abs(needAlongMm({ needMm, tiltDeg }) - Math.hypot(needMm, across)) < 1e-9;
    }), { seed: SEED });
  });

  // Worked by drawing: a vessel of radius 2.5 mm, centred 10.5 mm deep and 2 mm aside, is met at 9.0 mm straight on and at 8.2 mm when tilted 11° towards it; 9.0 / cos 11° would say 9.2.
  it("meets a round vessel earlier than a flat wall", () => {
    const meets = (tiltDeg: number): number => {
      const rad = (tiltDeg * Math.PI) / 180;
      for (let depth = 5; depth < 20; depth += 0.001) {
        const tip = { xMm: depth * Math.cos(rad), yMm: depth * Math.sin(rad) };
        if (clearanceMm({ entry: { xMm: 0, yMm: 0 }, tip, centre: { xMm: 10.5, yMm: 2 }, radiusMm: 2.5, needleRadiusMm: 0 }) <= 0) return depth;
      }
      return Number.NaN;
    };
    expect(meets(0)).toBeCloseTo(9.0, 1);
    expect(meets(11)).toBeCloseTo(8.2, 1);
    expect(needAlongMm({ needMm: 9, tiltDeg: 11 })).toBeCloseTo(9.2, 1);
  });
});

describe("a curved needle", () => {
  it("ends where many short straight pieces end", () => {
    for (const [curveRadiusMm, arcMm] of [[40, 30], [80, 25], [150, 60]] as const) {
      const end = { x: 0, y: 0 };
      const pieces = 20_000;
      for (let piece = 0; piece < pieces; piece += 1) {
        const turn = ((piece + 0.5) / pieces) * (arcMm / curveRadiusMm);
        end.x += (arcMm / pieces) * Math.cos(turn);
        end.y += (arcMm / pieces) * Math.sin(turn);
      }
      const { forwardMm, sideMm } = curvedReachMm({ curveRadiusMm, arcMm });
      expect([forwardMm, sideMm].map((value) => value.toFixed(4))).toEqual([end.x, end.y].map((value) => value.toFixed(4)));
    }
  });
  it("is nearly straight where the curve is wide", () => {
    const { forwardMm, sideMm } = curvedReachMm({ curveRadiusMm: 100_000, arcMm: 20 });
    expect(forwardMm).toBeCloseTo(20, 3);
    expect(sideMm).toBeCloseTo(0, 2);
  });
});

describe("aim", () => {
  it("misses by nothing at 0°, and more the longer the path", () => {
    expect(aimErrorMm({ pathMm: 40, errorDeg: 0 })).toBe(0);
    expect(aimErrorMm({ pathMm: 50, errorDeg: 4 })).toBeGreaterThan(aimErrorMm({ pathMm: 40, errorDeg: 4 }));
    // 60 mm at 5°: 60 × 0.087489 (tangent of 5° in any table) = 5.249.
    expect(aimErrorMm({ pathMm: 60, errorDeg: 5 })).toBeCloseTo(5.249, 3);
  });
});

describe("stitches on a tear", () => {
  it(`stand no farther apart than the greatest spacing, and one fewer would be too few (seed ${SEED})`, () => {
    const tenths = (from: number, to: number) => fc.integer({ min: from * 10, max: to * 10 }).map((value) => value / 10);
    fc.assert(fc.property(tenths(10, 40), tenths(0, 4), tenths(3, 10), (tearMm, endMarginMm, greatestSpacingMm) => {
      const stitches = stitchCount({ tearMm, endMarginMm, greatestSpacingMm });
      if (stitches < 2) return tearMm - 2 * endMarginMm <= 1e-9;
      const gap = stitchGapMm({ tearMm, endMarginMm, stitches });
      const wider = stitches > 2 ? stitchGapMm({ tearMm, endMarginMm, stitches: stitches - 1 }) : Number.POSITIVE_INFINITY;
      return gap <= greatestSpacingMm + 1e-9 && wider > greatestSpacingMm - 1e-9;
    }), { seed: SEED, numRuns: 2000 });
  });
  it("pass twice each, whatever the method (common practice, no source)", () => {
    expect(passes({ stitches: 0, method: "inside-out" })).toEqual({ passes: 0, anchors: 0, needles: 0 });
    expect(passes({ stitches: 5, method: "inside-out" }).needles).toBe(10);
  });
});

describe("values outside their range", () => {
  const CALLS: readonly [string, Record<string, number>, (values: never) => unknown, readonly string[]][] = [
    ["needAlongMm", { needMm: 6, tiltDeg: 10 }, needAlongMm, []],
    ["curvedReachMm", { curveRadiusMm: 80, arcMm: 20 }, curvedReachMm, []],
    ["aimErrorMm", { pathMm: 40, errorDeg: 5 }, aimErrorMm, []],
    ["stitchGapMm", { tearMm: 25, endMarginMm: 2, stitches: 5 }, stitchGapMm, []],
  ];
  it.each(CALLS)("%s names the parameter", (_, good, call) => {
    for (const name of Object.keys(good)) {
      for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
        expect(() => call({ ...good, [name]: bad } as never)).toThrow(new RegExp(`^${name} must be`));
      }
    }
    expect(() => stitchGapMm({ tearMm: 10, endMarginMm: 5, stitches: 3 })).toThrow(/^endMarginMm must leave/);
    expect(() => stitchGapMm({ tearMm: 10, endMarginMm: 1, stitches: 1 })).toThrow(/^stitches must be 2 or more, got 1$/);
    expect(() => passes({ stitches: 1.5, method: "two-anchor" })).toThrow(/^stitches must be a whole number/);
  });
});
