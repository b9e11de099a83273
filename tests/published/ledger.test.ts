import { describe, expect, it } from "vitest";
import { baseRateBehind, predictiveValues, shareNearer, wilson } from "../../src/engine/index.ts";
import { LEDGER, ledgerEntry } from "../../src/facts/ledger.ts";
import { SOURCES } from "../../src/facts/sources.ts";

/** The ledger against itself and against what its papers print elsewhere. */

type Part = "mean" | "sd" | "value" | "from" | "to" | "median" | "events" | "total";
/** Works that speak to the text of modules and families, not to a value of the ledger. */
const FOR_THE_TEXT = ["bedoya-2018", "chuaychoosakoon-2022", "vuong-2021", "helms-1998", "ali-2022", "or-review-2016", "wang-2017", "noyes-spievack", "walinga-2022", "la-chondro-2015", "portal-ia-2009", "fluid-page", "aorn-2006", "htm-07-01", "gs1-udi"];

const number = (key: string, part: Part = "value"): number => Number(ledgerEntry(key).revision.value?.[part]);
const share = (key: string): number => number(key) / 100;

describe("values that follow from others", () => {
  it("the low bound is the mean less two standard deviations", () => {
    for (const sex of ["boys", "girls"]) {
      const bound = number(`junction-to-bundle.${sex}`, "mean") - 2 * number(`junction-to-bundle.${sex}`, "sd");
      expect(number(`junction-to-bundle-low.${sex}`)).toBeCloseTo(bound, 6);
    }
    expect(number("junction-to-bundle-low.boys")).toBe(2);
  });

  // Schachne 2019 prints the midpoint too: it must lie near the middle of the two ends, since all three were measured on one line.
  it("the width along the path is the difference of Schachne's means, and her midpoint lies near its middle", () => {
    for (const sex of ["boys", "girls"]) {
      const [edge, junction, middle] = ["free-edge-to-bundle", "junction-to-bundle", "mid-to-bundle"].map((key) => number(`${key}.${sex}`, "mean"));
      expect(number(`path-width.${sex}`)).toBeCloseTo((edge ?? 0) - (junction ?? 0), 6);
      expect(Math.abs(((edge ?? 0) + (junction ?? 0)) / 2 - (middle ?? 0))).toBeLessThan(0.25);
    }
    expect(ledgerEntry("junction-to-bundle.boys").revision.source).toBe("schachne-2019");
  });

  // Beck 2019: significant between all groups except the last two.
  it("Beck's zone grows with age at the junction and in front of it", () => {
    const ages = ["5-7", "8-10", "11-13", "14-16"];
    for (const topic of ["zone-width", "zone-width-front"]) {
      const means = ages.map((age) => number(`${topic}.${age}`, "mean"));
      expect(means).toEqual([...means].sort((first, second) => first - second));
    }
    expect(number("zone-width.5-7", "mean")).toBe(14.1);
  });

  it("every derived value names parents that exist", () => {
    const derived = LEDGER.flatMap(({ entries }) => entries).flatMap(({ revisions }) => revisions).filter(({ state }) => state === "derived");
    expect(derived.length).toBeGreaterThan(5);
    for (const { parents = [] } of derived) for (const parent of parents) expect(ledgerEntry(parent).revision.value).not.toBeNull();
  });

  it("multipliers fall to one, and never rise", () => {
    for (const sex of ["boys", "girls"]) {
      const row = Array.from({ length: 17 }, (_, index) => number(`multiplier.${sex}-${index + 1}`));
      expect(row.every((value, index) => index === 0 || value <= (row[index - 1] ?? 0))).toBe(true);
      expect(row.at(-1)).toBe(1);
    }
  });

  it("the two discoid rules agree only at a tibia of 75 mm", () => {
    expect(number("discoid-width.threshold") / share("discoid-share.threshold")).toBe(75);
  });
});

describe("what the papers print elsewhere", () => {
  // Kocher 2001 as quoted: its printed predictive values fit a base rate of 5 % for the meniscus and 10 % for the ligament.
  it.each([["kocher-mri-medial", 0.05], ["kocher-exam-medial", 0.05], ["kocher-exam-acl", 0.1], ["kocher-mri-acl", 0.1]])("the printed predictive values of %s fit one base rate", (test, baseRate) => {
    const [sensitivity, specificity] = [share(`sensitivity.${test}`), share(`specificity.${test}`)];
    const { ppv, npv } = predictiveValues({ sensitivity, specificity, baseRate });
    expect(Math.abs(100 * (ppv ?? 0) - number(`ppv.${test}`))).toBeLessThan(0.11);
    expect(Math.abs(100 * (npv ?? 0) - number(`npv.${test}`))).toBeLessThan(0.11);
    expect(baseRateBehind({ sensitivity, specificity, ppv: share(`ppv.${test}`) })).toBeCloseTo(baseRate, 2);
  });

  // King 1996 prints its fractions: 8 of 8 and 16 of 18.
  it("King's percentages are its fractions", () => {
    expect(number("sensitivity.king-mri")).toBe(100);
    expect(number("specificity.king-mri")).toBeCloseTo((100 * 16) / 18, 1);
  });

  // The conference abstract prints 21 of 1015 as 1.4 %; the later report 2.1 %.
  it("21 of 1015 is 2.07 per cent, as the later report prints and the abstract does not", () => {
    expect((100 * 21) / 1015).toBeCloseTo(2.07, 2);
    expect(Number(((100 * 21) / 1015).toFixed(1))).toBe(number("complications-major.child"));
    expect(wilson({ events: 21, total: 1015 }).low).toBeCloseTo(0.0136, 3);
  });

  // Tagliero 2020 prints 18.5 %, with the interval 15.3 to 22.1 by Wilson's formula; JEO 2018: once in ten is 2 to 40 %.
  it("shares carry the intervals that go with their counts", () => {
    const review = wilson({ events: number("repair-failed.review", "events"), total: number("repair-failed.review", "total") });
    expect([review.low, review.high].map((end) => Number((100 * end).toFixed(1)))).toEqual([15.3, 22.1]);
    const pierced = wilson({ events: number("artery-pierced.worst-case", "events"), total: number("artery-pierced.worst-case", "total") });
    expect([pierced.low, pierced.high].map((end) => Math.round(100 * end))).toEqual([2, 40]);
    const kept = wilson({ events: number("nerve-caught.adult-with-retractor", "events"), total: number("nerve-caught.adult-with-retractor", "total") });
    expect(Math.round(100 * kept.high)).toBe(28);
  });

  // Hidden-zone abstract: 5.83 of 41.33 mm by MRI, 6.83 of 37.50 by dissection.
  it("the hidden zone's two percentages use two rulers", () => {
    expect(100 * (1 - 5.83 / 41.33)).toBeCloseTo(number("unseen.hidden-zone-mri"), 1);
    expect(100 * (1 - 6.83 / 37.5)).toBeCloseTo(number("unseen.hidden-zone-dissection"), 1);
  });

  // Gilat 2019 prints 343 of 1200 as 28.6 %.
  it("28.6 per cent of Gilat's lines cross the bundle", () => {
    expect((100 * number("lines-cross-bundle.unaged", "events")) / number("lines-cross-bundle.unaged", "total")).toBeCloseTo(28.6, 1);
  });

  it("half of the children lie nearer than the mean", () => {
    const [meanMm, sdMm] = [number("junction-to-bundle.boys", "mean"), number("junction-to-bundle.boys", "sd")];
    expect(shareNearer({ distanceMm: meanMm, meanMm, sdMm })).toBeCloseTo(0.5, 9);
    // 4 mm, boys: 22.7 % (worked example of the curriculum, checked against any normal table: z = −0.75).
    expect(shareNearer({ distanceMm: 4, meanMm, sdMm })).toBeCloseTo(0.2266, 4);
  });
});

describe("sources", () => {
  it("are all used, and every value that was read has one", () => {
    const used = new Set(LEDGER.flatMap(({ entries }) => entries.flatMap(({ revisions }) => revisions.map(({ source }) => source))));
    const read = LEDGER.flatMap(({ entries }) => entries).filter(({ revisions }) => ["read", "quoted"].includes(revisions[0]?.state ?? "") && !revisions[0]?.source);
    expect(read.map(({ key }) => key)).toEqual([]);
    expect(SOURCES.filter(({ id }) => !used.has(id) && !FOR_THE_TEXT.includes(id)).map(({ id }) => id)).toEqual([]);
  });
});

