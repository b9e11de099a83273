import { describe, expect, it } from "vitest";
import { grade } from "../../src/bank/index.ts";
import type { Response } from "../../src/engine/question/response.ts";
import { type Given, items, many, notRight, one, reader } from "../support/second-way.ts";

/** Every family of module M02 beside a second way to its answer: counting whole children, walking through lists, or the rule in words. */

const tree = (of: Given, base: number) => {
  const torn = 1e6 * base;
  const [found, alarms] = [torn * (of("sensitivityPercent") / 100), (1e6 - torn) * (1 - of("specificityPercent") / 100)];
  return { ppvPercent: (100 * found) / (found + alarms), npvPercent: (100 * (1e6 - torn - alarms)) / (1e6 - alarms - found) };
};

describe("tests and odds", () => {
  it("follow from four counts written as a list of children", () => {
    expect(notRight("two-by-two", (_, of) => {
      const children = (["tp", "fp", "fn", "tn"] as const).flatMap((cell) => Array.from({ length: of(cell) }, () => ({ torn: cell === "tp" || cell === "fn", called: cell === "tp" || cell === "fp" })));
      const share = (all: typeof children, part: (child: (typeof children)[number]) => boolean): number => (100 * all.filter(part).length) / all.length;
      return many({ sensitivityPercent: share(children.filter(({ torn }) => torn), ({ called }) => called), specificityPercent: share(children.filter(({ torn }) => !torn), ({ called }) => !called), ppvPercent: share(children.filter(({ called }) => called), ({ torn }) => torn), npvPercent: share(children.filter(({ called }) => !called), ({ torn }) => !torn) }, 2);
    })).toEqual([]);
  });

  it("give predictive values as a million children do, and Kocher 2001's at 5 and 10 per cent", () => {
    const printed = (sensitivity: number, specificity: number, base: number) => Object.values(tree((key) => (key === "sensitivityPercent" ? sensitivity : specificity), base)).map((value) => value.toFixed(1));
    // The last pair prints 58.6, which is 10.02 per cent: the paper's base rate is 10 only up to the rounding of its print.
    expect([printed(79.3, 92, 0.05), printed(81.3, 90.6, 0.1), printed(75, 94.1, 0.1002)]).toEqual([["34.3", "98.8"], ["49.0", "97.8"], ["58.6", "97.1"]]);
    expect(notRight("ppv-from-base", (_, of) => many(tree(of, of("basePercent") / 100), 2))).toEqual([]);
  });

  it("hide a base rate that a search through all base rates finds", () => {
    expect(notRight("hidden-base", (_, of) => {
      let [low, high] = [0, 1];
      for (let step = 0; step < 60; step += 1) [low, high] = tree(of, (low + high) / 2).ppvPercent < of("ppvPercent") ? [(low + high) / 2, high] : [low, (low + high) / 2];
      return one(100 * low, 3);
    })).toEqual([]);
  });

  it("turn a chance by Bayes' rule as a tree of children does", () => {
    expect(notRight("lr-odds", (item, of) => {
      const [before, sensitivity, specificity] = [of("beforePercent") / 100, of("sensitivityPercent") / 100, of("specificityPercent") / 100];
      const [torn, whole] = item.about["result"] === "negative" ? [1 - sensitivity, specificity] : [sensitivity, 1 - specificity];
      return { kind: "sum", texts: { ratio: (torn / whole).toFixed(4), afterPercent: ((100 * before * torn) / (before * torn + (1 - before) * whole)).toFixed(3) } };
    })).toEqual([]);
  });

  it("give back the only table of counts that prints so, by trying tables", () => {
    expect(items("rebuild-table").slice(0, 60).filter((item) => {
      const of = reader(item);
      const fn = of("missed");
      for (let tp = 1; tp <= 150; tp += 1) {
        if (((100 * tp) / (tp + fn)).toFixed(1) !== of("sensitivityPercent").toFixed(1)) continue;
        for (let fp = 1; fp <= 60; fp += 1) {
          if (((100 * tp) / (tp + fp)).toFixed(1) !== of("ppvPercent").toFixed(1)) continue;
          for (let tn = 1; tn <= 150; tn += 1) if (((100 * tn) / (tn + fp)).toFixed(1) === of("specificityPercent").toFixed(1) && grade(item, many({ tp, fp, fn, tn }, 0)).verdict === "right") return false;
        }
      }
      return true;
    }).map(({ seed }) => seed)).toEqual([]);
  });

  it("add up over a list child by child", () => {
    expect(notRight("missed-per-list", (_, of) => {
      const missed = (of("basePercent") / 100) * (1 - of("sensitivityPercent") / 100);
      let [mean, none] = [0, 1];
      for (let child = 0; child < of("scans"); child += 1) [mean, none] = [mean + missed, none * (1 - missed)];
      return { kind: "sum", texts: { missed: mean.toFixed(3), anyPercent: (100 * (1 - none)).toFixed(2) } };
    })).toEqual([]);
  });

  it("join two tests as the four outcomes of each child do", () => {
    expect(notRight("two-tests", (item, of) => {
      const isPositive = (first: boolean, second: boolean): boolean => (item.about["rule"] === "all" ? first && second : first || second);
      const called = (firstShare: number, secondShare: number): number => [true, false].flatMap((first) => [true, false].filter((second) => isPositive(first, second)).map((second) => (first ? firstShare : 1 - firstShare) * (second ? secondShare : 1 - secondShare))).reduce((sum, part) => sum + part, 0);
      return many({ sensitivityPercent: 100 * called(of("firstSensitivityPercent") / 100, of("secondSensitivityPercent") / 100), specificityPercent: 100 * (1 - called(1 - of("firstSpecificityPercent") / 100, 1 - of("secondSpecificityPercent") / 100)) }, 2);
    })).toEqual([]);
  });
});

describe("scans", () => {
  it("bound a length as laying it across slices does: 4 slices of 4 mm with gaps of 0.5 give 9.5 to 18.5", () => {
    /** Walks along slices and gaps in tenths: which lengths are seen on exactly so many slices, wherever they begin. */
    const walked = (count: number, slice: number, gap: number): readonly [number, number] => {
      const [t, g] = [Math.round(slice * 10), Math.round(gap * 10)];
      const seen = (from: number, to: number): number => Array.from({ length: count + 4 }, (_, at) => at * (t + g)).filter((start) => from < start + t && to > start).length;
      const lengths = Array.from({ length: (count + 2) * (t + g) }, (_, length) => length + 1).filter((length) => Array.from({ length: t + g }, (_, from) => from + t + g).some((from) => seen(from, from + length) === count));
      return [((lengths[0] ?? 0) - 2) / 10, (lengths.at(-1) ?? 0) / 10];
    };
    const met = new Map<string, readonly [number, number]>();
    const bounds = (count: number, slice: number, gap: number): readonly [number, number] => {
      const key = [count, slice, gap].join();
      const known = met.get(key) ?? walked(count, slice, gap);
      met.set(key, known);
      return known;
    };
    expect(bounds(4, 4, 0.5)).toEqual([9.5, 18.5]);
    expect(notRight("slices", (_, of) => {
      const [from, to] = bounds(of("slices"), of("sliceMm"), of("gapMm"));
      return { kind: "range", from: from.toFixed(2), to: to.toFixed(2) };
    })).toEqual([]);
  });

  it("show bright menisci at the three measured ages only (J Bone Joint Surg Br 1998: 80, 65 and 35 per cent)", () => {
    const rates: Readonly<Record<string, number>> = { 10: 0.8, 13: 0.65, 15: 0.35 };
    expect(notRight("bright-signal", (item, of) => {
      const rate = rates[item.about["age"] ?? ""];
      return rate === undefined ? { kind: "sum", says: "cannot-be-told" } : one(of("menisci") * rate, 2);
    })).toEqual([]);
  });
});

describe("a picture and the plan", () => {
  /** The sheet read as a family would read it: a day crossed off at a time, from what the question prints. */
  const judged = (stem: string): Response => {
    if (/names no tear/.test(stem)) return { kind: "judge", picks: "again", reasons: ["misses"] };
    const numberAfter = (words: RegExp): number => Number(words.exec(stem)?.[1] ?? Number.NaN);
    const isLocked = /not been able to straighten/.test(stem);
    let allowed = numberAfter(isLocked ? /theatre within (\d+) days of locking/ : /picture within (\d+) days of the injury/);
    for (let day = 0; day < numberAfter(isLocked ? /knee for (\d+) day/ : /knee (\d+) days? ago/); day += 1) allowed -= 1;
    for (let day = 0; day < numberAfter(/scanner is in (\d+) day/); day += 1) allowed -= 1;
    const time = allowed < 0 ? "too-late" : "in-time";
    if (isLocked) return { kind: "judge", picks: allowed < 0 ? "without" : "beside", reasons: ["one-plan", time] };
    return { kind: "judge", picks: allowed < 0 ? "ask" : "wait", reasons: ["two-plans", time] };
  };

  it("follow from the printed sheet by crossing off days", () => {
    expect(notRight("no-mri", (item) => judged(item.stem.join(" ")))).toEqual([]);
  });

  it("quote the sensitivity that Munger 2019 prints, 62.3 per cent, where the report was clean", () => {
    const clean = items("no-mri").filter(({ about }) => about["finding"] === "clean");
    expect(clean.length).toBeGreaterThan(100);
    expect(clean.filter((item) => !grade(item, { kind: "judge", picks: "closed", reasons: ["clean-ends"] }).working.join(" ").includes("62.3"))).toEqual([]);
  });
});
