import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compare, decimal, divide, multiply, toText, trimmed } from "../../src/engine/quantity/decimal.ts";
import { compareOnGrid, fromGrid, sumOnGrid, toGrid } from "../../src/engine/quantity/grid.ts";
import { parseQuantity } from "../../src/engine/quantity/parse.ts";
import { asAsked } from "../../src/engine/quantity/round.ts";
import { convert, UNITS, type UnitId } from "../../src/engine/quantity/units.ts";
import { asWritten, numberText, withUnit } from "../../src/engine/quantity/format.ts";
import { howMany } from "../support/how-many.ts";
import { acceptedSpan, isInSpan } from "../support/exact-marks.ts";

const SEED = 20261125;
const read = (text: string, unit: UnitId = "mm"): string => {
  const reading = parseQuantity(text, unit);
  return "value" in reading ? toText(trimmed(reading.value)) : reading.reason;
};

describe("reading what a learner typed", () => {
  it("takes one number in many spellings", () => {
    const same = ["16.4", "16,4", "16.4 mm", "16,4mm", "1.64 cm", "0.0164 m", " 16.4 ", "+16.4", "1.64e1", "16.40", "16.4\u00a0mm", "16.4\u2009mm", "16.4 MM", "16.4 mm."];
    expect(same.map((text) => [text, read(text)])).toEqual(same.map((text) => [text, "16.4"]));
  });
  it("takes a true minus sign and a hyphen, and no plus-minus", () => {
    expect([read("−3.5"), read("-3.5"), read("–3.5")]).toEqual(["-3.5", "-3.5", "-3.5"]);
    expect(read("±3.5")).not.toBe("3.5");
  });
  it("names the reason for everything else", () => {
    const reasons = {
      "": "empty", "   ": "empty", abc: "no-number", "1,640": "two-readings", "16.4 kg": "foreign-unit", "16.4 zorps": "unknown-unit",
      "7 or 8": "two-numbers", "7-8": "two-numbers", "7 8": "two-numbers", "1/2": "fraction", "½": "fraction", "0x10": "no-number", NaN: "no-number", Infinity: "no-number", "--7": "not-first", "about 7": "not-first", "about 7 or 8": "two-numbers", "≈12,5": "not-first", ["9".repeat(400)]: "too-long",
    };
    expect(Object.keys(reasons).map((text) => [text.slice(0, 12), read(text)])).toEqual(Object.entries(reasons).map(([text, reason]) => [text.slice(0, 12), reason]));
    expect(read("1.640,5")).toBe("two-readings");
  });
  it(`never throws, whatever is typed (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.string({ maxLength: 60, unit: "binary" }), (text) => typeof read(text) === "string"), { seed: SEED, numRuns: howMany(2000, 150) });
  });
  it(`reads back every number that it prints (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: 0, max: 4 }), (units, places) => {
      const text = (units / 10 ** places).toFixed(places);
      return compare(decimal(read(withUnit(text, "mm"))), decimal(text)) === 0;
    }), { seed: SEED, numRuns: howMany(2000, 150) });
  });
});

describe("exact decimals", () => {
  it(`agree with whole numbers (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n }), fc.bigInt({ min: 1n, max: 10n ** 9n }), (a, b) => {
      const product = multiply({ units: a, places: 3 }, { units: b, places: 2 });
      return compare(product, { units: a * b, places: 5 }) === 0 && compare(divide(product, { units: b, places: 2 }, 3), { units: a, places: 3 }) === 0;
    }), { seed: SEED });
  });
});

describe("units", () => {
  // International yard and pound agreement of 1959: 1 inch is exactly 25.4 mm, 1 pound 0.453 592 37 kg; 1 mmHg is 133.322 387 415 Pa (BIPM, SI brochure, 8th edition, table 8).
  it("convert exactly where a definition says so", () => {
    expect(toText(trimmed(convert(decimal("1"), "cm", "mm")))).toBe("10");
    expect(toText(trimmed(convert(decimal("2.5"), "m", "mm")))).toBe("2500");
    expect(toText(trimmed(convert(decimal("250"), "mL", "L")))).toBe("0.25");
    expect(toText(trimmed(convert(decimal("0.5"), "g", "mg")))).toBe("500");
    expect(Number(toText(convert(decimal("1"), "mmHg", "kPa")))).toBeCloseTo(0.133322387415, 6);
  });
  it("come back where they started", () => {
    const pairs = Object.keys(UNITS).flatMap((from) => Object.keys(UNITS).filter((to) => UNITS[from as UnitId].dimension === UNITS[to as UnitId].dimension && Number(UNITS[from as UnitId].size) >= Number(UNITS[to as UnitId].size)).map((to) => [from, to] as const));
    const failed = pairs.filter(([from, to]) => Math.abs(Number(toText(convert(convert(decimal("7.25"), from as UnitId, to as UnitId), to as UnitId, from as UnitId))) - 7.25) > 1e-6);
    expect(failed).toEqual([]);
  });
});

describe("the grid", () => {
  it("adds tenths without the noise of doubles", () => {
    expect(0.1 + 0.2).not.toBe(0.3);
    expect(sumOnGrid(0.1, 0.2)).toBe(0.3);
    expect(compareOnGrid(sumOnGrid(4, 5.2, -2), 7.2)).toBe(0);
    expect(fromGrid(toGrid(12.345678))).toBe(12.345678);
  });
});

describe("rounding and acceptance", () => {
  it("accepts exactly from the rounded to the exact value, on the side of the rounding", () => {
    expect(acceptedSpan(7.2, 0.5, "down")).toEqual({ from: "7.0", to: "7.2" });
    expect(acceptedSpan(7.2, 0.5, "up")).toEqual({ from: "7.2", to: "7.5" });
    expect(asAsked(7.25, 0.1, "down")).toBe("7.2");
    expect(asAsked(7.25, 0.1, "up")).toBe("7.3");
  });
  it(`accepts its own answer in every direction and nothing a whole step away (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 99_999 }), fc.constantFrom(0.1, 0.5, 1), fc.constantFrom("nearest", "down", "up"), (hundredths, step, rounding) => {
      const exact = hundredths / 100;
      const span = acceptedSpan(exact, step, rounding as "down");
      const answer = decimal(asAsked(exact, step, rounding as "down"));
      const far = decimal((Number(toText(answer)) + 1.01 * step).toFixed(4));
      return isInSpan(answer, span) && !isInSpan(far, span);
    }), { seed: SEED, numRuns: howMany(3000, 150) });
  });
});

describe("printing", () => {
  it("prints a true minus sign and a thin space", () => {
    expect(numberText(-1, 1)).toBe("−1.0");
    expect(withUnit("7.2", "mm")).toBe("7.2\u2009mm");
    expect(withUnit("30", "deg")).toBe("30°");
  });
});

describe("a number with its unit", () => {
  it("carries no trailing zero where it is a dose, and keeps its digits elsewhere", () => {
    expect([["20.0", "mg"], ["17.60", "mL"], ["+10.0", "mg"], ["100", "mg"], ["0.5", "mg/kg"]].map(([text = "", unit]) => asWritten(text, unit as "mg"))).toEqual(["20", "17.6", "+10", "100", "0.5"]);
    expect([asWritten("7.0", "mm"), asWritten("20.0", undefined)]).toEqual(["7.0", "20.0"]);
  });
});
