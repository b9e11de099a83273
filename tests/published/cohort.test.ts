import { sampleCorrelation, variance } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { itemRest, kr20 } from "../../src/engine/index.ts";
import { LSAT, marks, REAL_STATISTICS, WUENSCH } from "../support/score-tables.ts";

describe("KR-20", () => {
  it("is .738 for the twelve by eleven example and .6963 for Wuensch's data", () => {
    expect(kr20(REAL_STATISTICS)?.toFixed(3)).toBe("0.738");
    expect(kr20(REAL_STATISTICS)).toBeCloseTo(0.7380191693, 9);
    expect(kr20(WUENSCH)).toBeCloseTo(0.696347032, 9);
  });

  it("is the published alpha of section 6 of the LSAT, .295", () => {
    expect(LSAT).toHaveLength(1000);
    const shares = [0, 1, 2, 3, 4].map((item) => LSAT.filter((row) => row[item] === 1).length / 1000);
    expect(shares).toEqual([0.924, 0.709, 0.553, 0.763, 0.87]);
    expect(kr20(LSAT)).toBeCloseTo(0.2949971922, 9);
  });

  it("is alpha from variances, where the divisor cancels", () => {
    for (const matrix of [WUENSCH, REAL_STATISTICS, LSAT]) {
      const items = matrix[0]?.length ?? 0;
      const column = (item: number) => matrix.map((row) => row[item] ?? 0);
      const within = Array.from({ length: items }, (_, item) => variance(column(item))).reduce((sum, value) => sum + value, 0);
      const totals = matrix.map((row) => row.reduce((sum, value) => sum + value, 0));
      expect(kr20(matrix)).toBeCloseTo((items / (items - 1)) * (1 - within / variance(totals)), 10);
    }
  });

  it("is null where it is not defined", () => {
    expect([kr20([]), kr20([[], []]), kr20([[1], [0]]), kr20([[1, 0], [0, 1]]), kr20([[1, 1, 0]])]).toEqual([null, null, null, null, null]);
  });

  it("may be negative", () => {
    expect(kr20(marks("110 001 110 001 011"))).toBeLessThan(0);
  });
});

describe("item against the rest", () => {
  it("gives the corrected correlations of Wuensch's data", () => {
    // Worked with the R package psych, version 2.2.9, to eight digits.
    const printed = [0.70588915, 0.70588915, 0, 0.4735892, 0.58387421, 0.28614655, -0.02744451, 0.70588915, -0.12361285, 0.47586687];
    for (const [item, value] of itemRest(WUENSCH).entries()) expect(value).toBeCloseTo(printed[item] ?? 9, 7);
  });

  it("gives the corrected correlations of the LSAT", () => {
    const printed = [0.1128326889, 0.1531781201, 0.1727789433, 0.1444280952, 0.1215964025];
    for (const [item, value] of itemRest(LSAT).entries()) expect(value).toBeCloseTo(printed[item] ?? 9, 9);
  });

  it("agrees with another library's correlation", () => {
    for (const [item, value] of itemRest(REAL_STATISTICS).entries()) {
      const column = REAL_STATISTICS.map((row) => row[item] ?? 0);
      const rest = REAL_STATISTICS.map((row, person) => row.reduce((sum, score) => sum + score, 0) - (column[person] ?? 0));
      expect(value).toBeCloseTo(sampleCorrelation(column, rest), 10);
    }
  });

  it("is null for an item or a rest without spread, also where scores are parts", () => {
    expect(itemRest(marks("10 10 11"))).toEqual([null, null]);
    expect(itemRest([[0.1, 0.2, 1], [0.2, 0.1, 0]])[2]).toBeNull();
    expect(itemRest([])).toEqual([]);
  });
});
