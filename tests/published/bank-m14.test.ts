import { describe, expect, it } from "vitest";
import { answerTo, compute, draw, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";

const SEEDS = Array.from({ length: 1000 }, (_, seed) => seed + 40_000);
const items = (id: string): readonly Item[] => SEEDS.map((seed) => draw(id, seed));
const value = (item: Item, key: string): number => {
  const given = item.givens.find((one) => one.key === key);
  if (!given) throw new Error(`${item.family} ${item.seed} has no ${key}`);
  return Number(given.text);
};
const answers = (item: Item): unknown => answerTo(item);
const stem = (item: Item): string => item.stem.join(" ");
const typed = (item: Item): Readonly<Record<string, number>> => {
  const answer = answerTo(item);
  if (answer.kind !== "sum" || "says" in answer) throw new Error(`${item.family} ${item.seed} has no number`);
  const entries = "texts" in answer ? Object.entries(answer.texts) : [["only", answer.text] as const];
  return Object.fromEntries(entries.map(([key, text]) => [key, Number(text)]));
};
/** Half a unit of the last digit, and a hair for the double. */
const near = (step: number): number => step / 2 + step / 10_000;

describe("dates and weeks", () => {
  it("agrees with the calendar of the language (Date in UTC, ECMA-262), seeds 40000 to 40999", () => {
    for (const item of items("visit-dates")) {
      const at = new Date(Date.UTC(value(item, "startYearPieces"), value(item, "startMonthPieces") - 1, value(item, "startDayPieces")));
      const weekday = at.getUTCDay();
      at.setUTCDate(at.getUTCDate() + 7 * value(item, "weeksPieces"));
      expect(answers(item)).toEqual({ kind: "sum", texts: { dayPieces: String(at.getUTCDate()), monthPieces: String(at.getUTCMonth() + 1) } });
      expect(at.getUTCDay()).toBe(weekday);
    }
  });

  it("reads the row of the printed table of this hospital, seeds 40000 to 40999", () => {
    for (const item of items("flexion-plan")) {
      let week = 0;
      for (let day = 0; day < value(item, "dayPieces"); day += 1) if (day % 7 === 0) week += 1;
      const own = stem(item).split("Another hospital")[0] ?? "";
      const rows = [...own.matchAll(/weeks (\d+) to (\d+) from 0 to (\d+)°/g)].map(([, from, to, bend]) => ({ from: Number(from), to: Number(to), bend }));
      expect(rows).toHaveLength(3);
      const arc = rows.find(({ from, to }) => week >= from && week <= to)?.bend ?? "not-in-table";
      expect(answers(item)).toEqual({ kind: "name", picks: { week: String(week), arc } });
    }
  });
});

describe("loads and sides", () => {
  it("sets the adult rule against the child, by trying shares and kilograms, seeds 40000 to 40999", () => {
    expect(compute("step-load", { weightKg: 24, adultRuleKg: 20, allowedPercent: 50 })).toMatchObject({ limitKg: 12 });
    expect((compute("step-load", { weightKg: 24, adultRuleKg: 20, allowedPercent: 50 }) as { readonly sharePercent: number }).sharePercent).toBeCloseTo(83.33, 2);
    for (const item of items("step-load")) {
      const { sharePercent = 0, limitKg = 0 } = typed(item);
      expect(Math.abs((sharePercent * value(item, "weightKg")) / 100 - value(item, "adultRuleKg"))).toBeLessThanOrEqual(near(value(item, "weightKg") / 100));
      let kilograms = 0;
      while ((kilograms + 1) * 100 <= value(item, "weightKg") * value(item, "allowedPercent")) kilograms += 1;
      expect(limitKg).toBe(kilograms);
      const adult = { kind: "sum", texts: { sharePercent: String(sharePercent), limitKg: String(value(item, "adultRuleKg")) } } as const;
      expect(grade(item, adult).verdict).toBe("unsafe-side");
    }
  });

  it("gives back the operated side from the symmetry, seeds 40000 to 40999", () => {
    for (const item of items("side-to-side")) {
      const { only = 0 } = typed(item);
      expect(Math.abs((only * value(item, "otherCm")) / 100 - value(item, "operatedCm"))).toBeLessThanOrEqual(near(value(item, "otherCm") / 100));
    }
  });
});

const Z = 1.959964;
/** Wilson's ends are the two shares from which the count lies exactly z standard errors away (Wilson 1927): found by halving. */
const wilsonEnd = (events: number, total: number, side: 1 | -1): number => {
  const share = events / total;
  let [inner, outer] = [share, side === 1 ? 1 : 0];
  for (let step = 0; step < 80; step += 1) {
    const middle = (inner + outer) / 2;
    if (Math.abs(share - middle) > Z * Math.sqrt((middle * (1 - middle)) / total)) outer = middle;
    else inner = middle;
  }
  return inner;
};

describe("rates", () => {
  it("finds Wilson's ends by halving, seeds 40000 to 40999; 93 of 503 is 18.5 (15.3 to 22.1), 2 of 746 is 0.27 (0.07 to 0.97)", () => {
    for (const [events, total, low, high] of [[93, 503, 15.3, 22.1], [2, 746, 0.07, 0.97]] as const) {
      const solution = compute("rate-ci", { eventsPieces: events, totalPieces: total }) as Readonly<Record<string, number>>;
      const places = low < 1 ? 2 : 1;
      expect([solution["lowPercent"]?.toFixed(places), solution["highPercent"]?.toFixed(places)]).toEqual([low.toFixed(places), high.toFixed(places)]);
    }
    for (const item of items("rate-ci")) {
      const { percent = -1, lowPercent = -1, highPercent = -1 } = typed(item);
      const [events, total] = [value(item, "eventsPieces"), value(item, "totalPieces")];
      expect(Math.abs(percent - (100 * events) / total)).toBeLessThanOrEqual(near(0.1));
      expect(Math.abs(lowPercent - 100 * wilsonEnd(events, total, -1))).toBeLessThanOrEqual(near(0.1));
      expect(Math.abs(highPercent - 100 * wilsonEnd(events, total, 1))).toBeLessThanOrEqual(near(0.1));
    }
  });

  it("reckons a risk from odds by counting a thousand people; 2.04 at 7 per cent is 13.3", () => {
    expect((compute("odds-to-risk", { oddsRatioTimes: 2.04, baseRiskPercent: 7 }) as { readonly riskPercent: number }).riskPercent).toBeCloseTo(13.3, 1);
    for (const item of items("odds-to-risk")) {
      const hit = value(item, "baseRiskPercent") * 10 * value(item, "oddsRatioTimes");
      const free = 1000 - value(item, "baseRiskPercent") * 10;
      const { only = 0 } = typed(item);
      expect(Math.abs(only - (100 * hit) / (hit + free))).toBeLessThanOrEqual(near(0.1));
    }
  });

  it("compares two groups by cross-multiplying; 46 of 311 against 54 of 546 is 1.50, 4.9 points, one in 21", () => {
    const printed = compute("crude-rr", { eventsPieces: 46, totalPieces: 311, otherEventsPieces: 54, otherTotalPieces: 546 }) as Readonly<Record<string, number>>;
    expect([printed["ratioTimes"]?.toFixed(2), printed["differencePoints"]?.toFixed(1), printed["oneInPieces"]?.toFixed(1)]).toEqual(["1.50", "4.9", "20.4"]);
    for (const item of items("crude-rr")) {
      const [a, n, b, m] = ["eventsPieces", "totalPieces", "otherEventsPieces", "otherTotalPieces"].map((key) => value(item, key)) as [number, number, number, number];
      const { ratioTimes = 0, differencePoints = 0, oneInPieces = 0 } = typed(item);
      expect(Math.abs(ratioTimes * b * n - a * m)).toBeLessThanOrEqual(near(0.01) * b * n);
      expect(Math.abs(differencePoints * n * m - 100 * (a * m - b * n))).toBeLessThanOrEqual(near(0.1) * n * m);
      let patients = 0;
      while (patients * (a * m - b * n) < n * m) patients += 1;
      expect(oneInPieces).toBe(patients);
    }
  });

  it("leaves one chance in twenty where nothing was seen, seeds 40000 to 40999; none of 60 is 5 per cent (Hanley 1983)", () => {
    expect(compute("zero-events", { patientsPieces: 60 })).toEqual({ upperPercent: 5 });
    for (const item of items("zero-events")) {
      const { only = 0 } = typed(item);
      const unseen = (1 - only / 100) ** value(item, "patientsPieces");
      // The rule of three is a short form: exp(−3) is 0.0498, and a rounded per cent moves it a little.
      expect(unseen).toBeGreaterThan(0.03);
      expect(unseen).toBeLessThan(0.07);
      expect(Math.abs(only * value(item, "patientsPieces") - 300)).toBeLessThanOrEqual(near(0.1) * value(item, "patientsPieces"));
    }
  });
});

describe("scores", () => {
  it("puts the worst at 0 and the best at 100 by a straight line, seeds 40000 to 40999", () => {
    for (const item of items("score-100")) {
      const { only = 0 } = typed(item);
      const [least, greatest] = [value(item, "leastPoints"), value(item, "greatestPoints")];
      const back = least + (only / 100) * (greatest - least);
      expect(Math.abs(back - value(item, "rawPoints"))).toBeLessThanOrEqual((near(0.1) / 100) * (greatest - least));
    }
  });

  it("finds the change beyond error from the variance of a difference, seeds 40000 to 40999; 8.6 is 23.8 (de Vet 2006)", () => {
    const printed = compute("real-change", { semPoints: 8.6, patientsPieces: 1, beforePoints: 40, importantPoints: 10, acceptablePoints: 60 }) as Readonly<Record<string, number>>;
    expect(printed["detectablePoints"]?.toFixed(1)).toBe("23.8");
    for (const item of items("real-change")) {
      const sem = value(item, "semPoints");
      const variance = (sem * sem + sem * sem) / value(item, "patientsPieces");
      const error = 1.96 * Math.sqrt(variance);
      // The first tenth of a point that meets all three demands.
      const meets = (tenths: number): boolean => tenths / 10 >= value(item, "acceptablePoints") && tenths - 10 * value(item, "beforePoints") >= 10 * value(item, "importantPoints") && tenths / 10 - value(item, "beforePoints") >= error - 1 / 1_000_000;
      const first = Array.from({ length: 1001 }, (_, tenths) => tenths).find(meets);
      if (first === undefined) expect(answers(item)).toEqual({ kind: "sum", says: "none" });
      else expect([Math.abs((typed(item)["detectablePoints"] ?? 0) - error) <= near(0.1), typed(item)["leastAfterPoints"]]).toEqual([true, first / 10]);
    }
  });
});

describe("flags and faults", () => {
  /** A card read by its signs alone; a local table, common practice, no source but for the artery (48 cases, day 1 to week 10). */
  const slotOf = (told: string): string => {
    if (/breathe|cold and pale|pulse|hangs down|numb|toes are stretched/.test(told)) return "emergency";
    if (/beats|full of blood|there is fever|calf/.test(told)) return "today";
    return /dressing|run out|stitch in the skin/.test(told) ? "tomorrow" : "clinic";
  };
  const slots = ["emergency", "today", "tomorrow", "clinic"];

  it("answers by the signs and calls every later slot unsafe, seeds 40000 to 40999", () => {
    for (const item of items("red-flag")) {
      const told = /“(.*?)”/.exec(stem(item))?.[1] ?? "";
      const right = slotOf(told);
      expect(answers(item)).toEqual({ kind: "name", picks: { when: right } });
      for (const slot of slots) {
        const { verdict } = grade(item, { kind: "name", picks: { when: slot } });
        expect(verdict === "unsafe-side").toBe(slots.indexOf(slot) > slots.indexOf(right));
      }
      expect(Number(item.about["day"])).toBeLessThanOrEqual(70);
    }
    expect(new Set(items("red-flag").map(({ about }) => about["call"])).size).toBeGreaterThanOrEqual(14);
  });

  it("finds lines that disagree with themselves by reading them, seeds 40000 to 40999; 21 of 1015 printed as 1.4 is one", () => {
    const isWrong = (text: string): boolean => {
      const numbers = [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([digits]) => digits);
      const [first = "", second = "", third = ""] = numbers;
      if (/boys/.test(text)) return Number(first) + Number(second) !== Number(third);
      if (/ of \d/.test(text)) {
        const places = third.split(".")[1]?.length ?? 0;
        // Printed and true share in whole units of the last digit: a fault is more than half a unit.
        return Math.abs(Number(first) * 100 * 10 ** places - Number(third) * 10 ** places * Number(second)) > 0.5005 * Number(second);
      }
      const [low, high] = /interval/.test(text) ? [numbers[2], numbers[3]] : [second, third];
      return Number(first) < Number(low) || Number(first) > Number(high);
    };
    for (const item of items("print-fault")) {
      const things = "things" in item ? item.things : [];
      expect(answers(item)).toEqual({ kind: "tray", found: things.filter(({ text }) => isWrong(text)).map(({ id }) => id).sort() });
    }
    expect(isWrong("21 of 1015 had a major complication (1.4 per cent).")).toBe(true);
    expect(isWrong("21 of 1015 had a major complication (2.1 per cent).")).toBe(false);
  });
});
