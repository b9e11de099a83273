import { describe, expect, it } from "vitest";
import { fieldInLiquidDeg, fieldWidthMm, sweptConeDeg } from "../../src/engine/index.ts";
import { xoshiro128 } from "../../src/engine/random/xoshiro.ts";

describe("the field in water", () => {
  // Refractive index of water 1.3330 at 20 °C, 589.3 nm: Tilton and Taylor 1938, J Res Natl Bur Stand 20:419 (table; volume from memory).
  const WATER = 1.333;

  it("of a whole half-space is Snell's window, 97 degrees", () => {
    // Snell's window is given as about 97 degrees in photography and diving texts.
    expect(fieldInLiquidDeg({ fieldInAirDeg: 180, refractiveIndex: WATER })).toBeCloseTo(97.2, 1);
  });

  it("of an 80 degree lens behind a flat port is less than 60 degrees", () => {
    // An imaging note for work under water: an 80 degree lens keeps less than 60 degrees behind a flat port, index 1.33.
    const left = fieldInLiquidDeg({ fieldInAirDeg: 80, refractiveIndex: 1.33 });
    expect(left).toBeLessThan(60);
    expect(left).toBeGreaterThan(55);
  });

  it("obeys Snell's law ray by ray: the time of light is least where the ray crosses the window", () => {
    // Second method, Fermat: search the crossing point of least optical length between a point in air and one in liquid.
    const opticalLength = (cross: number, far: number, index: number) => Math.hypot(1, cross) + index * Math.hypot(1, far - cross);
    for (const index of [1.33, 1.335, 1.4]) {
      for (const halfAirDeg of [20, 35, 52.5, 60]) {
        const halfLiquidRad = ((fieldInLiquidDeg({ fieldInAirDeg: 2 * halfAirDeg, refractiveIndex: index }) / 2) * Math.PI) / 180;
        const cross = Math.tan((halfAirDeg * Math.PI) / 180);
        const far = cross + Math.tan(halfLiquidRad);
        let [low, high] = [0, far];
        for (let step = 0; step < 200; step += 1) {
          const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
          if (opticalLength(a, far, index) < opticalLength(b, far, index)) high = b;
          else low = a;
        }
        expect((low + high) / 2).toBeCloseTo(cross, 5);
      }
    }
  });
});

describe("the blind circle of Sinha and Monga 2016", () => {
  // Orthop Proc 98-B(Supp 13):5: in front of a 70 degree scope up to 44 mm across at 50 mm; none with 30 degrees.
  // The field is not printed; 92.5 degrees is the one that gives 44 mm: 70 − atan(22 ÷ 50) = 46.25.
  const fieldDeg = 2 * (70 - (Math.atan(22 / 50) * 180) / Math.PI);

  it("is 44 mm wide at 50 mm for 70 degrees", () => {
    expect(fieldDeg).toBeCloseTo(92.5, 1);
    const { blindDeg } = sweptConeDeg({ viewDeg: 70, fieldDeg });
    expect(fieldWidthMm({ distanceMm: 50, fieldDeg: blindDeg })).toBeCloseTo(44, 6);
  });

  it("is absent for 30 degrees with the same field", () => {
    expect(sweptConeDeg({ viewDeg: 30, fieldDeg }).blindDeg).toBe(0);
  });
});

describe("field and cone against a second method", () => {
  it("the width seen is where the outermost ray meets the plane", () => {
    for (const fieldDeg of [70, 90, 105, 120, 170]) {
      for (const distanceMm of [2, 10, 25]) {
        const halfRad = (fieldDeg / 2) * (Math.PI / 180);
        const ray = { ahead: Math.cos(halfRad), aside: Math.sin(halfRad) };
        expect(fieldWidthMm({ distanceMm, fieldDeg })).toBeCloseTo(2 * ray.aside * (distanceMm / ray.ahead), 8);
      }
    }
  });

  it("the swept and the blind cone hold exactly the rays that some turn of the scope sees", () => {
    const random = xoshiro128([5, 6, 7, 8]);
    const share = () => random() / 2 ** 32;
    const isSeen = (offAxisDeg: number, viewDeg: number, fieldDeg: number): boolean => {
      for (let turn = 0; turn < 360; turn += 1) {
        const [a, b, t] = [offAxisDeg, viewDeg, turn].map((angle) => (angle * Math.PI) / 180) as [number, number, number];
        const cosine = Math.cos(a) * Math.cos(b) + Math.sin(a) * Math.sin(b) * Math.cos(t);
        if (Math.acos(Math.min(1, cosine)) <= (fieldDeg / 2) * (Math.PI / 180)) return true;
      }
      return false;
    };
    for (let run = 0; run < 400; run += 1) {
      const [viewDeg, fieldDeg] = [share() * 70, 20 + share() * 100];
      const offAxisDeg = share() * 180;
      const { totalDeg, blindDeg } = sweptConeDeg({ viewDeg, fieldDeg });
      const nearEdge = Math.min(Math.abs(offAxisDeg - totalDeg / 2), Math.abs(offAxisDeg - blindDeg / 2)) < 0.01;
      if (!nearEdge) expect(isSeen(offAxisDeg, viewDeg, fieldDeg)).toBe(offAxisDeg < totalDeg / 2 && offAxisDeg > blindDeg / 2);
    }
  });
});
