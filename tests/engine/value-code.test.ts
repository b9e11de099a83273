import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decimal } from "../../src/engine/quantity/decimal.ts";
import { isPlain } from "../../src/engine/quantity/parse.ts";
import { acceptedGrid } from "../../src/engine/quantity/round.ts";
import { compareTyped, typedPlain, typedText, typedValue } from "../../src/engine/quantity/typed.ts";
import type { AskSpec } from "../../src/engine/question/family-head.ts";
import { once } from "../../src/engine/question/once.ts";
import { perDraw } from "../../src/engine/question/per-draw.ts";
import { codeOf } from "../../src/engine/question/value-code.ts";
import { exactCode } from "../support/exact-marks.ts";
import { howMany } from "../support/how-many.ts";

const SEED = 20261201;

const ASKS: fc.Arbitrary<AskSpec> = fc.record({
  id: fc.constant("one"),
  unit: fc.constantFrom("mm", "cm", "mmHg", "mL", "L", "mg", "kg", "min", "%", "deg", "pieces", "mL/min"),
  roundTo: fc.constantFrom(0.01, 0.05, 0.1, 0.5, 1, 5, 10, 100),
  rounding: fc.constantFrom("nearest", "down", "up"),
  safeSide: fc.constantFrom("up", "down", "none"),
});
const EXACT = fc.oneof(fc.integer({ min: -200_000, max: 900_000 }).map((hundredths) => hundredths / 100), fc.double({ min: -50, max: 5000, noNaN: true }));
/** What people type: near the answer, a power of ten, an inch, an hour or a kilopascal off, rounded otherwise, or anything. */
const FACTORS = fc.constantFrom(1, 10, 0.1, 100, 0.01, 1000, 0.001, 25.4, 1 / 25.4, 60, 1 / 60, 133.322387415, 1 / 7.50062, 1.0001, 0.5, 2, -1, 0);
const PLACES = fc.integer({ min: 0, max: 9 });

describe("the verdict of one value", () => {
  it(`is in whole millionths what it is in exact decimals (seed ${SEED})`, () => {
    const met = new Set<string>();
    fc.assert(fc.property(ASKS, EXACT, FACTORS, PLACES, fc.boolean(), (ask, exact, factor, places, unsafe) => {
      const value = decimal((exact * factor).toFixed(places));
      const code = codeOf(typedValue(value), ask, { span: acceptedGrid(exact, ask.roundTo, ask.rounding), exact, unsafe });
      met.add(code);
      return code === exactCode(value, ask, { exact, unsafe });
    }), { seed: SEED, numRuns: howMany(30_000, 1500) });
    expect(met.size).toBe(5);
  });
  it("is no rounding where it is nothing, with however many zeros", () => {
    const ask: AskSpec = { id: "one", unit: "mm", roundTo: 1, rounding: "nearest", safeSide: "none" };
    const code = (text: string) => codeOf(typedValue(decimal(text)), ask, { span: acceptedGrid(4, 1, "nearest"), exact: 4, unsafe: false });
    expect([code("0"), code("0.000000"), code("0.0000000"), code("-0.00000000"), code("10.0000000")]).toEqual(["safe-side", "safe-side", "safe-side", "safe-side", "rounding"]);
  });
  it(`reads plain digits as the exact decimal that they are (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 999_999_999 }), fc.stringMatching(/^\d{0,6}$/), (whole, digits) => {
      const text = digits === "" ? String(whole) : `${whole}.${digits}`;
      const [plain, slow] = [typedPlain(text), typedValue(decimal(text))];
      return isPlain(text) && plain.grid === slow.grid && typedText(plain) === typedText(slow) && plain.exact() === slow.exact();
    }), { seed: SEED, numRuns: howMany(20_000, 1000) });
  });
  it("is exact beyond what a double holds", () => {
    const long = typedValue(decimal("7.20000000000000001"));
    expect([long.grid, compareTyped(long, 7_200_000) > 0, typedText(long)]).toEqual([null, true, "7.20000000000000001"]);
    const far = typedValue(decimal("99999999999999999999"));
    expect([far.grid, compareTyped(far, 1_000_000_000_000_000) > 0, compareTyped(typedValue(decimal("-99999999999999999999")), 0) < 0]).toEqual([null, true, true]);
    expect([typedText(typedValue(decimal("7.250"))), typedText(typedValue(decimal("-0.50"))), typedText(typedValue(decimal("100")))]).toEqual(["7.25", "-0.5", "100"]);
  });
});

describe("a formula that is worked out once a draw", () => {
  it("works again for other values, and only then", () => {
    let worked = 0;
    const sum = once(({ a = 0, b = 0 }) => { worked += 1; return a + b; });
    const [first, second] = [{ a: 1, b: 2 }, { a: 1, b: 2 }];
    expect([sum(first), sum(first), sum(second), sum(first), worked]).toEqual([3, 3, 3, 3, 3]);
    const about = { side: "left" };
    expect([sum(first, about), sum(first, about), worked]).toEqual([3, 3, 4]);
  });
  it("is kept for one family and one draw", () => {
    let made = 0;
    const count = perDraw((family: { readonly factor: number }, { givens }) => { made += 1; return family.factor * (givens["a"] ?? 0); });
    const [twice, thrice] = [{ factor: 2 }, { factor: 3 }];
    const draw = { givens: { a: 5 }, about: {} };
    expect([count(twice, draw), count(twice, draw), count(thrice, draw), count(thrice, { ...draw }), made]).toEqual([10, 10, 15, 15, 3]);
  });
});
