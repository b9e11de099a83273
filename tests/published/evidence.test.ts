import jstat from "jstat";
import { describe, expect, it } from "vitest";
import {
  baseRateBehind,
  cohenKappa,
  predictiveValues,
  shareNearer,
  twoByTwo,
  wilson,
} from "../../src/engine/index.ts";
import { normalShare } from "../../src/engine/evidence/normal-share.ts";

// The package has no names of its own for the plain loader of Node, which the runner of mutants uses.
const { jStat } = jstat;

const percent = (share: number | null | undefined, places = 1): string => ((share ?? Number.NaN) * 100).toFixed(places);

describe("published two-by-two tables", () => {
  it("King 1996: 8, 2, 0, 16 gives 100, 88.9, 80.0 and 100 per cent", () => {
    // King and others 1996, magnetic resonance against arthroscopy, children; counts and four shares as printed.
    const { sensitivity, specificity, ppv, npv } = twoByTwo({ tp: 8, fp: 2, fn: 0, tn: 16 });
    expect([sensitivity, specificity, ppv, npv].map((share) => percent(share))).toEqual(["100.0", "88.9", "80.0", "100.0"]);
  });

  it("the series of 107 ACL-deficient knees has one table only: 43, 12, 26, 26", () => {
    // Printed: sensitivity 62.3, specificity 68.4, PPV 78.2, NPV 50.0 per cent, 26 missed of 107.
    const matching: string[] = [];
    for (let tp = 1; tp <= 107 - 26; tp += 1) {
      for (let fp = 0; fp + tp <= 107 - 26; fp += 1) {
        const { sensitivity, specificity, ppv, npv } = twoByTwo({ tp, fp, fn: 26, tn: 107 - 26 - tp - fp });
        const printed = [sensitivity, specificity, ppv, npv].map((share) => percent(share)).join(" ");
        if (printed === "62.3 68.4 78.2 50.0") matching.push(`${tp} ${fp} 26 ${81 - tp - fp}`);
      }
    }
    expect(matching).toEqual(["43 12 26 26"]);
  });

  it("the likelihood ratios are those of the shares", () => {
    const { sensitivity, specificity, lrPlus, lrMinus } = twoByTwo({ tp: 43, fp: 12, fn: 26, tn: 26 });
    expect(lrPlus).toBeCloseTo((sensitivity ?? 0) / (1 - (specificity ?? 0)), 12);
    expect(lrMinus).toBeCloseTo((1 - (sensitivity ?? 0)) / (specificity ?? 0), 12);
  });

  it("gives null exactly where a denominator is 0", () => {
    const none = { sensitivity: null, specificity: null, ppv: null, npv: null, lrPlus: null, lrMinus: null };
    expect(twoByTwo({ tp: 0, fp: 0, fn: 0, tn: 0 })).toEqual(none);
    expect(twoByTwo({ tp: 5, fp: 0, fn: 0, tn: 5 })).toMatchObject({ ppv: 1, npv: 1, lrPlus: null, lrMinus: 0 });
    expect(twoByTwo({ tp: 5, fp: 5, fn: 0, tn: 0 })).toMatchObject({ specificity: 0, npv: null, lrPlus: 1, lrMinus: null });
  });
});

/**
 * Kocher and others 2001, Diagnostic accuracy for intra-articular knee disorders in children, Am J Sports Med 29:292–6 (year,
 * volume and pages from memory): four printed pairs for medial tears and the ACL, examination and magnetic resonance.
 */
const KOCHER = [
  { sensitivity: 0.793, specificity: 0.92, ppv: "34.3", npv: "98.8", baseRate: 0.05 },
  { sensitivity: 0.621, specificity: 0.807, ppv: "14.5", npv: "97.6", baseRate: 0.05 },
  { sensitivity: 0.813, specificity: 0.906, ppv: "49.0", npv: "97.8", baseRate: 0.1 },
  { sensitivity: 0.75, specificity: 0.941, ppv: "58.6", npv: "97.1", baseRate: 0.1 },
] as const;

describe("Kocher's predictive values and the base rate behind them", () => {
  it.each(KOCHER)("$sensitivity and $specificity at $baseRate print $ppv and $npv", (row) => {
    const { ppv, npv } = predictiveValues(row);
    // The printed shares carry three digits; the values reproduce to the last digit printed, one unit allowed.
    expect(Math.abs(ppv * 100 - Number(row.ppv))).toBeLessThan(0.1);
    expect(Math.abs(npv * 100 - Number(row.npv))).toBeLessThan(0.1);
  });

  it.each(KOCHER)("$ppv per cent leads back to a base rate of $baseRate", (row) => {
    expect(baseRateBehind({ ...row, ppv: Number(row.ppv) / 100 })).toBeCloseTo(row.baseRate, 3);
  });

  it("would be 86.9 per cent at a base rate of 40", () => {
    expect(percent(predictiveValues({ sensitivity: 0.793, specificity: 0.92, baseRate: 0.4 }).ppv)).toBe("86.9");
  });

  it("are the shares in a village of natural numbers", () => {
    for (const baseRate of [0.02, 0.05, 0.4, 0.6]) {
      const people = 1_000_000;
      const tp = people * baseRate * 0.8;
      const tn = people * (1 - baseRate) * 0.9;
      const counted = twoByTwo({
        tp: Math.round(tp),
        fn: Math.round(people * baseRate - tp),
        tn: Math.round(tn),
        fp: Math.round(people * (1 - baseRate) - tn),
      });
      const { ppv, npv } = predictiveValues({ sensitivity: 0.8, specificity: 0.9, baseRate });
      expect(ppv).toBeCloseTo(counted.ppv ?? 0, 9);
      expect(npv).toBeCloseTo(counted.npv ?? 0, 9);
    }
  });
});

describe("Wilson's interval", () => {
  it.each([
    // Newcombe 1998, Two-sided confidence intervals for the single proportion, Stat Med 17:857–72, table of methods (digits from memory).
    [81, 263, "25.53", "36.62"],
    [15, 148, "6.24", "16.05"],
    [0, 20, "0.00", "16.11"],
    [1, 29, "0.61", "17.18"],
  ])("of %d of %d is printed by Newcombe", (events, total, low, high) => {
    const interval = wilson({ events, total });
    expect([percent(interval.low, 2), percent(interval.high, 2)]).toEqual([low, high]);
  });

  it.each([
    // Counts as published (complications of 1015; failures of 503 and of 746; nerve met in 0 of 10, Deutsch 1999,
    // 10.1177/03635465990270010201; artery met in 1 of 10, 10.1186/s40634-018-0166-0); intervals worked once in another language.
    [21, 1015, 1, "1.4", "3.1"],
    [93, 503, 1, "15.3", "22.1"],
    [2, 746, 2, "0.07", "0.97"],
    [0, 10, 0, "0", "28"],
    [1, 10, 0, "2", "40"],
    [56, 124, 0, "37", "54"],
    [11, 124, 0, "5", "15"],
    [36, 124, 0, "22", "38"],
    [18, 24, 0, "55", "88"],
  ])("of %d of %d holds", (events, total, places, low, high) => {
    const interval = wilson({ events, total });
    expect([percent(interval.low, places), percent(interval.high, places)]).toEqual([low, high]);
  });

  it("ends where the share seen lies 1.96 standard errors away from the end", () => {
    for (const [events, total] of [[0, 7], [3, 17], [21, 1015], [17, 17]] as const) {
      const { low, high } = wilson({ events, total });
      for (const end of [low, high].filter((share) => share > 0 && share < 1)) {
        const errors = Math.abs(events / total - end) / Math.sqrt((end * (1 - end)) / total);
        expect(errors).toBeCloseTo(1.959964, 8);
      }
    }
  });
});

describe("the share nearer than a distance", () => {
  it.each([
    // Abramowitz and Stegun 1964, table 26.1, 15 decimals.
    [0, 0.5],
    [1, 0.841344746068543],
    [2, 0.977249868051821],
    [3, 0.99865010196837],
    [4, 0.999968328758167],
  ])("is the tabled normal share at %d standard deviations", (z, printed) => {
    expect(Math.abs(normalShare(z) - printed)).toBeLessThan(0.000000000000002);
    expect(Math.abs(normalShare(-z) - (1 - printed))).toBeLessThan(0.000000000000002);
  });

  it("keeps its digits far out in the tail", () => {
    // Tail at 5, 6 and 10 standard deviations: 2.866516e-7, 9.865876e-10, 7.619853e-24 (same handbook, table 26.2; digits from memory).
    const tails = [-5, -6, -10].map((z) => normalShare(z).toExponential(5));
    expect(tails).toEqual(["2.86652e-7", "9.86588e-10", "7.61985e-24"]);
  });

  it("agrees with jStat and with the area under the curve", () => {
    let area = 0.5;
    const step = 0.0005;
    const curve = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    for (let index = 0; index < 12_000; index += 1) {
      const z = index * step;
      area += (step / 6) * (curve(z) + 4 * curve(z + step / 2) + curve(z + step));
      if (index % 500 === 499) {
        expect(Math.abs(normalShare(z + step) - area)).toBeLessThan(0.0000000000001);
        expect(Math.abs(normalShare(z + step) - jStat.normal.cdf(z + step, 0, 1))).toBeLessThan(0.000000000001);
      }
    }
  });

  it("for boys at 4 mm is 22.7 per cent with Schachne's mean and spread", () => {
    // Schachne and others 2019, 10.1177/2325967119855027: boys 5.2 ± 1.6 mm. Share by jStat.
    const share = shareNearer({ distanceMm: 4, meanMm: 5.2, sdMm: 1.6 });
    expect(share).toBeCloseTo(jStat.normal.cdf(4, 5.2, 1.6), 10);
    expect(percent(share)).toBe("22.7");
  });
});

describe("kappa", () => {
  it("of 20, 5, 10, 15 is 0.40", () => {
    // The grant-proposal example found in many teaching texts on Cohen's kappa.
    expect(cohenKappa([[20, 5], [10, 15]])).toBeCloseTo(0.4, 12);
  });

  it("is a share of what chance leaves, worked from marginal shares", () => {
    const table = [[11, 3, 1], [2, 17, 4], [0, 6, 9]];
    const total = 53;
    const share = (row: number, column: number) => (table[row]?.[column] ?? 0) / total;
    const classes = [0, 1, 2];
    const sumOver = (part: (index: number) => number) => classes.reduce((sum, index) => sum + part(index), 0);
    const first = (index: number) => sumOver((other) => share(index, other));
    const second = (index: number) => sumOver((other) => share(other, index));
    const observed = sumOver((index) => share(index, index));
    const chance = sumOver((index) => first(index) * second(index));
    expect(cohenKappa(table)).toBeCloseTo((observed - chance) / (1 - chance), 12);
  });

  it("is 1 for full agreement, 0 for independence and below 0 for crossed readings", () => {
    expect(cohenKappa([[7, 0], [0, 5]])).toBe(1);
    expect(cohenKappa([[4, 6], [8, 12]])).toBe(0);
    expect(cohenKappa([[0, 5], [5, 0]])).toBe(-1);
  });
});
