import { sampleCorrelation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { alphaOf, alphaWithoutEach, covariancesOf } from "../../src/engine/cohort/alpha.ts";
import { conditionalErrorPoints } from "../../src/engine/cohort/conditional-error.ts";
import { cutBand, cutScoreOf, placeByCut } from "../../src/engine/cohort/cut-score.ts";
import { choiceEfficiency, choiceFigures, meanWorking } from "../../src/engine/cohort/dead-choices.ts";
import { itemFigures } from "../../src/engine/cohort/item-figures.ts";
import { itemRest } from "../../src/engine/cohort/item-rest.ts";
import { sheetFigures } from "../../src/engine/cohort/sheet-figures.ts";
import { measurementError } from "../../src/engine/evidence/measurement-error.ts";
import { papersFrom } from "../support/papers.ts";
import { LSAT, REAL_STATISTICS, WUENSCH } from "../support/score-tables.ts";

const digits = (values: readonly (number | null)[], places: number): readonly string[] => values.map((value) => (value === null ? "null" : value.toFixed(places)));
const totalsOf = (table: readonly (readonly number[])[]): number[] => table.map((row) => row.reduce((sum, score) => sum + score, 0));
const column = (table: readonly (readonly number[])[], item: number): number[] => table.map((row) => row[item] ?? 0);
const deviation = (values: readonly number[]): number => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
};

describe("Wuensch's ten students and ten items", () => {
  const columns = Array.from({ length: 10 }, (_, item) => column(WUENSCH, item));

  it("have the printed shares, Σpq 2.18 and variance 5.84", () => {
    // KR20.txt, East Carolina University.
    const shares = columns.map((scores) => scores.reduce((sum, score) => sum + score, 0) / 10);
    expect(shares).toEqual([0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6]);
    expect(itemFigures(papersFrom(WUENSCH)).map(({ difficulty }) => difficulty.value)).toEqual(shares);
    expect(covariancesOf(WUENSCH).reduce((sum, row, item) => sum + (row[item] ?? 0), 0)).toBeCloseTo(2.18, 10);
    expect(deviation(totalsOf(WUENSCH)) ** 2).toBeCloseTo(5.84, 10);
  });

  it("have reliability .696347032, as the R package psych finds, and a standard error of 1.3316656237 points", () => {
    // R package psych, version 2.2.9: alpha .696347031963.
    const reliability = alphaOf(covariancesOf(WUENSCH));
    expect(reliability).toBeCloseTo(0.696347031963, 11);
    expect(deviation(totalsOf(WUENSCH))).toBeCloseTo(2.4166091947, 9);
    expect(measurementError({ sdPoints: deviation(totalsOf(WUENSCH)), reliability: reliability ?? 0 })).toBeCloseTo(1.3316656237, 9);
  });

  it("have the corrected correlations by the formula from the uncorrected ones too", () => {
    // Uncorrected values of the R package psych, version 2.2.9; the formula (r s − d) ÷ √(d² + s² − 2 r s d) is school algebra of the covariances.
    const printed = [0.79463301, 0.79463301, 0.20272121, 0.6140346, 0.70952425, 0.43449309, 0.16253857, 0.79463301, 0.08276059, 0.62505708];
    const sd = deviation(totalsOf(WUENSCH));
    const fromUncorrected = printed.map((r, item) => {
      const own = deviation(columns[item] ?? []);
      return (r * sd - own) / Math.sqrt(sd ** 2 + own ** 2 - 2 * r * sd * own);
    });
    const found = columns.map((scores) => sampleCorrelation(scores, totalsOf(WUENSCH)));
    expect(digits(found, 7)).toEqual(digits(printed, 7));
    for (const [item, value] of itemRest(WUENSCH).entries()) expect(value).toBeCloseTo(fromUncorrected[item] ?? 9, 7);
  });

  it("are too few for figures of items: the reason stands where the number would", () => {
    const papers = papersFrom(WUENSCH);
    for (const { discrimination, reliabilityWithout } of itemFigures(papers)) expect([discrimination, reliabilityWithout]).toEqual(Array(2).fill({ value: null, refused: "under-thirty" }));
    expect(sheetFigures(papers)).toMatchObject({ learners: 10, items: 10, reliability: { value: null, refused: "under-thirty" }, errorPoints: { value: null, refused: "under-thirty" } });
  });
});

describe("section 6 of the LSAT", () => {
  const papers = papersFrom(LSAT);

  it("has the published shares, reliability and correlations when it comes in as papers", () => {
    // Bock and Lieberman 1970; alpha .295 as Rizopoulos 2006 prints it, J Stat Softw 17(5), from memory; the other digits worked with R.
    const items = itemFigures(papers);
    expect(items.map(({ difficulty }) => difficulty.value)).toEqual([0.924, 0.709, 0.553, 0.763, 0.87]);
    expect(sheetFigures(papers).reliability.value).toBeCloseTo(0.2949971922, 9);
    expect(digits(items.map(({ discrimination }) => discrimination.value), 9)).toEqual(digits([0.1128326889, 0.1531781201, 0.1727789433, 0.1444280952, 0.1215964025], 9));
    expect(digits(items.map(({ reliabilityWithout }) => reliabilityWithout.value), 9)).toEqual(digits([0.2753562108, 0.2375839046, 0.2167994629, 0.2459327104, 0.2662944112], 9));
  });

  it("has the uncorrected correlations from which the corrected follow", () => {
    const uncorrected = [0, 1, 2, 3, 4].map((item) => sampleCorrelation(column(LSAT, item), totalsOf(LSAT)));
    expect(digits(uncorrected, 9)).toEqual(digits([0.3620104372, 0.5667720954, 0.6184397536, 0.5344183262, 0.4353664279], 9));
  });
});

describe("the twelve by eleven example", () => {
  it("has Σpq 2.1458, variance 6.5208 and .738; divided by n − 1 it would be .768", () => {
    // Test file of a research library after the real-statistics page on KR-20; the wrong divisor is worked here to show the trap.
    const within = covariancesOf(REAL_STATISTICS).reduce((sum, row, item) => sum + (row[item] ?? 0), 0);
    const variance = deviation(totalsOf(REAL_STATISTICS)) ** 2;
    expect([within.toFixed(10), variance.toFixed(10)]).toEqual(["2.1458333333", "6.5208333333"]);
    expect(alphaOf(covariancesOf(REAL_STATISTICS))?.toFixed(3)).toBe("0.738");
    expect(((11 / 10) * (1 - within / (variance * (12 / 11)))).toFixed(3)).toBe("0.768");
  });
});

describe("alpha from a covariance matrix", () => {
  it("is .8136, and .7500, .7606, .7714, .7826 without each item", () => {
    // Documentation example of a public statistics library written in Julia.
    const matrix = [[10, 6, 6, 6], [6, 11, 6, 6], [6, 6, 12, 6], [6, 6, 6, 13]];
    expect(alphaOf(matrix)?.toFixed(4)).toBe("0.8136");
    expect(alphaOf(matrix)).toBeCloseTo(0.813559322, 9);
    expect(digits(alphaWithoutEach(matrix), 4)).toEqual(["0.7500", "0.7606", "0.7714", "0.7826"]);
    expect(digits(alphaWithoutEach(matrix), 9)).toEqual(digits([0.75, 0.7605633803, 0.7714285714, 0.7826086957], 9));
  });

  it("is .95 for ten items whose variances sum to 11.16 and whose total has 77.44", () => {
    // Bland and Altman 1997, Cronbach's alpha, BMJ 314:572; digits from memory.
    const shared = (77.44 - 11.16) / 90;
    const matrix = Array.from({ length: 10 }, (_, row) => Array.from({ length: 10 }, (__, other) => (row === other ? 1.116 : shared)));
    expect(alphaOf(matrix)).toBeCloseTo(0.951, 4);
  });

  it("is null where it is not defined, and refuses what is no square of numbers", () => {
    expect([alphaOf([]), alphaOf([[2]]), alphaOf([[0, 0], [0, 0]])]).toEqual([null, null, null]);
    expect(() => alphaOf([[1, 2], [3]])).toThrow("matrix must have 2 values in every row, got 1 in row 1");
    expect(() => alphaOf([[1, Number.NaN], [1, 1]])).toThrow("matrix[0][1] must be a finite number, got NaN");
  });
});

describe("the error of a score", () => {
  it("is 1.34 at a spread of 2.05 and a reliability of .57", () => {
    // Public report of a package for classical test theory, thirty examinees and ten items.
    expect(measurementError({ sdPoints: 2.05, reliability: 0.57 }).toFixed(2)).toBe("1.34");
    expect(measurementError({ sdPoints: 2.05, reliability: 0.57 })).toBeCloseTo(1.3443, 4);
  });

  it("is 1.8353 for sixteen of twenty by the binomial model", () => {
    // Formula of Lord 1955, from memory; digits worked by hand: √(16 × 4 ÷ 19).
    expect(conditionalErrorPoints({ points: 16, items: 20 })).toBeCloseTo(1.835325871, 9);
    expect([conditionalErrorPoints({ points: 0, items: 20 }), conditionalErrorPoints({ points: 20, items: 20 })]).toEqual([0, 0]);
    for (const points of [3, 7.5, 11]) expect(conditionalErrorPoints({ points, items: 20 })).toBeCloseTo(conditionalErrorPoints({ points: 20 - points, items: 20 }), 12);
    expect(() => conditionalErrorPoints({ points: 21, items: 20 })).toThrow("points must be at least 0 and at most 20, got 21");
    expect(() => conditionalErrorPoints({ points: 1, items: 1 })).toThrow("items must be at least 2, got 1");
  });

  it("is the error that binomial scores really have", () => {
    // Exact binomial of twenty items at .8: the mean of the estimate of the variance is the variance, 20 × .8 × .2.
    const choose = (k: number): number => Array.from({ length: k }, (_, index) => (20 - index) / (index + 1)).reduce((product, factor) => product * factor, 1);
    const mean = Array.from({ length: 21 }, (_, points) => choose(points) * 0.8 ** points * 0.2 ** (20 - points) * conditionalErrorPoints({ points, items: 20 }) ** 2).reduce((sum, value) => sum + value, 0);
    expect(mean).toBeCloseTo(20 * 0.8 * 0.2, 9);
  });
});

describe("a cut score from judges", () => {
  const families = ["a", "b", "c", "d", "e"];
  const judges = [[0.6, 0.7, 0.5, 0.8, 0.4], [0.65, 0.75, 0.45, 0.85, 0.5], [0.55, 0.8, 0.5, 0.9, 0.45], [0.7, 0.65, 0.4, 0.8, 0.35]];
  const judged = families.map((family, item) => ({ family, shares: judges.map((judge) => judge[item] ?? 0) }));

  it("is the mean of the judges' sums, 3.075 of 5, with a spread of .15 and an error of .075", () => {
    // Four judges and five items worked by hand; the method as Shulruf and others 2016 describe it. No published table was found.
    const { sums, cutPoints, spreadPoints, errorPoints } = cutScoreOf(judged, families);
    expect(digits(sums, 10)).toEqual(digits([3, 3.2, 3.2, 2.9], 10));
    expect([cutPoints.value, spreadPoints.value, errorPoints.value].map((value) => value?.toFixed(10))).toEqual(["3.0750000000", "0.1500000000", "0.0750000000"]);
  });

  it("has no spread with one judge, and is refused without judges or with an item that was not judged by all", () => {
    expect(cutScoreOf(judged.map(({ family, shares }) => ({ family, shares: shares.slice(0, 1) })), families)).toMatchObject({ cutPoints: { value: 3 }, spreadPoints: { value: null, refused: "one-judge" } });
    expect(cutScoreOf([], families).cutPoints).toEqual({ value: null, refused: "no-judges" });
    expect(cutScoreOf(judged.slice(1), families).cutPoints).toEqual({ value: null, refused: "items-not-judged" });
    expect(cutScoreOf([{ family: "a", shares: [0.5] }, ...judged.slice(1)], families).cutPoints).toEqual({ value: null, refused: "items-not-judged" });
    expect(() => cutScoreOf([{ family: "a", shares: [1.2] }], ["a"])).toThrow("a[0] must be at least 0 and at most 1, got 1.2");
  });

  it("has a band of one standard error in which a score is undecided, its edges included", () => {
    const band = cutBand(16, 20);
    expect(band).toEqual({ low: expect.closeTo(14.164674129, 8), high: expect.closeTo(17.835325871, 8) });
    expect([14, 15, 17, 18].map((points) => placeByCut(points, band ?? { low: 0, high: 0 }))).toEqual(["below", "undecided", "undecided", "above"]);
    expect(placeByCut(2, { low: 2, high: 4 })).toBe("undecided");
    expect(cutBand(0.5, 1)).toBeNull();
  });
});

describe("wrong choices that work", () => {
  it("are 1.54 an item in Tarrant's 514 items", () => {
    // Tarrant, Ware and Mohammed 2009, BMC Med Educ 9:40: 12.3, 34.8, 39.1 and 13.8 % of the items had none, one, two and three.
    expect(meanWorking([12.3, 34.8, 39.1, 13.8])?.toFixed(2)).toBe("1.54");
    expect(meanWorking([12.3, 34.8, 39.1, 13.8])).toBeCloseTo(1.544, 10);
    expect(meanWorking([])).toBeNull();
  });

  it("are chosen by at least one in twenty, and by the weaker; efficiencies are 0, 33.3, 66.7 and 100 %", () => {
    // Forty learners, worked by hand: two of forty is exactly 5 %, and works; one of forty does not, nor what the stronger choose.
    const answers = Array.from({ length: 40 }, (_, person) => {
      if (person < 2) return { choice: "weak", restPoints: 2 };
      if (person === 2) return { choice: "rare", restPoints: 1 };
      return person < 6 ? { choice: "strong", restPoints: 10 } : { choice: null, restPoints: 5 + (person % 3) };
    });
    const figures = choiceFigures(["weak", "rare", "strong", "never"], answers);
    expect(figures.map(({ choice, chosen, works }) => [choice, chosen, works])).toEqual([["weak", 2, true], ["rare", 1, false], ["strong", 3, false], ["never", 0, false]]);
    expect(figures[3]).toMatchObject({ share: { value: 0 }, discrimination: { value: null, refused: "item-alike" } });
    expect([["rare", "strong", "never"], ["weak", "rare", "never"]].map((choices) => choiceEfficiency(choiceFigures(choices, answers))?.toFixed(3))).toEqual(["0.000", "0.333"]);
    expect(choiceEfficiency(choiceFigures(["weak"], answers))).toBe(1);
  });

  it("are not judged below thirty learners", () => {
    const few = Array.from({ length: 29 }, (_, person) => ({ choice: person < 9 ? "a" : null, restPoints: person }));
    expect(choiceFigures(["a"], few)).toEqual([{ choice: "a", chosen: 9, share: { value: null, refused: "under-thirty" }, discrimination: { value: null, refused: "under-thirty" }, works: null }]);
    expect([choiceEfficiency(choiceFigures(["a"], few)), choiceEfficiency([])]).toEqual([null, null]);
  });
});
