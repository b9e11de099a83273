import { sampleCorrelation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { grade } from "../../src/bank/index.ts";
import { items, many, notRight, one, reader } from "../support/second-way.ts";

/** Families of module DX beside a second way to their answer: a search instead of a formula, lists of marks, the examples of the curriculum. */

/** End of Wilson's interval by halving: where the distance of the observed share is 1.959964 standard errors. */
const end = (events: number, total: number, side: 1 | -1): number => {
  const seen = events / total;
  let [near, far] = [seen, side > 0 ? 1 : 0];
  for (let step = 0; step < 80; step += 1) {
    const middle = (near + far) / 2;
    const isInside = Math.abs(seen - middle) <= 1.959964 * Math.sqrt((middle * (1 - middle)) / total);
    [near, far] = isInside ? [middle, far] : [near, middle];
  }
  return 100 * near;
};

describe("setting a standard and reading the figures", () => {
  it("puts around 18 of 24 the interval in which the score test does not reject: 55 to 88 (Wilson 1927)", () => {
    expect([end(18, 24, -1).toFixed(0), end(18, 24, 1).toFixed(0)]).toEqual(["55", "88"]);
    expect(notRight("difficulty", (_, of) => many({ sharePercent: (100 * of("rightAnswers")) / of("learners"), lowPercent: end(of("rightAnswers"), of("learners"), -1), highPercent: end(of("rightAnswers"), of("learners"), 1) }, 2))).toEqual([]);
  });

  it("sets 27 in 100 at either end against each other, and adds the arms of both Wilson intervals as the sides of a right angle (Newcombe 1998)", () => {
    expect(notRight("discriminate", (_, of) => {
      const hundredths = 27 * of("learners");
      const each = hundredths % 100 < 50 ? (hundredths - (hundredths % 100)) / 100 : (hundredths - (hundredths % 100)) / 100 + 1;
      const arm = (key: string, side: 1 | -1): number => Math.abs(end(of(key), each, side) / 100 - of(key) / each);
      const index = (of("topRight") - of("bottomRight")) / each;
      return many({ index, low: index - Math.sqrt(arm("topRight", -1) ** 2 + arm("bottomRight", 1) ** 2), high: index + Math.sqrt(arm("topRight", 1) ** 2 + arm("bottomRight", -1) ** 2) }, 5);
    })).toEqual([]);
  });

  it("correlates an item with the rest as a library of statistics does (simple-statistics), whatever the divisor", () => {
    const KEYS = ["firstPoints", "secondPoints", "thirdPoints", "fourthPoints", "fifthPoints", "sixthPoints"];
    expect(notRight("point-biserial", (item, of) => {
      const right = item.givens.map(({ label }) => (label.endsWith("item right") ? 1 : 0));
      return one(sampleCorrelation(right, KEYS.map((key, at) => of(key) - (right[at] ?? 0))), 5);
    })).toEqual([]);
  });

  it("calls a wrong choice dead where, of twenty groups as large as its takers, the learners would not all be taken up (one in twenty, Tarrant and others 2009)", () => {
    const met = new Set<string>();
    expect(notRight("dead-choice", (_, of) => {
      const names = ["first", "second", "third"];
      const repeated = (count: number, times: number): number => Array.from({ length: times }, () => count).reduce((sum, one) => sum + one, 0);
      const dead = names.filter((name) => repeated(of(`${name}Took`), 20) < of("learners"));
      const right = of("learners") - names.reduce((sum, name) => sum + of(`${name}Took`), 0);
      const next = right > 0.9 * of("learners") ? "leave" : (dead.length > 0 && "rewrite") || "keep";
      met.add(`${next} ${dead.length}`);
      return { kind: "name", picks: { ...Object.fromEntries(names.map((name) => [name, dead.includes(name) ? "dead" : "works"])), next } };
    })).toEqual([]);
    for (const kind of ["keep 0", "rewrite 1", "rewrite 2", "leave 3"]) expect(met).toContain(kind);
  });

  it("lets a comparison stand only where the difference of two score intervals leaves nought outside (Newcombe 1998)", () => {
    const met = new Set<string>();
    expect(notRight("too-few", (item, of) => {
      const said = item.stem.join(" ");
      if (!item.givens.some(({ key }) => key === "secondRight")) return said.includes("In this group") ? { kind: "judge", picks: "stands", reasons: ["own-group"] } : { kind: "judge", picks: "interval", reasons: ["both-ends"] };
      const shares = ["first", "second"].map((name) => of(`${name}Right`) / of(`${name}Learners`));
      const arm = (name: string, side: 1 | -1): number => Math.abs(end(of(`${name}Right`), of(`${name}Learners`), side) / 100 - of(`${name}Right`) / of(`${name}Learners`));
      const low = (shares[0] ?? 0) - (shares[1] ?? 0) - Math.sqrt(arm("first", -1) ** 2 + arm("second", 1) ** 2);
      met.add(low > 0 ? "apart" : "overlap");
      if (low > 0) return { kind: "judge", picks: "interval", reasons: ["apart"] };
      const small = of("firstLearners") < 5 || of("secondLearners") < 5;
      return { kind: "judge", picks: "not", reasons: ["overlap", ...(said.includes("came first") ? ["some-first"] : []), ...(small ? ["person"] : [])] };
    })).toEqual([]);
    expect([...met].sort()).toEqual(["apart", "overlap"]);
  });

  it("takes mean and spread from all pairs of judges", () => {
    expect(notRight("cut-score", (_, of) => {
      const judges = ["firstPoints", "secondPoints", "thirdPoints", "fourthPoints"].map(of);
      const pairs = judges.flatMap((one, at) => judges.slice(at + 1).map((other) => (one - other) ** 2));
      return { kind: "sum", texts: { cutPoints: (judges.reduce((sum, judge) => sum + judge, 0) / 4).toFixed(3), spreadPoints: Math.sqrt(pairs.reduce((sum, square) => sum + square, 0) / pairs.length / 2).toFixed(3), mustBeRight: String(of("critical")) } };
    })).toEqual([]);
  });

  it("finds a standard error of 4.5 at 10 points and 0.8, and a reliability that splits the variance in two", () => {
    expect((10 * Math.sqrt(1 - 0.8)).toFixed(1)).toBe("4.5");
    expect(notRight("reliability", (_, of) => {
      const total = of("sdPoints") * of("sdPoints");
      const common = (total - of("withinPoints")) * (1 + 1 / (of("items") - 1));
      return { kind: "sum", texts: { reliability: (common / total).toFixed(4), semPoints: Math.sqrt(total - common).toFixed(3) } };
    })).toEqual([]);
  });

  it("gives 56.5 minutes for 2500 words, 12 questions and difficulty 3, as the curriculum prints", () => {
    const minutes = (words: number, questions: number, difficulty: number): number => (9 * (209 * words + 278_000 * questions + 1_550_000 * difficulty - 2_230_000)) / 1_000_000;
    expect(minutes(2500, 12, 3).toFixed(1)).toBe("56.5");
    expect(notRight("contact-time", (_, of) => one(minutes(of("words"), of("questions"), of("difficulty")), 3))).toEqual([]);
  });

  it("allows 7.5 per cent after 40 without harm, near the exact end 1 − 0.05^(1/n) (Hanley and Lippman-Hand 1983)", () => {
    expect((100 * 3) / 40).toBe(7.5);
    expect(items("rare-harm").filter((item) => {
      const n = reader(item)("cases");
      const exact = 100 * (1 - 0.05 ** (1 / n));
      return grade(item, one(300 / n, 2)).verdict !== "right" || 300 / n < exact || 300 / n > exact * 1.12;
    }).map(({ seed }) => seed)).toEqual([]);
  });
});
