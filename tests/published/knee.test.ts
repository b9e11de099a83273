import { describe, expect, it } from "vitest";
import { structureOf, kneeFrom } from "../../src/engine/knee/knee.ts";
import { bundleDistances } from "../../src/engine/knee/bundle-distances.ts";
import { kneePopulation } from "../../src/engine/knee/population.ts";
import { shortestToArtery } from "../../src/engine/knee/shortest-to-artery.ts";
import { zoneWidths } from "../../src/engine/knee/zone-widths.ts";
import { ADULT_CAPSULE_MM, KNEE_BANDS, type KneeBand, type KneeSex, kneeModel, kneeSizes } from "../../src/facts/knee-model.ts";
import { residuals } from "../../src/facts/knee-residuals.ts";
import { kneeGroup, touchShares } from "../../src/facts/knee-shares.ts";

const SEED = 20261125;
const KNEES = 10_000;
const kneeOf = (band: KneeBand, sex?: KneeSex) => kneeFrom(kneeSizes({ band, side: "right", capsuleMm: ADULT_CAPSULE_MM, ...(sex ? { sex } : {}) }));
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const spread = (values: readonly number[]): number => Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)));

describe("the model knee against the published tables", () => {
  // Beck and others 2019, Arthroscopy, abstract: D3 and D4 (8 mm in front) by age, n = 61, 59, 60, 70; full extension.
  it.each([["5-7", 14.1, 11.39], ["8-10", 15.8, 13.24], ["11-13", 17, 14.59], ["14-16", 17.2, 14.8]] as const)("gives both widths of the zone at %s years within 0.1 mm", (band, junctionMm, frontMm) => {
    const widths = zoneWidths(kneeOf(band), 8);
    expect(Math.abs(widths.junctionMm - junctionMm)).toBeLessThan(0.1);
    expect(Math.abs(widths.frontMm - frontMm)).toBeLessThan(0.1);
  });

  // Schachne and others 2019, DOI 10.1177/2325967119855027: 144 scans of 10 to 18 years, free edge, midpoint, junction.
  it.each([["boys", 14.4, 9.6, 5.2], ["girls", 13.1, 8.9, 4.6]] as const)("gives the distances of %s along the anterolateral line within 0.5 mm, in both bands", (sex, freeEdgeMm, middleMm, junctionMm) => {
    for (const band of ["11-13", "14-16"] as const) {
      const distances = bundleDistances(kneeOf(band, sex));
      expect(Math.abs(distances.freeEdgeMm - freeEdgeMm)).toBeLessThan(0.5);
      expect(Math.abs(distances.middleMm - middleMm)).toBeLessThan(0.5);
      expect(Math.abs(distances.junctionMm - junctionMm)).toBeLessThan(0.5);
    }
  });

  // Shea and others 2019, DOI 10.1177/2325967119842843: 26 cadaver knees; bands 2–4, 5–8, 9–11 by their middles 3, 6.5, 10 years.
  it("gives the shortest distances from both menisci to the artery within 0.7 mm, between the middles of its bands", () => {
    const at = Object.fromEntries(KNEE_BANDS.map((band) => [band, shortestToArtery(kneeOf(band))]));
    const between = (younger: string, older: string, share: number) => (["lateralMm", "medialMm"] as const).map((side) => (at[younger]?.[side] ?? 0) * (1 - share) + (at[older]?.[side] ?? 0) * share);
    const off = (model: readonly number[], published: readonly number[]) => Math.max(...model.map((value, index) => Math.abs(value - (published[index] ?? 0))));
    expect(off(between("2-4", "5-7", 0), [5.2, 12.7])).toBeLessThan(0.7);
    expect(off(between("5-7", "8-10", 0.5 / 3), [6.7, 15.4])).toBeLessThan(0.7);
    expect(off(between("8-10", "11-13", 1 / 3), [8.2, 20.3])).toBeLessThan(0.7);
  });

  it("prints those residuals itself: every fitted value inside what is asked, every one with its source", () => {
    const lines = residuals();
    expect(lines.length).toBe(21);
    for (const { entry, published, model, difference, allowed, fitted, source } of lines) {
      expect(difference).toBeCloseTo(model - published, 12);
      expect(source).not.toBeNull();
      expect(fitted).toBe(allowed !== null);
      expect(Math.abs(difference), entry).toBeLessThan(allowed ?? 1);
    }
    expect(lines.filter(({ fitted }) => !fitted).map(({ entry }) => entry)).toEqual(["bicondylar-width.2-15@1"]);
  });

  // Houston and others 2025, DOI 10.1177/23259671241304817: 45 % and 19 % of 124 scans; second pair 8.9 % and 29 %, target inferred.
  it(`lets lines to the lateral edge touch the nerve as often as simulated, in ${KNEES} knees (seed ${SEED})`, () => {
    const [al, am, alSecond, amSecond] = touchShares(SEED, KNEES);
    expect([al?.published, am?.published]).toEqual([0.45, 0.19]);
    expect([al?.low, al?.high, am?.low, am?.high].map((end) => Math.round(100 * (end ?? 0)))).toEqual([37, 54, 13, 27]);
    expect([al?.inside, am?.inside]).toEqual([true, true]);
    expect([alSecond?.fitted, amSecond?.fitted]).toEqual([false, false]);
    // Which portal is worse turns round at the medial edge, as in the second pair.
    expect(al?.model ?? 0).toBeGreaterThan(am?.model ?? 1);
    expect(amSecond?.model ?? 0).toBeGreaterThan(alSecond?.model ?? 1);
  });

  // The same tables: SD of D3 3.1, 2.5, 3.3, 3.1 (Beck); SD of the gap 1.6 and 1.4 (Schachne).
  it(`spreads drawn knees as published (seed ${SEED})`, () => {
    for (const [band, sd] of [["5-7", 3.1], ["8-10", 2.5], ["11-13", 3.3], ["14-16", 3.1]] as const) {
      const knees = kneePopulation({ groups: [kneeGroup(band)], seed: SEED, count: 2000 });
      expect(Math.abs(spread(knees.map((knee) => zoneWidths(knee, 8).junctionMm)) / sd - 1), band).toBeLessThan(0.08);
    }
    const grown = kneePopulation({ groups: [kneeGroup("11-13"), kneeGroup("14-16")], seed: SEED, count: 4000 }).map((knee) => bundleDistances(knee).junctionMm);
    expect(Math.abs(mean(grown) - 4.9)).toBeLessThan(0.1);
    expect(Math.abs(spread(grown) - 1.5)).toBeLessThan(0.1);
  });

  // Mun and others 2022, DOI 10.1097/BPO.0000000000002208: the artery lies lateral of the midline in all 42 knees of 12 to 17 years.
  it("has the artery lateral of the midline at every age", () => {
    for (const band of KNEE_BANDS) expect(structureOf(kneeOf(band), "artery").centre.xMm).toBeGreaterThan(0);
  });

  // Not met, and said so in the ledger: adults have 17.4 mm from meniscus to peroneal nerve (Sanz-Perez 2015), the model far less.
  it("does not reach the adult distance from meniscus to peroneal nerve, as its list of conflicts says", () => {
    const knee = kneeOf("14-16");
    const { centre, radiusMm } = structureOf(knee, "peroneal-nerve");
    const rim = knee.lateral.rim;
    expect(Math.hypot(centre.xMm - rim.centre.xMm, centre.yMm - rim.centre.yMm) - rim.radiusMm - radiusMm).toBeLessThan(17.4);
    expect(kneeModel("peroneal-back.reference@1").state).toBe("derived");
  });
});
