import { describe, expect, it } from "vitest";
import { answerTo, compute, draw, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { OrderResponse, Response, TrayResponse } from "../../src/engine/question/response.ts";

/** Every family of module M05 beside a second way to its answer: a calendar, a simulation of minutes, or the rule in words. */
const ITEMS = 1000;
const MS_PER_MIN = 60_000;

const items = (id: string): readonly Item[] => Array.from({ length: ITEMS }, (_, seed) => draw(id, seed));
const valuesOf = (item: Item): Record<string, number> => Object.fromEntries(item.givens.map(({ key, text }) => [key, Number(text)]));
const value = (givens: Readonly<Record<string, number>>, key: string): number => givens[key] ?? Number.NaN;
const number = (id: string, givens: Record<string, number>, ask: string): number => value(compute(id, givens) as Record<string, number>, ask);
const notRight = (id: string, respond: (item: Item) => Response): readonly string[] =>
  items(id).filter((item) => grade(item, respond(item)).verdict !== "right").map(({ seed }) => seed);

/** A clock time as an instant of a calendar day; the calendar of the platform carries hours and midnights. */
const at = (clock: string | undefined): number => Date.parse(`2024-03-01T${clock ?? ""}:00Z`);
const onwards = (clock: string | undefined, before: number): number => (at(clock) < before ? at(clock) + 24 * 60 * MS_PER_MIN : at(clock));

/** Whole numbers for shuffling, by the minimal standard generator (Park and Miller 1988, doi 10.1145/63039.63042). */
const generator = (seed: number) => {
  let state = seed;
  return (count: number): number => {
    state = (state * 16_807) % 2_147_483_647;
    return state % count;
  };
};

/** Orders near the right one: some neighbours changed places, and now and then a card thrown anywhere. */
const nearOrders = (cards: readonly string[], seed: number): string[][] => {
  const next = generator(seed + 1);
  return Array.from({ length: 30 }, () => {
    const order = [...cards];
    for (let change = next(5); change > 0; change -= 1) {
      const from = next(order.length);
      const [card] = order.splice(from, 1);
      order.splice(next(3) === 0 ? next(order.length + 1) : Math.min(order.length, from + 1), 0, card ?? "");
    }
    return order;
  });
};

const ordersAgree = (id: string, isRight: (cards: readonly string[]) => boolean): readonly string[] =>
  items(id).filter((item, seed) => {
    const right = (answerTo(item) as OrderResponse).cards;
    return !isRight(right) || nearOrders(right, seed).some((cards) => (grade(item, { kind: "order", cards }).verdict === "right") !== isRight(cards));
  }).map(({ seed }) => seed);

/** True where every card of the first list stands before every card of the second, as far as they are shown. */
const all = (cards: readonly string[], first: readonly string[], then: readonly string[]): boolean =>
  first.every((one) => then.every((other) => !cards.includes(one) || !cards.includes(other) || cards.indexOf(one) < cards.indexOf(other)));

describe("05a: width of the cuff (more than half the diameter, BOA standard 2021)", () => {
  it("finds 3.82 cm for 24 and 5.73 cm for 36, as the curriculum prints", () => {
    const least = (girthCm: number): number => number("cuff-width", { girthCm, narrowCuffCm: 3, middleCuffCm: 5, wideCuffCm: 9 }, "leastCm");
    expect(least(24)).toBeCloseTo(3.82, 2);
    expect(least(36)).toBeCloseTo(5.73, 2);
  });
  it("agrees on 1000 limbs with a polygon instead of π (Archimedes, Measurement of a Circle)", () => {
    let [side, sides] = [1, 6];
    while (sides < 1_000_000) [side, sides] = [Math.sqrt((side * side) / (2 + Math.sqrt(4 - side * side))), sides * 2];
    const radiusOf = (girth: number): number => girth / (sides * side);
    expect(notRight("cuff-width", (item) => {
      const g = valuesOf(item);
      const half = radiusOf(value(g, "girthCm"));
      const cuffs = ["narrowCuffCm", "middleCuffCm", "wideCuffCm"].map((key) => value(g, key)).filter((width) => width > half);
      if (cuffs.length === 0) return { kind: "sum", says: "none" };
      return { kind: "sum", texts: { leastCm: (Math.ceil(half * 10) / 10).toFixed(1), cuffCm: String(Math.min(...cuffs)) } };
    })).toEqual([]);
  });
  it("says none in some draws", () => {
    expect(items("cuff-width").filter((item) => "says" in answerTo(item)).length).toBeGreaterThan(10);
  });
});

describe("05b, 05c, 05f: pressures", () => {
  it("agrees on 1000 settings, counted up by fives as long as the sum allows, and finds the next five unsafe", () => {
    const setting = (item: Item): number => {
      const g = valuesOf(item);
      let mmHg = 0;
      while (mmHg + 5 - value(g, "marginMmHg") <= value(g, "occlusionMmHg")) mmHg += 5;
      return mmHg;
    };
    expect(notRight("pressure", (item) => ({ kind: "sum", text: String(setting(item)) }))).toEqual([]);
    expect(items("pressure").filter((item) => grade(item, { kind: "sum", text: String(setting(item) + 5) }).verdict !== "unsafe-side").map(({ seed }) => seed)).toEqual([]);
  });
  it("estimates 123.5 mmHg for 95 and 0.85, as the curriculum prints after Tuncali 2006", () => {
    expect(number("estimate", { systolicMmHg: 95, girthCm: 40, splitCm: 50, belowCoefficient: 0.85, fromCoefficient: 0.8 }, "estimateMmHg")).toBeCloseTo(123.5, 1);
  });
  it("gives back the systolic pressure of 1000 estimates when the formula is run backwards", () => {
    const failed = items("estimate").filter((item) => {
      const g = valuesOf(item);
      const row = value(g, value(g, "girthCm") >= value(g, "splitCm") ? "fromCoefficient" : "belowCoefficient");
      return Math.abs(number("estimate", g, "estimateMmHg") * row - 10 - value(g, "systolicMmHg")) > 1e-6;
    });
    expect(failed.map(({ seed }) => seed)).toEqual([]);
  });
  it("finds 49.7 % between 300 and 151 mmHg (Reilly 2009), and agrees on 1000 pairs", () => {
    expect(number("fixed-vs-measured", { fixedMmHg: 300, measuredMmHg: 151 }, "reductionPercent")).toBeCloseTo(49.7, 1);
    expect(notRight("fixed-vs-measured", (item) => {
      const g = valuesOf(item);
      return { kind: "sum", text: (100 - (100 * value(g, "measuredMmHg")) / value(g, "fixedMmHg")).toFixed(1) };
    })).toEqual([]);
  });
});

describe("05d, 05e: clocks against the calendar", () => {
  it("agrees on 1000 cuffs", () => {
    expect(notRight("minutes-left", (item) => {
      const g = valuesOf(item);
      const up = at(item.about["upAt"]);
      const left = value(g, "limitMin") - (onwards(item.about["nowAt"], up) - up) / MS_PER_MIN;
      if (left <= 0) return { kind: "sum", says: "none" };
      const alarm = new Date(up + (value(g, "limitMin") - value(g, "warningMin")) * MS_PER_MIN);
      return { kind: "sum", texts: { leftMin: String(left), alarmHour: String(alarm.getUTCHours()), alarmMinute: String(alarm.getUTCMinutes()) } };
    })).toEqual([]);
  });
  it("calls an alarm that rings later than it should unsafe, and one that rings earlier not", () => {
    const shifted = (item: Item, byMin: number): Response | null => {
      const right = answerTo(item);
      if (right.kind !== "sum" || !("texts" in right)) return null;
      const alarm = new Date(at("12:00") + byMin * MS_PER_MIN + (Number(right.texts["alarmHour"]) * 60 + Number(right.texts["alarmMinute"]) - 720) * MS_PER_MIN);
      return { kind: "sum", texts: { ...right.texts, alarmHour: String(alarm.getUTCHours()), alarmMinute: String(alarm.getUTCMinutes()) } };
    };
    for (const item of items("minutes-left")) {
      const [later, sooner] = [shifted(item, 7), shifted(item, -7)];
      if (later) expect(grade(item, later).verdict).toBe("unsafe-side");
      if (sooner) expect(grade(item, sooner).verdict).not.toBe("unsafe-side");
    }
  });
  it("agrees on 1000 cuffs that went up twice, minute by minute", () => {
    expect(notRight("two-periods", (item) => {
      const g = valuesOf(item);
      const first = at(item.about["firstUpAt"]);
      const down = onwards(item.about["downAt"], first);
      const again = onwards(item.about["againUpAt"], down);
      const now = onwards(item.about["nowAt"], again);
      let [counted, rest] = [0, 0];
      for (let minute = first; minute < now; minute += MS_PER_MIN) {
        const isUp = minute < down || minute >= again;
        if (isUp && rest >= value(g, "restMin")) counted = 0;
        rest = isUp ? 0 : rest + 1;
        counted += isUp ? 1 : 0;
      }
      const left = value(g, "limitMin") - counted;
      return left <= 0 ? { kind: "sum", says: "none" } : { kind: "sum", texts: { countedMin: String(counted), leftMin: String(left) } };
    })).toEqual([]);
  });
  it("draws short and long rests, and says none in some draws of both families", () => {
    const drawn = items("two-periods");
    const short = drawn.filter((item) => (at(item.about["againUpAt"]) - at(item.about["downAt"])) / MS_PER_MIN < value(valuesOf(item), "restMin")).length;
    expect(short).toBeGreaterThan(90);
    expect(short).toBeLessThan(ITEMS - 60);
    for (const id of ["two-periods", "minutes-left"]) expect(items(id).filter((item) => "says" in answerTo(item)).length).toBeGreaterThan(20);
  });
});

describe("05g: doses and cuffs against the calendar", () => {
  const minutes = (from: string | undefined, to: string | undefined): number => (at(to) - at(from)) / MS_PER_MIN;
  const broken = (item: Item): readonly string[] => {
    const g = valuesOf(item);
    return Object.keys(item.about).filter((key) => key.startsWith("row-")).filter((key) => {
      const [, start, end, cuff, skin] = (item.about[key] ?? "").split(" ");
      return minutes(end, cuff) < value(g, "gapMin") || minutes(start, skin) > value(g, "windowMin");
    }).sort();
  };
  it("agrees on 1000 records", () => {
    expect(items("dose-cuff").filter((item) => (answerTo(item) as TrayResponse).found.join() !== broken(item).join()).map(({ seed }) => seed)).toEqual([]);
  });
  it("calls a dose after the cuff that is let pass unsafe, in every record that has one", () => {
    const late = items("dose-cuff").flatMap((item) => broken(item).filter((key) => {
      const [, , end, cuff] = (item.about[key] ?? "").split(" ");
      return minutes(end, cuff) <= 0;
    }).map((key) => ({ item, key })));
    expect(late.length).toBeGreaterThan(100);
    expect(late.filter(({ item, key }) => grade(item, { kind: "tray", found: broken(item).filter((one) => one !== key) }).verdict !== "unsafe-side").map(({ item }) => item.seed)).toEqual([]);
  });
  it("keeps every time of a record in its order: dose begun, dose finished, skin after cuff", () => {
    const wrong = items("dose-cuff").filter((item) => Object.keys(item.about).filter((key) => key.startsWith("row-")).some((key) => {
      const [, start, end, cuff, skin] = (item.about[key] ?? "").split(" ");
      return minutes(start, end) <= 0 || minutes(cuff, skin) <= 0 || minutes(end, skin) <= 0;
    }));
    expect(wrong.map(({ seed }) => seed)).toEqual([]);
  });
});

describe("05h, 05i: orders against the rule in words (common practice, no source)", () => {
  it("agrees on orders before the skin", () => {
    expect(ordersAgree("before-skin", (cards) =>
      all(cards, ["position"], ["pad", "cuff", "prep", "drape"]) && all(cards, ["pad"], ["prep", "drape"]) && all(cards, ["cuff"], ["alarm", "prep"])
      && all(cards, ["prep"], ["drape"]) && all(cards, ["drape"], ["pause"]) && all(cards, ["pause", "alarm", "dose"], ["up"]) && all(cards, ["up"], ["cut"]))).toEqual([]);
  });
  it("agrees on orders for skin and warmth", () => {
    expect(ordersAgree("skin-and-warmth", (cards) =>
      all(cards, ["pad", "soft", "seal", "cover"], ["prep"]) && all(cards, ["soft"], ["seal"]) && all(cards, ["prep"], ["dry", "run"])
      && all(cards, ["dry", "warm", "first-temperature"], ["run"]) && all(cards, ["run"], ["next-temperature", "release"])
      && all(cards, ["next-temperature"], ["release"]) && all(cards, ["release"], ["look"]) && all(cards, ["look"], ["leave"]))).toEqual([]);
  });
  it("finds skin prepared before the seal, irrigation before its warmth, and a child that leaves unseen unsafe", () => {
    const item = draw("skin-and-warmth", 5);
    const right = (answerTo(item) as OrderResponse).cards;
    const moved = (card: string, before: string): string[] => { const rest = right.filter((one) => one !== card); rest.splice(rest.indexOf(before), 0, card); return rest; };
    const risky = [["prep", "seal"], ["run", "warm"], ["leave", "look"]].filter((pair) => pair.every((card) => right.includes(card)));
    expect(risky.length).toBeGreaterThan(1);
    expect(risky.filter(([card = "", before = ""]) => grade(item, { kind: "order", cards: moved(card, before) }).verdict !== "unsafe-side")).toEqual([]);
  });
});
