import { describe, expect, it } from "vitest";
import { arcAngleDeg, arcPoint, arcPoints, outwardAt } from "../../src/engine/geometry/arc.ts";
import { type Circle, circleCrossings, crossings, crossingsOrFoot, exitDistance, gapToCircle } from "../../src/engine/geometry/circle.ts";
import { distanceToSegment, nearestOnSegment } from "../../src/engine/geometry/distance-to-segment.ts";
import { unitTo } from "../../src/engine/geometry/unit.ts";
import { dot, fromTo, lengthOf, movedAlong, type Point } from "../../src/engine/geometry/vec2.ts";

/** Expected values are whole-number right triangles (3-4-5, 5-12-13 and 9-12-15) worked by hand. */

const at = (xMm: number, yMm: number): Point => ({ xMm, yMm });
const round = (xMm: number, yMm: number, radiusMm: number): Circle => ({ centre: at(xMm, yMm), radiusMm });
const near = ({ xMm, yMm }: Point): unknown => ({ xMm: expect.closeTo(xMm, 9), yMm: expect.closeTo(yMm, 9) });

const ORIGIN = at(0, 0);
const EAST = at(1, 0);
const TILT_DEG = (Math.atan2(4, 3) * 180) / Math.PI;

describe("points and directions", () => {
  it("go from the first to the second, and on by a multiple", () => {
    expect(fromTo(at(1, 2), at(4, 6))).toEqual(at(3, 4));
    expect(movedAlong(at(1, 2), at(3, 4), 2)).toEqual(at(7, 10));
    expect(lengthOf(at(3, 4))).toBe(5);
  });
  it("have a product that is 0 where they stand square", () => {
    expect(dot(at(3, 4), at(2, 5))).toBe(26);
    expect(dot(at(3, 4), at(-4, 3))).toBe(0);
  });
  it("become length 1, and refuse to run from a point to itself", () => {
    expect(unitTo(at(1, 1), at(4, 5))).toEqual(at(0.6, 0.8));
    expect(() => unitTo(at(7, 8), at(7, 8))).toThrow(new RangeError("second must differ from first, got 7, 8 twice"));
  });
});

describe("a segment", () => {
  it("is nearest at its foot, and beyond its ends at the end", () => {
    expect(nearestOnSegment(at(1, 1), at(11, 1), at(4, 9))).toEqual(at(4, 1));
    expect(nearestOnSegment(at(1, 1), at(11, 1), at(-2, 5))).toEqual(at(1, 1));
    expect(nearestOnSegment(at(1, 1), at(11, 1), at(14, 5))).toEqual(at(11, 1));
    expect([distanceToSegment(at(1, 1), at(11, 1), at(4, 9)), distanceToSegment(at(1, 1), at(11, 1), at(-2, 5)), distanceToSegment(at(1, 1), at(11, 1), at(14, 5))]).toEqual([8, 5, 5]);
  });
  it("of length 0 is a point", () => {
    expect(nearestOnSegment(at(1, 1), at(1, 1), at(4, 5))).toEqual(at(1, 1));
    expect(distanceToSegment(at(1, 1), at(1, 1), at(4, 5))).toBe(5);
  });
});

describe("a ray and a circle", () => {
  it("cross twice, the near one first, negative behind the start", () => {
    expect(crossings(ORIGIN, EAST, round(10, 3, 5))).toEqual([6, 14]);
    expect(crossings(ORIGIN, EAST, round(-10, 3, 5))).toEqual([-14, -6]);
    expect(crossings(at(2, 3), EAST, round(12, 6, 5))).toEqual([6, 14]);
  });
  it("touch once at a tangent and miss beyond it", () => {
    expect(crossings(ORIGIN, EAST, round(10, 5, 5))).toEqual([10, 10]);
    expect(crossings(ORIGIN, EAST, round(10, 5.5, 5))).toBeNull();
    expect(crossingsOrFoot(ORIGIN, EAST, round(10, 5.5, 5))).toEqual([10, 10]);
    expect(crossingsOrFoot(ORIGIN, EAST, round(10, 3, 5))).toEqual([6, 14]);
  });
  it("part at the far crossing, and the rest is refused", () => {
    expect(exitDistance(ORIGIN, EAST, round(10, 3, 5))).toBe(14);
    expect(exitDistance(ORIGIN, EAST, round(-5, 0, 5))).toBe(0);
    const refusal = (centre: string) => new RangeError(`direction must lead through the circle at ${centre}, got 1, 0`);
    expect(() => exitDistance(ORIGIN, EAST, round(-10, 3, 5))).toThrow(refusal("-10, 3"));
    expect(() => exitDistance(ORIGIN, EAST, round(10, 6, 5))).toThrow(refusal("10, 6"));
  });
  it("leave a gap that is negative inside", () => {
    expect(gapToCircle(at(3, 4), round(0, 0, 2))).toBe(3);
    expect(gapToCircle(at(3, 4), round(0, 0, 7))).toBe(-2);
  });
});

describe("two circles", () => {
  it("cross at two points, the left one first", () => {
    expect(circleCrossings(round(0, 0, 13), round(14, 0, 15))).toEqual([near(at(5, 12)), near(at(5, -12))]);
    expect(circleCrossings(round(14, 0, 15), round(0, 0, 13))).toEqual([near(at(5, -12)), near(at(5, 12))]);
    expect(circleCrossings(round(1, 2, 13), round(1, 16, 15))).toEqual([near(at(-11, 7)), near(at(13, 7))]);
  });
  it("touch at one point, and apart or one inside the other nowhere", () => {
    expect(circleCrossings(round(0, 0, 3), round(8, 0, 5))).toEqual([near(at(3, 0)), near(at(3, 0))]);
    expect(circleCrossings(round(0, 0, 3), round(9, 0, 5))).toBeNull();
    expect(circleCrossings(round(0, 0, 9), round(2, 0, 3))).toBeNull();
  });
  it("about one centre do not cross, of one size or two", () => {
    expect(circleCrossings(round(1, 1, 5), round(1, 1, 5))).toBeNull();
    expect(circleCrossings(round(1, 1, 5), round(1, 1, 3))).toBeNull();
  });
});

describe("an arc", () => {
  const arc = (outward: 1 | -1) => ({ ...round(2, 3, 5), outward, fromDeg: 0, toDeg: 180 }) as const;
  it("counts its angles from the outward side towards +y", () => {
    expect(outwardAt({ outward: 1 }, TILT_DEG)).toEqual(near(at(0.6, 0.8)));
    expect(outwardAt({ outward: -1 }, TILT_DEG)).toEqual(near(at(-0.6, 0.8)));
    expect(arcPoint(arc(1), TILT_DEG)).toEqual(near(at(5, 7)));
    expect(arcPoint(arc(-1), TILT_DEG)).toEqual(near(at(-1, 7)));
  });
  it("gives back the angle of its points", () => {
    for (const outward of [1, -1] as const) {
      for (const angleDeg of [-179, -90, -30, 0, 10, 135, 180]) expect(arcAngleDeg(arc(outward), arcPoint(arc(outward), angleDeg))).toBeCloseTo(angleDeg, 9);
    }
  });
  it("is drawn from end to end, both included", () => {
    expect(arcPoints(arc(1), 2)).toEqual([at(7, 3), at(2, 8), at(-3, 3)].map(near));
    expect(arcPoints({ ...arc(1), fromDeg: 90, toDeg: -90 }, 2)).toEqual([at(2, 8), at(7, 3), at(2, -2)].map(near));
  });
});
