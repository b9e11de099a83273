import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { chanceFor, chanceFrom } from "../../src/engine/random/chance.ts";
import { seedText } from "../../src/engine/random/seed.ts";
import { sha256Hex, sha256Words } from "../../src/engine/random/sha256.ts";
import { splitmix32, xoshiro128 } from "../../src/engine/random/xoshiro.ts";

const take = (next: () => number, count: number): number[] => Array.from({ length: count }, () => next());

describe("the generator", () => {
  // Vectors of the public reference crate for these generators (rand_xoshiro, tests of Xoshiro128StarStar, state 1 2 3 4).
  it("gives the published numbers of xoshiro128** from the state 1, 2, 3, 4", () => {
    expect(take(xoshiro128([1, 2, 3, 4]), 10)).toEqual([11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804]);
  });

  // Computed once by an independent implementation in another language; the rule is the 32-bit finaliser of MurmurHash3 over a Weyl sequence.
  it.each([
    [0, [1684164658, 3653269916, 2939563536, 2141751570], [1789933344, 44971166, 2521387044, 3848737593]],
    [42, [551831576, 144025891, 322543647, 3034809370], [660444221, 3652823732, 77672526, 910233633]],
  ])("spreads the seed %i over a state", (seed, state, numbers) => {
    expect(take(splitmix32(seed), 4)).toEqual(state);
    expect(take(xoshiro128(state), 4)).toEqual(numbers);
  });
});

describe("SHA-256", () => {
  // FIPS 180-4, examples of the standard: the empty text and "abc".
  it("gives the digests of the standard", () => {
    expect(sha256Hex("")).toBe("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    expect(sha256Hex("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    expect(sha256Words("abc")[0]).toBe(0xba7816bf);
  });
  it("agrees with the platform's own digest at every length around a block, and beyond ASCII", () => {
    const texts = [...Array.from({ length: 130 }, (_, length) => "k".repeat(length)), "Knie – 7,2 mm", "膝関節鏡", "🦵".repeat(40)];
    expect(texts.filter((text) => sha256Hex(text) !== createHash("sha256").update(text).digest("hex"))).toEqual([]);
  });
});

describe("draws", () => {
  it("reach every value of a grid, both ends included, about equally often", () => {
    const chance = chanceFor("test", 1, "3");
    const counts = new Map<number, number>();
    for (let draw = 0; draw < 21_000; draw += 1) {
      const value = chance.onGrid({ least: 2, greatest: 4, step: 0.1 });
      counts.set(value, (counts.get(value) ?? 0) + 1);
    }
    expect([...counts.keys()].sort((a, b) => a - b)).toEqual(Array.from({ length: 21 }, (_, step) => (20 + step) / 10));
    // Chi-square with 20 degrees of freedom: 45.3 is passed by chance once in a thousand (tables of any textbook).
    const square = [...counts.values()].reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
    expect(square).toBeLessThan(45.3);
  });
  it("shuffle into every order of three about equally often", () => {
    const chance = chanceFor("test", 1, "4");
    const counts = new Map<string, number>();
    for (let draw = 0; draw < 6000; draw += 1) {
      const order = chance.shuffled(["a", "b", "c"]).join("");
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect(counts.size).toBe(6);
    expect(Math.min(...counts.values())).toBeGreaterThan(850);
    expect(Math.max(...counts.values())).toBeLessThan(1150);
  });
  it("refuse an impossible count, and reject words that would bias", () => {
    const words = [4294967295, 5];
    expect(chanceFrom(() => words.shift() ?? 0).below(10)).toBe(5);
    expect(() => chanceFrom(() => 0).below(0)).toThrow("count must be a whole number from 1 to 4294967296, got 0");
  });
  it("depend on family, version and seed together", () => {
    const first = (family: string, version: number, seed: string) => chanceFor(family, version, seed).below(4294967296);
    expect(new Set([first("a", 1, "1"), first("b", 1, "1"), first("a", 2, "1"), first("a", 1, "2")]).size).toBe(4);
  });
});

describe("seeds", () => {
  it("are whole numbers or 32 hexadecimal digits", () => {
    expect(seedText(7)).toBe("7");
    expect(seedText("0123456789abcdef0123456789abcdef")).toBe("0123456789abcdef0123456789abcdef");
    for (const bad of [-1, 1.5, 4294967296, Number.NaN, "abc", "g".repeat(32)]) expect(() => seedText(bad as never)).toThrow(RangeError);
  });
});
