import { describe, expect, it } from "vitest";
import { many, notRight, one } from "../support/second-way.ts";

/** Every family of module M01 beside a second way to its answer: another series, counting squares, or the rule in words. */

/** Bands of Beck 2019 by completed years: mean and standard deviation of the zone width, as printed. */
const BECK = [{ from: 5, to: 7, mean: 14.1, sd: 3.1 }, { from: 8, to: 10, mean: 15.8, sd: 2.5 }, { from: 11, to: 13, mean: 17.0, sd: 3.3 }, { from: 14, to: 16, mean: 17.2, sd: 3.1 }];
const bandAt = (years: number) => BECK.find(({ from, to }) => years >= from && years <= to);

/** Share of a normal distribution below z, by the midpoint rule over its density (no closed form). */
const below = (z: number): number => {
  const steps = 40_000;
  const width = (z + 12) / steps;
  return Array.from({ length: steps }, (_, step) => Math.exp(-((-12 + (step + 0.5) * width) ** 2) / 2)).reduce((sum, height) => sum + height * width, 0) / Math.sqrt(2 * Math.PI);
};

describe("the growing knee", () => {
  it("is covered as published: 52.66 and 64.71 per cent in the first three years, 50 and 58 in adults (Bloecker 2011)", () => {
    const shares: Readonly<Record<string, number>> = { "infant medial": 0.5266, "infant lateral": 0.6471, "adult medial": 0.5, "adult lateral": 0.58 };
    expect(notRight("cover-area", (item, of) => {
      const covered = of("areaMm2") * (shares[`${item.about["who"]} ${item.about["side"]}`] ?? 0);
      return many({ coveredMm2: covered, bareMm2: of("areaMm2") - covered }, 2);
    })).toEqual([]);
  });

  it("is as wide for its age as the printed bands of Beck 2019 say", () => {
    expect(notRight("z-score", (item, of) => {
      const { mean, sd } = bandAt(Number(item.about["years"])) ?? { mean: 0, sd: 1 };
      return one((of("distanceMm") - mean) / sd, 4);
    })).toEqual([]);
    expect(notRight("band-pick", (item) => {
      const years = Number(item.about["years"]);
      const band = bandAt(years);
      return { kind: "name", picks: { band: band ? `${band.from}-${band.to}` : "outside", line: years >= 10 && years <= 18 ? "inside" : "outside" } };
    })).toEqual([]);
  });

  it("has its bundle nearer in as many as the area under the curve: 22.7 per cent of boys at 4 mm (Schachne 2019)", () => {
    expect(100 * below((4 - 5.2) / 1.6)).toBeCloseTo(22.7, 1);
    const known = new Map<string, number>();
    expect(notRight("share-too-near", (item, of) => {
      const [mean, sd] = item.about["sex"] === "boys" ? [5.2, 1.6] : [4.6, 1.4];
      const key = `${mean} ${of("beyondMm")}`;
      known.set(key, known.get(key) ?? 100 * below((of("beyondMm") - mean) / sd));
      return one(known.get(key) ?? 0, 3);
    })).toEqual([]);
  });

  it("has shares of a compartment that hundredths laid side by side fill", () => {
    expect(notRight("width-share", (_, of) => {
      const [whole, width] = [of("compartmentMm"), of("widthMm")];
      let share = 0;
      while ((share * whole) / 100_000 < width) share += 1;
      return one(share / 1000, 3);
    })).toEqual([]);
  });

  it("lets a sheath in where tenths are left", () => {
    expect(notRight("fit-check", (_, of) => {
      const left = Math.round(of("openingMm") * 10) - Math.round(of("sheathOuterMm") * 10);
      return left <= 0 ? { kind: "sum", says: "none" } : one(left / 10, 1);
    })).toEqual([]);
  });

  it("keeps a width a width, and at its own age", () => {
    expect(notRight("width-is-not-depth", (item) => {
      const stem = item.stem.join(" ");
      if (/needle|depth beyond/.test(stem)) return { kind: "judge", picks: "reject", reasons: ["sideways"] };
      const [from = "", to = ""] = (item.about["band"] ?? "").split("-");
      const inside = Number(item.about["age"]) >= Number(from) && Number(item.about["age"]) <= Number(to);
      return inside ? { kind: "judge", picks: "accept", reasons: ["same-direction"] } : { kind: "judge", picks: "reject", reasons: ["other-age"] };
    })).toEqual([]);
  });
});
