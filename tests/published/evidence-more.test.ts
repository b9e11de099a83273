import fc from "fast-check";
import jstat from "jstat";
import { mean, probit, standardDeviation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { detectableChange } from "../../src/engine/evidence/detectable-change.ts";
import { differenceInterval } from "../../src/engine/evidence/difference-interval.ts";
import { expectedMisses } from "../../src/engine/evidence/expected-misses.ts";
import { jointAccuracy } from "../../src/engine/evidence/joint-accuracy.ts";
import { measurementError } from "../../src/engine/evidence/measurement-error.ts";
import { oddsOfShare } from "../../src/engine/evidence/odds-of-share.ts";
import { postTestShare } from "../../src/engine/evidence/post-test-share.ts";
import { predictiveValues } from "../../src/engine/evidence/predictive-values.ts";
import { rebuildTables } from "../../src/engine/evidence/rebuild-tables.ts";
import { riskMeasures } from "../../src/engine/evidence/risk-measures.ts";
import { score0To100 } from "../../src/engine/evidence/score-0-to-100.ts";
import { shareOfOdds } from "../../src/engine/evidence/share-of-odds.ts";
import { sliceLength } from "../../src/engine/evidence/slice-length.ts";
import { subscaleScore } from "../../src/engine/evidence/subscale-score.ts";
import { twoByTwo } from "../../src/engine/evidence/two-by-two.ts";
import { zeroEventsUpper } from "../../src/engine/evidence/zero-events-upper.ts";
import { xoshiro128 } from "../../src/engine/random/xoshiro.ts";
import { type Calculator, examplesOf, placesOf } from "../support/legal-calls.ts";

// The package has no names of its own for the plain loader of Node, which the runner of mutants uses.
const { jStat } = jstat;

const PRINTED_107 = { sensitivityPercent: 62.3, specificityPercent: 68.4, ppvPercent: 78.2, npvPercent: 50, decimals: 1 };

const CALCULATORS: readonly Calculator[] = [
  { file: "evidence/odds-of-share", run: oddsOfShare, legal: [{ share: 0.2 }] },
  { file: "evidence/share-of-odds", run: shareOfOdds, legal: [{ odds: 0.25 }] },
  { file: "evidence/post-test-share", run: postTestShare, legal: [{ preTestShare: 0.2, ratio: 4 }] },
  { file: "evidence/joint-accuracy", run: jointAccuracy, legal: [[{ sensitivity: 0.8, specificity: 0.9 }], { positiveIf: "any" }] },
  { file: "evidence/expected-misses", run: expectedMisses, legal: [{ patients: 40, baseRate: 0.25, sensitivity: 0.9 }] },
  { file: "evidence/risk-measures", run: riskMeasures, legal: [{ events: 2, total: 10, otherEvents: 1, otherTotal: 10 }] },
  { file: "evidence/difference-interval", run: differenceInterval, legal: [{ events: 2, total: 10, otherEvents: 1, otherTotal: 10 }] },
  { file: "evidence/zero-events-upper", run: zeroEventsUpper, legal: [{ total: 60 }] },
  { file: "evidence/measurement-error", run: measurementError, legal: [{ sdPoints: 10, reliability: 0.8 }] },
  { file: "evidence/detectable-change", run: detectableChange, legal: [{ semPoints: 8.6, patients: 1 }] },
  { file: "evidence/score-0-to-100", run: score0To100, legal: [{ rawPoints: 60, leastPoints: 0, greatestPoints: 92 }], anySign: ["leastPoints"] },
  { file: "evidence/subscale-score", run: subscaleScore, legal: [[0, 1, null, 3], { worstPoints: 4 }] },
  { file: "evidence/slice-length", run: sliceLength, legal: [{ slices: 4, thicknessMm: 4, gapMm: 0.5 }] },
  { file: "evidence/rebuild-tables", run: rebuildTables, legal: [PRINTED_107, { leastTotal: 107, greatestTotal: 107, missed: 26 }] },
];

const SEED = 20_260_305;
const check = <T extends [unknown, ...unknown[]]>(property: fc.IProperty<T>): void => {
  fc.assert(property, { seed: SEED, numRuns: 300 });
};
const percent = (share: number | null, places = 1): string => ((share ?? Number.NaN) * 100).toFixed(places);
const hundredths = fc.integer({ min: 1, max: 99 }).map((value) => value / 100);

it("the interval of a difference is that of the table in Newcombe 1998, method 10 (values from memory, 10.1002/(SICI)1097-0258(19980430)17:8<873::AID-SIM779>3.0.CO;2-I)", () => {
  const table: readonly (readonly [number, number, number, number, string, string])[] = [
    [56, 70, 48, 80, "0.0524", "0.3339"], [9, 10, 3, 10, "0.1705", "0.8090"], [6, 7, 2, 7, "0.0582", "0.8062"], [5, 56, 0, 29, "-0.0381", "0.1926"],
    [0, 10, 0, 20, "-0.1611", "0.2775"], [0, 10, 0, 10, "-0.2775", "0.2775"], [10, 10, 0, 20, "0.6791", "1.0000"], [10, 10, 0, 10, "0.6075", "1.0000"],
  ];
  for (const [events, total, otherEvents, otherTotal, low, high] of table) {
    const found = differenceInterval({ events, total, otherEvents, otherTotal });
    expect([found.low.toFixed(4), found.high.toFixed(4)]).toEqual([low, high]);
    // Groups exchanged, the interval is its own mirror.
    const turned = differenceInterval({ events: otherEvents, total: otherTotal, otherEvents: events, otherTotal: total });
    expect([(-turned.high).toFixed(4), (-turned.low).toFixed(4)]).toEqual([low, high]);
  }
});

describe("tables rebuilt from the print", () => {
  it("of the series of 107 ACL-deficient knees are one: 43, 12, 26, 26", () => {
    // Printed: sensitivity 62.3, specificity 68.4, PPV 78.2, NPV 50.0 per cent, 26 missed of 107.
    const table = { tp: 43, fp: 12, fn: 26, tn: 26 };
    expect(rebuildTables(PRINTED_107, { leastTotal: 107, greatestTotal: 107, missed: null })).toEqual([table]);
    // Without the total and without NPV, as the question asks it: the missed ones and three shares settle it below 300 knees.
    expect(rebuildTables({ ...PRINTED_107, npvPercent: null }, { leastTotal: 1, greatestTotal: 300, missed: 26 })).toEqual([table]);
  });

  it("of King 1996 are one: 8, 2, 0, 16", () => {
    // King and others 1996, magnetic resonance against arthroscopy, children: 100, 88.9, 80.0, 100 per cent of 26.
    const printed = { sensitivityPercent: 100, specificityPercent: 88.9, ppvPercent: 80, npvPercent: 100, decimals: 1 };
    expect(rebuildTables(printed, { leastTotal: 26, greatestTotal: 26, missed: null })).toEqual([{ tp: 8, fp: 2, fn: 0, tn: 16 }]);
  });

  it(`hold the table that was printed, and nothing that prints otherwise (seed ${SEED})`, () => {
    const count = fc.integer({ min: 1, max: 30 });
    check(fc.property(count, count, count, count, fc.integer({ min: 0, max: 2 }), (tp, fp, fn, tn, decimals) => {
      const print = (share: number | null) => Number(percent(share, decimals));
      const { sensitivity, specificity, ppv, npv } = twoByTwo({ tp, fp, fn, tn });
      const printed = { sensitivityPercent: print(sensitivity), specificityPercent: print(specificity), ppvPercent: print(ppv), npvPercent: print(npv), decimals };
      const total = tp + fp + fn + tn;
      const tables = rebuildTables(printed, { leastTotal: total, greatestTotal: total, missed: null });
      expect(tables).toContainEqual({ tp, fp, fn, tn });
      for (const table of tables) {
        const again = twoByTwo(table);
        const half = 0.5 / 10 ** decimals + 0.000000001;
        expect(Math.abs((again.sensitivity ?? 9) * 100 - printed.sensitivityPercent)).toBeLessThanOrEqual(half);
        expect(Math.abs((again.specificity ?? 9) * 100 - printed.specificityPercent)).toBeLessThanOrEqual(half);
        expect(Math.abs((again.ppv ?? 9) * 100 - printed.ppvPercent)).toBeLessThanOrEqual(half);
        expect(Math.abs((again.npv ?? 9) * 100 - printed.npvPercent)).toBeLessThanOrEqual(half);
        expect(table.tp + table.fp + table.fn + table.tn).toBe(total);
      }
    }));
  });

  it("are none where the print contradicts itself, and a list where it does not tell", () => {
    const known = { leastTotal: 107, greatestTotal: 107, missed: null };
    expect(rebuildTables({ ...PRINTED_107, npvPercent: 51 }, known)).toEqual([]);
    const many = rebuildTables({ sensitivityPercent: 50, specificityPercent: 50, ppvPercent: null, npvPercent: null, decimals: 0 }, { leastTotal: 8, greatestTotal: 8, missed: null });
    // Second method: all quadruples of 8 whose two shares are a half.
    expect(many).toEqual([{ tp: 1, fp: 3, fn: 1, tn: 3 }, { tp: 2, fp: 2, fn: 2, tn: 2 }, { tp: 3, fp: 1, fn: 3, tn: 1 }]);
  });

  it("need the decimals that were printed", () => {
    const known = { leastTotal: 107, greatestTotal: 107, missed: null };
    expect(() => rebuildTables({ ...PRINTED_107, decimals: 0 }, known)).toThrow("sensitivityPercent must have at most 0 decimals, got 62.3");
    expect(() => rebuildTables(PRINTED_107, { ...known, greatestTotal: 106 })).toThrow("greatestTotal must be at least 107 and at most 1000, got 106");
  });
});

describe("odds and ratios", () => {
  it("lead to the published predictive values", () => {
    // Kocher and others 2001, Am J Sports Med 29:292–6 (year, volume and pages from memory): 79.3 and 92.0 at 5 per cent print 34.3; 81.3 and 90.6 at 10 print 49.0.
    const positive = (sensitivity: number, specificity: number, preTestShare: number) =>
      postTestShare({ preTestShare, ratio: sensitivity / (1 - specificity) });
    expect(Math.abs(positive(0.793, 0.92, 0.05) * 100 - 34.3)).toBeLessThan(0.1);
    expect(Math.abs(positive(0.813, 0.906, 0.1) * 100 - 49)).toBeLessThan(0.1);
  });

  it("turn an odds ratio of 2.04 at a base risk of 7 per cent into 13.3, not 14.3", () => {
    // No source: worked by hand, 2.04 × 7/93 = 0.15355, ÷ 1.15355.
    expect(percent(postTestShare({ preTestShare: 0.07, ratio: 2.04 }))).toBe("13.3");
  });

  it(`are Bayes' rule, and there and back again (seed ${SEED})`, () => {
    check(fc.property(hundredths, hundredths, hundredths, (sensitivity, specificity, baseRate) => {
      const { ppv, npv } = predictiveValues({ sensitivity, specificity, baseRate });
      expect(postTestShare({ preTestShare: baseRate, ratio: sensitivity / (1 - specificity) })).toBeCloseTo(ppv, 10);
      expect(postTestShare({ preTestShare: baseRate, ratio: (1 - sensitivity) / specificity })).toBeCloseTo(1 - npv, 10);
      expect(shareOfOdds({ odds: oddsOfShare({ share: baseRate }) })).toBeCloseTo(baseRate, 12);
      expect(oddsOfShare({ share: baseRate }) * oddsOfShare({ share: 1 - baseRate })).toBeCloseTo(1, 10);
      expect(postTestShare({ preTestShare: baseRate, ratio: 1 })).toBeCloseTo(baseRate, 12);
    }));
    expect(postTestShare({ preTestShare: 0.5, ratio: 0 })).toBe(0);
    expect(() => oddsOfShare({ share: 1 })).toThrow("share must be at least 0 and less than 1, got 1");
  });
});

describe("two tests read as one", () => {
  it("find as often as a simulated pair that errs independently", () => {
    // Second method: counting 200 000 drawn pairs; the standard error of a share is at most 0.0012.
    const chance = xoshiro128([7, 8, 9, 10]);
    const next = () => chance() / 2 ** 32;
    let any = 0;
    let all = 0;
    for (let pair = 0; pair < 200_000; pair += 1) {
      const [first, second] = [next() < 0.8, next() < 0.7];
      if (first || second) any += 1;
      if (first && second) all += 1;
    }
    const tests = [{ sensitivity: 0.8, specificity: 0.9 }, { sensitivity: 0.7, specificity: 0.8 }];
    expect(Math.abs(jointAccuracy(tests, { positiveIf: "any" }).sensitivity - any / 200_000)).toBeLessThan(0.005);
    expect(Math.abs(jointAccuracy(tests, { positiveIf: "all" }).sensitivity - all / 200_000)).toBeLessThan(0.005);
  });

  it(`mirror each other: "any" is "all" with the shares changed over (seed ${SEED})`, () => {
    check(fc.property(hundredths, hundredths, hundredths, hundredths, (a, b, c, d) => {
      const any = jointAccuracy([{ sensitivity: a, specificity: b }, { sensitivity: c, specificity: d }], { positiveIf: "any" });
      const all = jointAccuracy([{ sensitivity: b, specificity: a }, { sensitivity: d, specificity: c }], { positiveIf: "all" });
      expect(any.sensitivity).toBeCloseTo(all.specificity, 12);
      expect(any.specificity).toBeCloseTo(all.sensitivity, 12);
      expect(any.sensitivity).toBeGreaterThanOrEqual(Math.max(a, c) - 0.000000000001);
      expect(any.specificity).toBeLessThanOrEqual(Math.min(b, d) + 0.000000000001);
    }));
  });

  it("refuse an empty list and a rule that is neither", () => {
    expect(() => jointAccuracy([], { positiveIf: "any" })).toThrow("tests must hold at least one test, got 0");
    expect(() => jointAccuracy([{ sensitivity: 1, specificity: 1 }], { positiveIf: "none" as unknown as "any" })).toThrow("positiveIf must be any or all, got none");
  });
});

describe("tears missed in a list", () => {
  it(`are the mean and the first term of the binomial distribution (seed ${SEED})`, () => {
    // Second method: jStat's binomial distribution.
    check(fc.property(fc.integer({ min: 1, max: 200 }), hundredths, hundredths, (patients, baseRate, sensitivity) => {
      const share = baseRate * (1 - sensitivity);
      const { expected, anyShare } = expectedMisses({ patients, baseRate, sensitivity });
      expect(anyShare).toBeCloseTo(1 - jStat.binomial.cdf(0, patients, share), 9);
      expect(expected).toBeCloseTo(patients * share, 10);
      expect(anyShare).toBeLessThanOrEqual(Math.min(1, expected) + 0.000000000001);
    }));
    expect(expectedMisses({ patients: 100, baseRate: 1, sensitivity: 0 })).toEqual({ expected: 100, anyShare: 1 });
    expect(expectedMisses({ patients: 100, baseRate: 0.5, sensitivity: 1 })).toEqual({ expected: 0, anyShare: 0 });
  });
});

describe("how two arms differ", () => {
  it("as printed for aspirin and heart attacks: 1.82, 1.83 and 0.77 points", () => {
    // Physicians' Health Study: 189 of 11 034 with placebo, 104 of 11 037 with aspirin; Agresti, Categorical data analysis (ratios from memory).
    const { difference, ratio, oddsRatio } = riskMeasures({ events: 189, total: 11_034, otherEvents: 104, otherTotal: 11_037 });
    expect([ratio?.toFixed(2), oddsRatio?.toFixed(2), percent(difference, 2)]).toEqual(["1.82", "1.83", "0.77"]);
  });

  it("of 46 in 311 and 54 in 546 by 4.9 points, 1.50 times, one in 20.4", () => {
    // No source: worked by hand, 14.79 and 9.89 per cent.
    const { difference, ratio, oneIn } = riskMeasures({ events: 46, total: 311, otherEvents: 54, otherTotal: 546 });
    expect([percent(difference), ratio?.toFixed(2), oneIn?.toFixed(1)]).toEqual(["4.9", "1.50", "20.4"]);
  });

  it(`turn over with the arms (seed ${SEED})`, () => {
    const arm = fc.integer({ min: 2, max: 400 }).chain((total) => fc.tuple(fc.integer({ min: 1, max: total - 1 }), fc.constant(total)));
    check(fc.property(arm, arm, ([events, total], [otherEvents, otherTotal]) => {
      const one = riskMeasures({ events, total, otherEvents, otherTotal });
      const other = riskMeasures({ events: otherEvents, total: otherTotal, otherEvents: events, otherTotal: total });
      expect(one.difference).toBeCloseTo(-other.difference, 12);
      expect((one.ratio ?? 0) * (other.ratio ?? 0)).toBeCloseTo(1, 10);
      expect((one.oddsRatio ?? 0) * (other.oddsRatio ?? 0)).toBeCloseTo(1, 10);
      expect(one.oneIn).toBe(other.oneIn);
      // The odds ratio lies farther from 1 than the risk ratio, and leads from one risk to the other.
      expect(Math.abs(Math.log(one.oddsRatio ?? 0))).toBeGreaterThanOrEqual(Math.abs(Math.log(one.ratio ?? 0)) - 0.000000001);
      expect(postTestShare({ preTestShare: otherEvents / otherTotal, ratio: one.oddsRatio ?? 0 })).toBeCloseTo(events / total, 10);
    }));
  });

  it("are null exactly where there is nothing to divide by", () => {
    expect(riskMeasures({ events: 3, total: 10, otherEvents: 0, otherTotal: 10 })).toMatchObject({ ratio: null, oddsRatio: null });
    expect(riskMeasures({ events: 0, total: 10, otherEvents: 3, otherTotal: 10 })).toMatchObject({ ratio: 0, oddsRatio: 0 });
    expect(riskMeasures({ events: 3, total: 9, otherEvents: 1, otherTotal: 3 })).toEqual({ difference: 0, ratio: 1, oddsRatio: 1, oneIn: null });
    expect(riskMeasures({ events: 10, total: 10, otherEvents: 1, otherTotal: 10 }).oddsRatio).toBeNull();
    expect(() => riskMeasures({ events: 11, total: 10, otherEvents: 1, otherTotal: 10 })).toThrow("events must be at least 0 and at most 10, got 11");
  });
});

describe("nothing seen", () => {
  it.each([[167, "1.8"], [60, "5.0"], [40, "7.5"], [1500, "0.2"]])("of %d leaves %s per cent by the rule of three", (total, printed) => {
    // Hanley and Lippman-Hand 1983, JAMA 249:1743–5: contrast medium, 0 of 167, 1.8 per cent (from memory); the page on the rule: 0 of 1500, 1 in 500.
    expect(percent(zeroEventsUpper({ total }).ruleOfThree)).toBe(printed);
  });

  it("leaves a risk at which nothing would be seen in one series of twenty", () => {
    // Second method: jStat's binomial distribution at the exact end.
    for (const total of [1, 2, 3, 10, 40, 167, 1000]) {
      const { exact } = zeroEventsUpper({ total });
      expect(jStat.binomial.cdf(0, total, exact)).toBeCloseTo(0.05, 9);
    }
  });

  it("is rounded to the safe side by the rule of three, and better so in long series", () => {
    let off = 1;
    for (let total = 3; total < 2000; total += 7) {
      const { exact, ruleOfThree } = zeroEventsUpper({ total });
      expect(ruleOfThree).toBeGreaterThan(exact);
      expect(ruleOfThree - exact).toBeLessThan(off);
      off = ruleOfThree - exact;
    }
    // Above 30 the short form is a good approximation (Eypasch and others 1995, BMJ 311:619–20).
    const { exact, ruleOfThree } = zeroEventsUpper({ total: 30 });
    expect(ruleOfThree - exact).toBeLessThan(0.005);
    expect(zeroEventsUpper({ total: 1 })).toEqual({ exact: expect.closeTo(0.95, 12), ruleOfThree: 1 });
  });
});

describe("the error of a score", () => {
  it.each([[10.66, 29.55], [9.85, 27.3], [9.04, 25.06], [9.09, 25.2]])("of %d leaves a detectable change of %d", (semPoints, printed) => {
    // 10.1186/s13102-020-00179-8, table 2: standard errors and smallest detectable changes as printed.
    expect(Math.abs(detectableChange({ semPoints, patients: 1 }) - printed)).toBeLessThan(0.02);
  });

  it("of 8.6 is 23.8 points for a child's knee score", () => {
    // van der Velden and others 2019, 10.1186/s12891-019-2600-6: standard error 8.6; the change worked by hand, 1.96 × 1.414 × 8.6.
    expect(detectableChange({ semPoints: 8.6, patients: 1 }).toFixed(1)).toBe("23.8");
    expect(detectableChange({ semPoints: 8.6, patients: 25 })).toBeCloseTo(detectableChange({ semPoints: 8.6, patients: 1 }) / 5, 12);
  });

  it("is passed by chance in one of twenty, where nobody changed", () => {
    // Second method: differences of two normal errors, every quantile against every other, by simple-statistics.
    const quantile = Array.from({ length: 400 }, (_, index) => 8.6 * probit((index + 0.5) / 400));
    const differences = quantile.flatMap((first) => quantile.map((second) => first - second));
    expect(mean(differences)).toBeCloseTo(0, 9);
    expect(Math.abs((1.96 * standardDeviation(differences)) / detectableChange({ semPoints: 8.6, patients: 1 }) - 1)).toBeLessThan(0.02);
    const beyond = differences.filter((difference) => Math.abs(difference) > detectableChange({ semPoints: 8.6, patients: 1 })).length;
    expect(Math.abs(beyond / differences.length - 0.05)).toBeLessThan(0.01);
  });

  it("falls to 0 with perfect reliability and is the whole spread without any", () => {
    expect(measurementError({ sdPoints: 12, reliability: 1 })).toBe(0);
    expect(measurementError({ sdPoints: 12, reliability: 0 })).toBe(12);
    // 10.1186/s13018-015-0286-5, table 3: spread 9.3, reliability 0.87, standard error 3.3; the ends that round to 0.87 enclose it.
    expect(measurementError({ sdPoints: 9.3, reliability: 0.875 })).toBeLessThan(3.35);
    expect(measurementError({ sdPoints: 9.3, reliability: 0.865 })).toBeGreaterThan(3.25);
  });
});

describe("a score from 0 to 100", () => {
  it("of 60 of 92 is 65.2, as the scoring instructions of a children's knee score print it", () => {
    // Scoring instructions of the Pedi-IKDC: worked example 60/92.
    expect(score0To100({ rawPoints: 60, leastPoints: 0, greatestPoints: 92 }).toFixed(1)).toBe("65.2");
  });

  it(`has its ends at 0 and 100, mirrors, and does not mind where counting starts (seed ${SEED})`, () => {
    const whole = fc.integer({ min: -50, max: 50 });
    check(fc.property(whole, fc.integer({ min: 1, max: 120 }), fc.integer({ min: 0, max: 120 }), (leastPoints, span, part) => {
      const greatestPoints = leastPoints + span;
      const score = (rawPoints: number) => score0To100({ rawPoints, leastPoints, greatestPoints });
      const steps = part % (span + 1);
      expect([score(leastPoints), score(greatestPoints)]).toEqual([0, 100]);
      expect(score(leastPoints + steps) + score(greatestPoints - steps)).toBeCloseTo(100, 10);
      expect(score(leastPoints + steps)).toBeCloseTo(score0To100({ rawPoints: steps, leastPoints: 0, greatestPoints: span }), 10);
    }));
    expect(() => score0To100({ rawPoints: 5, leastPoints: 6, greatestPoints: 6 })).toThrow("greatestPoints must be greater than 6, got 6");
  });
});

describe("a subscale with answers missing", () => {
  it.each([["pain", 9, 5], ["symptoms", 7, 4], ["daily living", 17, 9], ["sport", 5, 3], ["quality of life", 4, 2]])(
    "of %s with %d items needs %d answers",
    (_name, items, needed) => {
      // KOOS scoring 2012, table of answers needed.
      const answers = (given: number) => Array.from({ length: items }, (_, index) => (index < given ? 1 : null));
      expect(subscaleScore(answers(needed), { worstPoints: 4 })).toBe(75);
      expect(subscaleScore(answers(needed - 1), { worstPoints: 4 })).toBeNull();
    },
  );

  it(`is the mirrored score from 0 to 100 where all are given (seed ${SEED})`, () => {
    check(fc.property(fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 17 }), (answers) => {
      const rawPoints = answers.reduce((sum, points) => sum + points, 0);
      const mirrored = 100 - score0To100({ rawPoints, leastPoints: 0, greatestPoints: 4 * answers.length });
      expect(subscaleScore(answers, { worstPoints: 4 })).toBeCloseTo(mirrored, 10);
      expect(subscaleScore(answers, { worstPoints: 4 })).toBeCloseTo(100 - (mean(answers) * 100) / 4, 10);
    }));
    expect(() => subscaleScore([], { worstPoints: 4 })).toThrow("answers must hold at least one item, got 0");
    expect(() => subscaleScore([0, 5], { worstPoints: 4 })).toThrow("answers[1] must be at most 4, got 5");
  });
});

describe("a length on slices", () => {
  it(`lies between the bounds wherever it starts, and comes near both (seed ${SEED})`, () => {
    // Second method: lay the length over the slices and count those it meets.
    const tenths = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 10);
    check(fc.property(tenths(1, 400), tenths(10, 60), tenths(0, 15), fc.integer({ min: 0, max: 99 }), (lengthMm, thicknessMm, gapMm, start) => {
      const pitch = thicknessMm + gapMm;
      const from = 10 * pitch + (start / 100) * pitch;
      const slices = Array.from({ length: 600 }, (_, index) => index).filter((index) => index * pitch < from + lengthMm && index * pitch + thicknessMm > from).length;
      if (slices === 0) return;
      const { moreThanMm, lessThanMm } = sliceLength({ slices, thicknessMm, gapMm });
      expect(lengthMm).toBeGreaterThan(moreThanMm - 0.000000001);
      expect(lengthMm).toBeLessThan(lessThanMm + 0.000000001);
    }));
    expect(sliceLength({ slices: 1, thicknessMm: 3, gapMm: 0 })).toEqual({ moreThanMm: 0, lessThanMm: 3 });
  });
});

describe("every calculator of the evidence", () => {
  it.each(placesOf(CALCULATORS))("$calculator refuses what is no value for $parameter", ({ calculator, parameter, mayBeNegative, refusalOf }) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, ...(mayBeNegative ? [] : [-1])]) {
      const error = refusalOf(value);
      expect(error).toBeInstanceOf(RangeError);
      expect((error as RangeError).message, calculator).toMatch(new RegExp(`${parameter || "answers"}.* must .+, got ${String(value)}$`));
    }
  });

  it.each(CALCULATORS)("$file does what its example says", (calculator) => {
    expect(() => calculator.run(...(calculator.legal as never[]))).not.toThrow();
    const examples = examplesOf(calculator);
    expect(examples).toHaveLength(1);
    for (const { got, expected } of examples) expect(got()).toEqual(expected());
  });
});
