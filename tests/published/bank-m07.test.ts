import { describe, expect, it } from "vitest";
import { answerTo, compute, draw, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { OrderResponse, RangeResponse } from "../../src/engine/question/response.ts";

/** Every family of module M07 beside a second way to its answer: another law, a simulation or plain enumeration. */
const ITEMS = 1000;
/** Conventional centimetre of water and millimetre of mercury: NIST Special Publication 811, appendix B.8. */
const MMHG_PER_CMH2O = 98.0665 / 133.322387415;
const DENSITY_WATER = 1000;
/** Density of mercury and gravity behind the conventional mmHg: BIPM, SI Brochure, 8th edition, table 8. */
const MERCURY_KG_PER_M3 = 13_595.1;
const GRAVITY = 9.80665;

const items = (id: string): readonly Item[] => Array.from({ length: ITEMS }, (_, seed) => draw(id, seed));
const valuesOf = (item: Item): Record<string, number> => Object.fromEntries(item.givens.map(({ key, text }) => [key, Number(text)]));
const value = (givens: Record<string, number>, key: string): number => givens[key] ?? Number.NaN;

const close = (got: number, wanted: number): boolean => Math.abs(got - wanted) <= 1e-6 * Math.max(1, Math.abs(wanted));

/** Seeds whose answer by the bank is not that of the second solver. */
const disagreeing = (id: string, second: (givens: Record<string, number>, item: Item) => Record<string, number> | null, near = close): readonly string[] =>
  items(id).filter((item) => {
    const givens = valuesOf(item);
    const wanted = second(givens, item);
    const response = answerTo(item);
    if (wanted === null) return !("says" in response && response.says === "none");
    const got = compute(id, givens) as Record<string, number>;
    return !Object.entries(wanted).every(([ask, number]) => near(got[ask] ?? Number.NaN, number));
  }).map(({ seed }) => seed);

const permutations = (cards: readonly string[]): string[][] =>
  cards.length <= 1 ? [[...cards]] : cards.flatMap((card) => permutations(cards.filter((one) => one !== card)).map((rest) => [card, ...rest]));

const waterPressure = (heightCm: number, density: number): number => heightCm * MMHG_PER_CMH2O * (density / DENSITY_WATER);

describe("07a, 07b, 07j: columns of saline against the conventional cmH2O (NIST SP 811)", () => {
  it("finds the pressures that the curriculum prints: 60 cm is 44, 100 cm is 74 mmHg", () => {
    const at = (heightCm: number) => compute("head", { levelAboveFloorCm: 80 + heightCm, jointAboveFloorCm: 80, densityKgPerM3: 1004.6 }) as Record<string, number>;
    expect(Math.round(value(at(60), "pressureMmHg"))).toBe(44);
    expect(Math.round(value(at(100), "pressureMmHg"))).toBe(74);
  });
  it("agrees on 1000 heads", () => {
    expect(disagreeing("head", (g) => ({ pressureMmHg: waterPressure(value(g, "levelAboveFloorCm") - value(g, "jointAboveFloorCm"), value(g, "densityKgPerM3")) }))).toEqual([]);
  });
  it("agrees on 1000 heights, found by halving", () => {
    const height = (wanted: number, density: number): number => {
      let [low, high] = [0, 1000];
      for (let step = 0; step < 60; step += 1) {
        const middle = (low + high) / 2;
        if (waterPressure(middle, density) < wanted) low = middle;
        else high = middle;
      }
      return low;
    };
    expect(disagreeing("hang-at", (g) => {
      const aboveJointCm = height(value(g, "wantedMmHg"), value(g, "densityKgPerM3"));
      return { aboveJointCm, aboveFloorCm: value(g, "tableAboveFloorCm") + value(g, "jointAboveTableCm") + aboveJointCm };
    })).toEqual([]);
  });
  it("agrees on 1000 moved tables: pressure before, less or more what the movement makes", () => {
    const failed = items("table-up").filter((item) => {
      const g = valuesOf(item);
      const sign = item.about["way"] === "down" ? 1 : -1;
      const wanted = waterPressure(value(g, "levelAboveJointCm"), value(g, "densityKgPerM3")) + sign * waterPressure(value(g, "movedCm"), value(g, "densityKgPerM3"));
      const response = answerTo(item);
      return !("text" in response) || Math.abs(Number(response.text) - wanted) > 0.5 + 1e-9;
    });
    expect(failed.map(({ seed }) => seed)).toEqual([]);
  });
});

describe("07c, 07d: flow through bores against the equation of motion, solved by steps", () => {
  /** Flow of a pipe: the parabola of speed summed over rings (Poiseuille 1840). */
  const pipe = (radius: number): number => {
    const rings = 20_000;
    let flow = 0;
    for (let ring = 0; ring < rings; ring += 1) {
      const r = ((ring + 0.5) / rings) * radius;
      flow += ((radius ** 2 - r ** 2) / 4) * r * (radius / rings);
    }
    return flow;
  };
  /** Flow of a ring: (1/r)(r u′)′ = −1 with no slip at both walls, by finite differences and elimination. */
  const ring = (inner: number, outer: number): number => {
    const steps = 2000;
    const h = (outer - inner) / steps;
    const upper: number[] = [];
    const right: number[] = [];
    for (let at = 1; at < steps; at += 1) {
      const r = inner + at * h;
      const [below, above, middle] = [(r - h / 2) / (r * h * h), (r + h / 2) / (r * h * h), -2 / (h * h)];
      const pivot = middle - below * (upper[at - 2] ?? 0);
      upper.push(above / pivot);
      right.push((-1 - below * (right[at - 2] ?? 0)) / pivot);
    }
    let [speed, flow] = [0, 0];
    for (let at = steps - 1; at >= 1; at -= 1) {
      speed = (right[at - 1] ?? 0) - (upper[at - 1] ?? 0) * speed;
      flow += speed * (inner + at * h) * h;
    }
    return flow;
  };
  it("finds 3.3 times from 2.0 to 2.7 mm and 0.4 % for 2.3 in 2.7 mm, as the curriculum prints", () => {
    expect(value(compute("tube-power", { fromBoreMm: 2, toBoreMm: 2.7 }) as Record<string, number>, "ratioTimes")).toBeCloseTo(3.3, 1);
    expect(value(compute("annulus", { boreMm: 2.7, scopeMm: 2.3 }) as Record<string, number>, "sharePercent")).toBeCloseTo(0.4, 1);
  });
  it("agrees on 1000 pairs of bores", () => {
    const cache = new Map<number, number>();
    const flow = (bore: number): number => {
      const known = cache.get(bore) ?? pipe(bore / 2);
      cache.set(bore, known);
      return known;
    };
    expect(disagreeing("tube-power", (g) => ({ ratioTimes: flow(value(g, "toBoreMm")) / flow(value(g, "fromBoreMm")) }))).toEqual([]);
  });
  it("agrees on 1000 scopes in their sheaths to a part in a thousand", () => {
    const near = (got: number, wanted: number): boolean => Math.abs(got / wanted - 1) < 1e-3;
    expect(disagreeing("annulus", (g) => {
      const outer = value(g, "boreMm") / 2;
      return { sharePercent: (100 * ring(value(g, "scopeMm") / 2, outer)) / (outer ** 4 / 16) };
    }, near)).toEqual([]);
  });
});

describe("07e, 07f: loss and bags against a simulation in small steps", () => {
  it("agrees on 1000 lines: the loss is taken off for each 5 mL/min", () => {
    expect(disagreeing("lost-on-the-way", (g) => {
      let rest = value(g, "setMmHg");
      for (let flow = 5; flow <= value(g, "flowMlPerMin"); flow += 5) rest -= value(g, "lostPerTenMmHg") / 2;
      return rest < 0 ? null : { jointMmHg: rest };
    })).toEqual([]);
  });
  it("says none in some draws and a value in most", () => {
    const none = items("lost-on-the-way").filter((item) => "says" in answerTo(item)).length;
    expect(none).toBeGreaterThan(10);
    expect(none).toBeLessThan(ITEMS / 2);
  });
  it("agrees on 1000 cases, bag after bag", () => {
    const failed = items("bag-life").filter((item) => {
      const g = valuesOf(item);
      const [flow, reserve] = [value(g, "flowMlPerMin"), value(g, "reserveMl")];
      let [minutes, level] = [0, value(g, "bagMl")];
      while (level - flow >= reserve) [minutes, level] = [minutes + 1, level - flow];
      let [bags, left] = [0, flow * value(g, "caseMin")];
      while (left > 0) [bags, left] = [bags + 1, left - (value(g, "bagMl") - reserve)];
      return grade(item, { kind: "sum", texts: { lastsMin: String(minutes), bags: String(bags) } }).verdict !== "right";
    });
    expect(failed.map(({ seed }) => seed)).toEqual([]);
  });
});

describe("07g: the fluid account against every possibility", () => {
  it("agrees on 1000 accounts", () => {
    const step = 50;
    const failed = items("balance").filter((item) => {
      const g = valuesOf(item);
      const rest = value(g, "inMl") - value(g, "collectedMl");
      const [drapesFrom, drapesTo] = item.about["drapes"] === "estimated" ? [value(g, "drapesFromMl"), value(g, "drapesToMl")] : [0, rest];
      const left: number[] = [];
      for (let floor = value(g, "floorFromMl"); floor <= value(g, "floorToMl"); floor += step) {
        for (let drapes = drapesFrom; drapes <= drapesTo; drapes += step) if (rest - floor - drapes >= 0) left.push((rest - floor - drapes) / value(g, "weightKg"));
      }
      const { from, to } = answerTo(item) as RangeResponse;
      return Math.abs(Number(from) - Math.min(...left)) > 0.05 + 1e-9 || Math.abs(Number(to) - Math.max(...left)) > 0.05 + 1e-9;
    });
    expect(failed.map(({ seed }) => seed)).toEqual([]);
  });
  it("draws accounts on both sides of the local limit, and calls a top end that is too low unsafe", () => {
    const over = items("balance").filter((item) => Number((answerTo(item) as RangeResponse).to) > value(valuesOf(item), "limitMlPerKg")).length;
    expect(over).toBeGreaterThan(30);
    expect(over).toBeLessThan(ITEMS - 30);
    const item = draw("balance", 1);
    const right = answerTo(item) as RangeResponse;
    expect(grade(item, { ...right, to: (Number(right.to) - 1).toFixed(1) }).verdict).toBe("unsafe-side");
    expect(grade(item, { ...right, to: (Number(right.to) + 1).toFixed(1) }).verdict).toBe("safe-side");
  });
});

describe("07h: a thumb against the column of mercury that weighs as much (SI Brochure)", () => {
  it("finds 849 mmHg for 20 N on 15 mm, as the curriculum prints", () => {
    expect(Math.round(value(compute("syringe", { forceN: 20, barrelMm: 15 }) as Record<string, number>, "pressureMmHg"))).toBe(849);
  });
  it("agrees on 1000 syringes", () => {
    expect(disagreeing("syringe", (g) => {
      const areaM2 = (Math.PI / 4) * (value(g, "barrelMm") / 1000) ** 2;
      return { pressureMmHg: (1000 * value(g, "forceN")) / (MERCURY_KG_PER_M3 * GRAVITY * areaM2) };
    })).toEqual([]);
  });
});

describe("07i: every order of the cards against the rule in words (common practice, no source)", () => {
  const isRight = (cards: readonly string[]): boolean => {
    const at = (card: string): number => cards.indexOf(card);
    const stands = (card: string): boolean => at(card) >= 0;
    const isEmptied = Math.max(at("lower"), at("open")) < at("fallen") && at("fallen") < at("move");
    const isReady = (!stands("say") || at("say") < at("move")) && (!stands("free") || at("free") < at("move"));
    const isClosed = !stands("close") || (at("move") < at("close") && at("close") < at("raise"));
    return isEmptied && isReady && isClosed && at("move") < at("raise") && (!stands("feel") || at("raise") < at("feel"));
  };
  it("takes as right what the rule allows and nothing else, and finds every move of a full joint unsafe", () => {
    for (const seed of [1, 2, 3, 4]) {
      const item = draw("move-the-knee", seed);
      if (item.kind !== "order") throw new Error("move-the-knee must be an order");
      const orders = permutations(item.cards.map(({ id }) => id));
      expect(orders.filter((cards) => (grade(item, { kind: "order", cards }).verdict === "right") !== isRight(cards))).toEqual([]);
      const movedFull = orders.filter((cards) => cards.indexOf("move") < Math.max(cards.indexOf("lower"), cards.indexOf("open"), cards.indexOf("fallen")));
      expect(movedFull.filter((cards) => grade(item, { kind: "order", cards }).verdict !== "unsafe-side")).toEqual([]);
    }
  });
  it("answers 300 draws by the rule", () => {
    expect(items("move-the-knee").filter((item) => !isRight((answerTo(item) as OrderResponse).cards)).map(({ seed }) => seed)).toEqual([]);
  });
});
