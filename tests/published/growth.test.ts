import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { multiplierLengthMm } from "../../src/engine/growth/multiplier-length-mm.ts";
import { physisShare } from "../../src/engine/growth/physis-share.ts";
import { remainingGrowthMm } from "../../src/engine/growth/remaining-growth-mm.ts";
import { type Calculator, examplesOf, placesOf } from "../support/legal-calls.ts";

const CALCULATORS: readonly Calculator[] = [
  {
    file: "growth/remaining-growth-mm",
    run: remainingGrowthMm,
    legal: [{ ageYears: 12, stopAgeYears: 16, mmPerYear: 9, slowYears: 0, slowShare: 1 }],
  },
  { file: "growth/multiplier-length-mm", run: multiplierLengthMm, legal: [{ lengthMm: 500, multiplier: 1.31 }] },
  { file: "growth/physis-share", run: physisShare, legal: [{ drillMm: 8, angleDeg: 60, plateMm2: 2000 }] },
];

const SEED = 20_260_306;
const check = <T extends [unknown, ...unknown[]]>(property: fc.IProperty<T>): void => {
  fc.assert(property, { seed: SEED, numRuns: 300 });
};
const tenths = (least: number, greatest: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 10, max: greatest * 10 }).map((value) => value / 10);

const MM_PER_INCH = 25.4;
const steady = { slowYears: 0, slowShare: 1 };

describe("what is left to grow", () => {
  it("by Menelaus's rule is three eighths and one quarter of an inch a year, five eighths at the knee", () => {
    // A page of medical algorithms on Menelaus's rule: distal femur 0.375, proximal tibia 0.25, both 0.625 inch a year; girls to 14, boys to 16, age of the calendar.
    for (const [ageYears, stopAgeYears] of [[10, 14], [12.5, 14], [10, 16], [13, 16]] as const) {
      const left = (inches: number) => remainingGrowthMm({ ageYears, stopAgeYears, mmPerYear: inches * MM_PER_INCH, ...steady });
      expect(left(3 / 8) + left(1 / 4)).toBeCloseTo(left(5 / 8), 10);
      expect(left(5 / 8) / MM_PER_INCH).toBeCloseTo(0.625 * (stopAgeYears - ageYears), 10);
    }
  });

  it("by the observed rates is less than by the original ones", () => {
    // Birch and others, 441 segments: 9 and 6 mm a year of growth of the bones' age, against 9.5 and 6.4 mm.
    const left = (mmPerYear: number) => remainingGrowthMm({ ageYears: 11, stopAgeYears: 14, mmPerYear, ...steady });
    expect([left(9), left(6), left(9) + left(6)]).toEqual([27, 18, 45]);
    expect(left(9.5) + left(6.4)).toBeCloseTo(47.7, 10);
  });

  it("with half the rate in the last two years is one year's growth less", () => {
    // Pritchett 1992, Clin Orthop 275:274–9: distal femur 13 mm a year from 7 years on, half of it in the last two years. Second method: month by month.
    for (let month = 7 * 12; month <= 17 * 12; month += 1) {
      let byMonths = 0;
      for (let later = month; later < 16 * 12; later += 1) byMonths += (later >= 14 * 12 ? 6.5 : 13) / 12;
      expect(remainingGrowthMm({ ageYears: month / 12, stopAgeYears: 16, mmPerYear: 13, slowYears: 2, slowShare: 0.5 })).toBeCloseTo(byMonths, 9);
    }
    expect(remainingGrowthMm({ ageYears: 10, stopAgeYears: 16, mmPerYear: 13, slowYears: 2, slowShare: 0.5 })).toBe(65);
  });

  it(`never grows with age, stops at the stop age, and adds up over the years (seed ${SEED})`, () => {
    check(fc.property(tenths(0, 18), tenths(1, 18), tenths(1, 15), tenths(0, 3), tenths(0, 1), (ageYears, stopAgeYears, mmPerYear, slowYears, slowShare) => {
      const left = (age: number) => remainingGrowthMm({ ageYears: age, stopAgeYears, mmPerYear, slowYears, slowShare });
      expect(left(ageYears + 0.5)).toBeLessThanOrEqual(left(ageYears));
      expect(left(ageYears)).toBeLessThanOrEqual(mmPerYear * Math.max(0, stopAgeYears - ageYears) + 0.000000001);
      expect(left(stopAgeYears)).toBe(0);
      expect(left(stopAgeYears + 3)).toBe(0);
    }));
  });
});

/** Multipliers of the lower limb after Paley and others 2000 (PubMed 11057472), at 1 to 17 years, as a table of them prints. */
const BOYS = [3.24, 2.59, 2.23, 2, 1.82, 1.67, 1.57, 1.47, 1.38, 1.31, 1.24, 1.18, 1.13, 1.08, 1.04, 1.01, 1];
const GIRLS = [2.97, 2.39, 2.05, 1.83, 1.66, 1.51, 1.43, 1.33, 1.26, 1.19, 1.13, 1.07, 1.03, 1, 1, 1, 1];

describe("the length at maturity", () => {
  it("has half of it reached at four years in boys and about three in girls", () => {
    // Common practice, no source: a leg has half its length at 4 years in boys, at 3 in girls.
    expect(multiplierLengthMm({ lengthMm: 400, multiplier: BOYS[3] ?? 0 })).toEqual({ maturityMm: 800, leftMm: 400 });
    const girl = multiplierLengthMm({ lengthMm: 400, multiplier: GIRLS[2] ?? 0 });
    expect(Math.abs(girl.leftMm / girl.maturityMm - 0.5)).toBeLessThan(0.02);
  });

  it("is the same length from every year of a child that grows by the table", () => {
    for (const table of [BOYS, GIRLS]) {
      let before = 0;
      for (const multiplier of table) {
        const lengthMm = 800 / multiplier;
        const { maturityMm, leftMm } = multiplierLengthMm({ lengthMm, multiplier });
        expect(maturityMm).toBeCloseTo(800, 9);
        expect(lengthMm + leftMm).toBeCloseTo(maturityMm, 9);
        expect(lengthMm).toBeGreaterThanOrEqual(before);
        before = lengthMm;
      }
    }
  });

  it("of a difference from birth grows with the legs: two legs apart are the difference by itself", () => {
    for (const multiplier of BOYS) {
      const mature = (lengthMm: number) => multiplierLengthMm({ lengthMm, multiplier }).maturityMm;
      expect(mature(420) - mature(395)).toBeCloseTo(mature(25), 9);
    }
    expect(multiplierLengthMm({ lengthMm: 812, multiplier: 1 })).toEqual({ maturityMm: 812, leftMm: 0 });
    expect(() => multiplierLengthMm({ lengthMm: 812, multiplier: 0.99 })).toThrow("multiplier must be at least 1, got 0.99");
  });
});

describe("a drill through a growth plate", () => {
  it("takes 2.5 per cent of the tibial plate, as measured on computed models of 8 mm tunnels", () => {
    // Kercher and others 2009, 10.1097/BPO.0b013e3181982228, 31 knees of 10 to 15 years: 318.4 of 12 683.1 µL, printed as 2.5 per cent.
    // Hole and plate are equally thick, so volumes behave as areas; the thickness drops out whatever it is.
    for (const angleDeg of [50, 60, 90]) {
      const { holeMm2 } = physisShare({ drillMm: 8, angleDeg, plateMm2: 5000 });
      const thicknessMm = 318.4 / holeMm2;
      const { share } = physisShare({ drillMm: 8, angleDeg, plateMm2: 12_683.1 / thicknessMm });
      expect((share * 100).toFixed(1)).toBe("2.5");
    }
  });

  it.each([90, 60, 45, 20])("at %d degrees is the area that points of the plate inside the drill take up", (angleDeg) => {
    // Second method: points of a fine grid in the plate whose distance from the drill's axis in space is at most its radius.
    const along = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)] as const;
    const stepMm = 0.05;
    let inside = 0;
    for (let x = -15; x <= 15; x += stepMm) {
      for (let y = -5; y <= 5; y += stepMm) {
        const onAxis = x * along[0];
        if (x * x + y * y - onAxis * onAxis <= 16) inside += 1;
      }
    }
    const { holeMm2 } = physisShare({ drillMm: 8, angleDeg, plateMm2: 2000 });
    expect(Math.abs((inside * stepMm ** 2) / holeMm2 - 1)).toBeLessThan(0.005);
  });

  it(`takes more the flatter and the thicker, four times as much at twice the width (seed ${SEED})`, () => {
    check(fc.property(tenths(2, 10), tenths(15, 89), (drillMm, angleDeg) => {
      const hole = (width: number, angle: number) => physisShare({ drillMm: width, angleDeg: angle, plateMm2: 100_000 }).holeMm2;
      expect(hole(drillMm, angleDeg)).toBeGreaterThan(hole(drillMm, angleDeg + 1));
      expect(hole(2 * drillMm, angleDeg)).toBeCloseTo(4 * hole(drillMm, angleDeg), 8);
      expect(hole(drillMm, 30)).toBeCloseTo(2 * hole(drillMm, 90), 8);
      const { share } = physisShare({ drillMm, angleDeg, plateMm2: hole(drillMm, angleDeg) });
      expect(share).toBe(1);
    }));
    expect(() => physisShare({ drillMm: 8, angleDeg: 91, plateMm2: 2000 })).toThrow("angleDeg must be greater than 0 and at most 90, got 91");
    expect(() => physisShare({ drillMm: 8, angleDeg: 90, plateMm2: 50 })).toThrow(/^plateMm2 must be at least 50\.26\d+, got 50$/);
  });
});

describe("every calculator of growth", () => {
  it.each(placesOf(CALCULATORS))("$calculator refuses what is no value for $parameter", ({ parameter, refusalOf }) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      const error = refusalOf(value);
      expect(error).toBeInstanceOf(RangeError);
      expect((error as RangeError).message).toMatch(new RegExp(`${parameter} must .+, got ${String(value)}$`));
    }
  });

  it.each(CALCULATORS)("$file does what its example says", (calculator) => {
    expect(() => calculator.run(...(calculator.legal as never[]))).not.toThrow();
    const examples = examplesOf(calculator);
    expect(examples).toHaveLength(1);
    for (const { got, expected } of examples) expect(got()).toEqual(expected());
  });
});
