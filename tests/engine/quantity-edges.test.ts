import { describe, expect, it } from "vitest";
import { compare, type Decimal, decimal, decimalOf, divide, multiply, toNumber, toText, trimmed } from "../../src/engine/quantity/decimal.ts";
import { numberText, printed, unitText, withUnit } from "../../src/engine/quantity/format.ts";
import { compareOnGrid, fromGrid, sumOnGrid, toGrid } from "../../src/engine/quantity/grid.ts";
import { parseQuantity } from "../../src/engine/quantity/parse.ts";
import { requireCount, requireFinite, requireNotNegative, requireNumber, requirePositive } from "../../src/engine/quantity/require.ts";
import { asAsked, type Rounding } from "../../src/engine/quantity/round.ts";
import { DEGREES_PER_RADIAN, RADIANS_PER_DEGREE, ROOT_TOLERANCE } from "../../src/engine/quantity/tolerance.ts";
import { convert, isUnitId, sameDimension, siblings, unitNamed } from "../../src/engine/quantity/units.ts";
import { acceptedSpan, add, exactOf, isInSpan, roundTo, subtract } from "../support/exact-marks.ts";

/** Where one digit more or less changes what happens. Expected values are worked by hand. */

const of = (units: bigint, places: number): Decimal => ({ units, places });

describe("exact decimals at their edges", () => {
  it("are read from plain text only", () => {
    expect([decimal("-12.50"), decimal("7"), decimal("0.005")]).toEqual([of(-1250n, 2), of(7n, 0), of(5n, 3)]);
    for (const text of ["", "1e3", " 1", "1.", ".5", "+1", "1,5", "--1"]) expect(() => decimal(text)).toThrow(`text must be a plain decimal number, got ${text}`);
    expect(decimalOf(2.345678, 3)).toEqual(of(2346n, 3));
  });
  it("are remembered for a while, so that a step is read once, and forgotten before they fill the memory", () => {
    const first = decimal("0.987654");
    expect(decimal("0.987654")).toBe(first);
    for (let index = 0; index < 5000; index += 1) decimal(`${index}.25`);
    expect(decimal("0.987654")).not.toBe(first);
    expect(decimal("0.987654")).toEqual(first);
  });
  it("compare, add and subtract across different numbers of places", () => {
    expect([compare(decimal("1.5"), decimal("1.50")), compare(decimal("1.5"), decimal("1.49")), compare(decimal("-2"), decimal("1.999"))]).toEqual([0, 1, -1]);
    expect([add(decimal("1.5"), decimal("0.25")), add(decimal("0.25"), decimal("10"))]).toEqual([of(175n, 2), of(1025n, 2)]);
    expect([subtract(decimal("1.5"), decimal("0.25")), subtract(decimal("1"), decimal("2.5"))]).toEqual([of(125n, 2), of(-15n, 1)]);
    expect(multiply(decimal("1.5"), decimal("-0.25"))).toEqual(of(-375n, 3));
    expect([compare(of(1n, 50), of(10n, 51)), compare(of(1n, 0), of(1n, 45))]).toEqual([0, 1]);
  });
  it("divide with halves away from zero", () => {
    const text = (first: string, second: string, places: number) => toText(divide(decimal(first), decimal(second), places));
    expect([text("1", "3", 4), text("2", "3", 4), text("-2", "3", 4)]).toEqual(["0.3333", "0.6667", "-0.6667"]);
    expect([text("1", "8", 2), text("-1", "8", 2), text("0.124", "1", 2), text("10", "4", 0), text("-10", "4", 0)]).toEqual(["0.13", "-0.13", "0.12", "3", "-3"]);
    expect([text("0", "7", 1), text("1.25", "0.5", 1), text("0.5", "1.25", 1), text("6", "-0.02", 0)]).toEqual(["0.0", "2.5", "0.4", "-300"]);
    expect([text("0.04", "1", 1), text("-0.04", "1", 1)]).toEqual(["0.0", "0.0"]);
    expect(() => divide(decimal("1"), decimal("0.00"), 2)).toThrow(new RangeError("second must not be 0, got 0"));
  });
  it("print every place, and lose only trailing zeros", () => {
    expect([of(5n, 3), of(-5n, 3), of(120n, 0), of(0n, 2), of(-520n, 2), of(-7n, 0)].map(toText)).toEqual(["0.005", "-0.005", "120", "0.00", "-5.20", "-7"]);
    expect([of(5200n, 3), of(100n, 0), of(0n, 2), of(120n, 1), of(1001n, 2), of(-50n, 1)].map(trimmed)).toEqual([of(52n, 1), of(100n, 0), of(0n, 0), of(12n, 0), of(1001n, 2), of(-5n, 0)]);
    expect(toNumber(decimal("-0.25"))).toBe(-0.25);
  });
});

describe("a typed number at its edges", () => {
  const read = (text: string, unit: Parameters<typeof parseQuantity>[1] = "mm") => {
    const reading = parseQuantity(text, unit);
    return "value" in reading ? { ...reading, value: toText(trimmed(reading.value)) } : reading;
  };
  it("may be 40 characters long and no longer", () => {
    expect(read(`${"0".repeat(37)}7.2`)).toMatchObject({ value: "7.2" });
    expect(read(`${"0".repeat(38)}7.2`)).toEqual({ reason: "too-long" });
    expect(read(`x${"9".repeat(39)}`)).toEqual({ reason: "not-first", found: `x${"9".repeat(39)}` });
  });
  it("may have nine powers of ten and no more", () => {
    expect([read("1e9"), read("1e-9"), read("2e0"), read("2E-1"), read("-2e+1")]).toEqual([
      { value: "1000000000", typed: "1" }, { value: "0.000000001", typed: "1" }, { value: "2", typed: "2" }, { value: "0.2", typed: "2" }, { value: "-20", typed: "-2" },
    ]);
    expect([read("1e10"), read("1e-10 mm")]).toEqual([{ reason: "too-long", found: "1e10" }, { reason: "too-long", found: "1e-10" }]);
  });
  it("keeps what was typed, and the unit only where it is another", () => {
    expect(read("1,64 cm")).toEqual({ value: "16.4", typed: "1.64", convertedFrom: "cm" });
    expect(read("-7 mm")).toEqual({ value: "-7", typed: "-7" });
    expect([read(".5"), read("5."), read("+ 5"), read("- 5")]).toEqual([{ value: "0.5", typed: "0.5" }, { value: "5", typed: "5" }, { value: "5", typed: "5" }, { value: "-5", typed: "-5" }]);
    expect([read("3 cm2", "mm2"), read("10 cmH2O", "kPa")]).toMatchObject([{ value: "300" }, { value: "0.980665" }]);
  });
  it("names the piece that it could not read", () => {
    expect([read("½"), read("abc"), read("--7"), read("0x1f"), read("+0x1f")]).toEqual([
      { reason: "fraction", found: "½" }, { reason: "no-number", found: "abc" }, { reason: "not-first", found: "--7" }, { reason: "no-number", found: "0x1f" }, { reason: "no-number", found: "+0x1f" },
    ]);
    expect([read("1/2"), read("1 1/2"), read("3½"), read("1x5"), read("7 8"), read("12 50")]).toEqual([
      { reason: "fraction", found: "/2" }, { reason: "fraction", found: "1/2" }, { reason: "fraction", found: "½" }, { reason: "two-numbers", found: "x5" }, { reason: "two-numbers", found: "8" }, { reason: "two-numbers", found: "50" },
    ]);
    expect([read("5 zorps"), read("5 mm2"), read("5 kg."), read("0 xyz"), read("10xa")]).toEqual([
      { reason: "unknown-unit", found: "zorps" }, { reason: "foreign-unit", found: "mm2" }, { reason: "foreign-unit", found: "kg." }, { reason: "unknown-unit", found: "xyz" }, { reason: "unknown-unit", found: "xa" },
    ]);
  });
  it("has two readings where a thousands mark is possible, and one where it is not", () => {
    for (const text of ["1,640", "12 500", "12'500", "1.234.5", "999,999"]) expect(read(text)).toEqual({ reason: "two-readings", found: text });
    expect([read("0,640"), read("1640,500"), read("1,64"), read("1,6405"), read("1.640")].map((reading) => "value" in reading && reading.value)).toEqual(["0.64", "1640.5", "1.64", "1.6405", "1.64"]);
  });
});

describe("guards", () => {
  const thrown = (work: () => void): string => {
    try {
      work();
    } catch (error) {
      return error instanceof RangeError ? error.message : "another error";
    }
    return "";
  };
  it("leave the ends of a range out unless they are said to be in", () => {
    const open = { least: 0, greatest: 1 };
    const closed = { ...open, leastIncluded: true, greatestIncluded: true };
    expect([0.5, 0, 1, -1, 2].map((value) => thrown(() => requireNumber("share", value, open)))).toEqual(["", ...[0, 1, -1, 2].map((value) => `share must be greater than 0 and less than 1, got ${value}`)]);
    expect([0.5, 0, 1, -1, 2].map((value) => thrown(() => requireNumber("share", value, closed)))).toEqual(["", "", "", ...[-1, 2].map((value) => `share must be at least 0 and at most 1, got ${value}`)]);
  });
  it("take any finite number where no range is named, and one end alone", () => {
    expect(thrown(() => requireNumber("width", -5))).toBe("");
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, "5", null]) expect(thrown(() => requireNumber("width", value))).toBe(`width must be a finite number, got ${String(value)}`);
    expect([thrown(() => requireNumber("width", 4, { greatest: 3 })), thrown(() => requireNumber("width", -4, { greatest: 3 }))]).toEqual(["width must be less than 3, got 4", ""]);
    expect([thrown(() => requireNumber("width", 2, { least: 3 })), thrown(() => requireNumber("width", 99, { least: 3 }))]).toEqual(["width must be greater than 3, got 2", ""]);
  });
  it("check every named value", () => {
    expect([thrown(() => requirePositive({ a: 1, b: 0 })), thrown(() => requirePositive({ a: 1, b: 0.1 }))]).toEqual(["b must be greater than 0, got 0", ""]);
    expect([thrown(() => requireNotNegative({ a: 0, b: -1 })), thrown(() => requireNotNegative({ a: 0, b: 1 }))]).toEqual(["b must be at least 0, got -1", ""]);
    expect([thrown(() => requireFinite({ a: -1, b: Number.NaN })), thrown(() => requireFinite({ a: -1, b: 0 }))]).toEqual(["b must be a finite number, got NaN", ""]);
    expect([thrown(() => requireCount({ a: 0, b: 1.5 })), thrown(() => requireCount({ a: 0, b: -1 })), thrown(() => requireCount({ a: 0, b: 2 ** 53 })), thrown(() => requireCount({ a: 0, b: 12 }))]).toEqual([
      "b must be a whole number, got 1.5", "b must be at least 0, got -1", "b must be a whole number, got 9007199254740992", "",
    ]);
  });
});

describe("rounding at the halves", () => {
  const rounded = (value: string, step: string, rounding: Rounding) => toText(trimmed(roundTo(decimal(value), decimal(step), rounding)));
  it("goes up at a half, also below zero", () => {
    expect([rounded("2.5", "1", "nearest"), rounded("2.49", "1", "nearest"), rounded("-2.5", "1", "nearest"), rounded("-2.51", "1", "nearest")]).toEqual(["3", "2", "-2", "-3"]);
    expect([rounded("-2.5", "1", "down"), rounded("-2.5", "1", "up"), rounded("-4", "1", "down"), rounded("-4", "1", "up")]).toEqual(["-3", "-2", "-4", "-4"]);
    expect([rounded("7.3", "0.5", "nearest"), rounded("7.2", "0.5", "nearest"), rounded("7", "0.25", "up"), rounded("7.1", "0.25", "down"), rounded("7.1", "0.25", "up")]).toEqual(["7.5", "7", "7", "7", "7.25"]);
    expect([rounded("1234.5", "10", "nearest"), rounded("1235", "10", "nearest"), rounded("0.04", "0.1", "up")]).toEqual(["1230", "1240", "0.1"]);
  });
  it("types an answer with the places of its step", () => {
    expect([asAsked(0.05, 0.1, "nearest"), asAsked(-0.05, 0.1, "nearest"), asAsked(0.0499, 0.1, "nearest"), asAsked(-7.2, 0.5, "down"), asAsked(-7.2, 0.5, "up")]).toEqual(["0.1", "0.0", "0.0", "-7.5", "-7.0"]);
    expect([asAsked(1_234_567.25, 1, "down"), asAsked(7, 0.25, "up"), asAsked(7.5, 0.5, "up"), asAsked(0, 0.1, "down"), asAsked(7.3, 2, "nearest")]).toEqual(["1234567", "7.00", "7.5", "0.0", "8"]);
    expect([asAsked(1_000_000_000, 1, "down"), asAsked(-1_000_000_000, 1, "down")]).toEqual(["1000000000", "-1000000000"]);
    for (const value of [1_000_000_001, -1_000_000_001, Number.NaN]) expect(() => asAsked(value, 1, "down")).toThrow(new RangeError(`value must be at most 1000000000, got ${value}`));
  });
  it("accepts half a step to both sides, or from the exact value to the rounded one", () => {
    expect([acceptedSpan(7.24, 0.1, "nearest"), acceptedSpan(7.3, 1, "nearest"), acceptedSpan(7.3, 0.5, "nearest"), acceptedSpan(0.02, 0.1, "nearest")]).toEqual([{ from: "7.15", to: "7.25" }, { from: "6.5", to: "7.5" }, { from: "7.25", to: "7.75" }, { from: "-0.05", to: "0.05" }]);
    expect([acceptedSpan(7.234567, 0.1, "down"), acceptedSpan(7.234567, 0.1, "up"), acceptedSpan(7.2, 0.1, "down"), acceptedSpan(-7.25, 0.1, "up"), acceptedSpan(10, 1, "up")]).toEqual([{ from: "7.2", to: "7.234567" }, { from: "7.234567", to: "7.3" }, { from: "7.2", to: "7.2" }, { from: "-7.25", to: "-7.2" }, { from: "10", to: "10" }]);
    expect(["7.14", "7.15", "7.2", "7.25", "7.26"].map((text) => isInSpan(decimal(text), { from: "7.15", to: "7.25" }))).toEqual([false, true, true, true, false]);
    expect(exactOf(3.2000000000000002)).toEqual(of(3_200_000n, 6));
  });
});

describe("units at their edges", () => {
  it("are named in any case and by their other spellings", () => {
    expect(["mm", "MM", "ml", "l", "μg", "Inches", "per cent", "kpa", "×", "zorps", "toString"].map(unitNamed)).toEqual(["mm", "mm", "mL", "L", "micrograms", "in", "%", "kPa", "times", null, null]);
    expect([isUnitId("mm"), isUnitId("MM"), isUnitId("toString")]).toEqual([true, false, false]);
  });
  it("turn only into units of their own kind", () => {
    expect([sameDimension("mm", "in"), sameDimension("mm", "mm2")]).toEqual([true, false]);
    expect([siblings("mm"), siblings("N"), siblings("kPa")]).toEqual([["cm", "m", "in"], [], ["mmHg", "cmH2O"]]);
    expect(() => convert(decimal("1"), "mm", "kg")).toThrow(new RangeError("to must measure length, got kg"));
    const same = decimal("1.50");
    expect(convert(same, "mm", "mm")).toBe(same);
  });
  it("keep twelve places, or more where the value has more", () => {
    expect(toText(convert(decimal("1"), "mm", "in"))).toBe("0.039370078740");
    expect(toText(convert(decimal("0.00001"), "mmHg", "kPa"))).toBe("0.00000133322387");
    expect(toText(trimmed(convert(decimal("1"), "in", "cm")))).toBe("2.54");
  });
  // NIST Special Publication 811 (2008), appendix B.8: 1 degree is 1.745 329 E-02 rad.
  it("turn degrees into radians and back", () => {
    expect(RADIANS_PER_DEGREE).toBeCloseTo(0.01745329, 8);
    expect(DEGREES_PER_RADIAN * RADIANS_PER_DEGREE).toBeCloseTo(1, 12);
    expect(ROOT_TOLERANCE * 1_000_000_000).toBeCloseTo(1, 6);
  });
  it("are printed by their own custom", () => {
    expect([withUnit("-3", "pieces"), withUnit("-3", "deg"), withUnit("-3", "mm"), withUnit("4", "cmH2O"), withUnit("5", "%")]).toEqual(["−3", "−3°", "−3\u2009mm", "4\u2009cmH₂O", "5\u2009%"]);
    expect([printed("-1-2"), numberText(-0.25, 2), numberText(3, 0), unitText("mPas"), unitText("mm")]).toEqual(["−1-2", "−0.25", "3", "mPa·s", "mm"]);
  });
});

describe("the grid at its edges", () => {
  it("sums and compares in millionths", () => {
    expect([sumOnGrid(), sumOnGrid(1.000001, -0.000001), sumOnGrid(0.5), toGrid(0.25), toGrid(0.0000006), fromGrid(250_000)]).toEqual([0, 1, 0.5, 250_000, 1, 0.25]);
    expect([compareOnGrid(1, 2), compareOnGrid(2, 1), compareOnGrid(1, 1.0000001), compareOnGrid(1.000002, 1.000001)]).toEqual([-1, 1, 0, 1]);
  });
});
