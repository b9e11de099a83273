import { describe, expect, it } from "vitest";
import { answerTo, compute, draw, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";

/** Every family of module M10 beside a second way to its answer: walking along the needle, counting tenths, or the rule in words. */

const ITEMS = 1000;
type Given = (key: string) => number;

const items = (id: string): readonly Item[] => Array.from({ length: ITEMS }, (_, seed) => draw(id, seed + 50_000));
const reader = (item: Item): Given => (key) => Number(item.givens.find((given) => given.key === key)?.text ?? Number.NaN);
const tenths = (value: number): number => Math.round(value * 10);
const notRight = (id: string, respond: (item: Item, of: Given) => Response): readonly string[] =>
  items(id).filter((item) => grade(item, respond(item, reader(item))).verdict !== "right").map(({ seed }) => seed);
const one = (value: number, places: number): Response => ({ kind: "sum", text: value.toFixed(places) });
const many = (values: Readonly<Record<string, number>>, places: number): Response => ({ kind: "sum", texts: Object.fromEntries(Object.entries(values).map(([id, value]) => [id, value.toFixed(places)])) });
const NONE: Response = { kind: "sum", says: "none" };
const told = ({ stem }: Item): string => stem.join(" ");
/** The stops of the needle as the question prints them. */
const stopsOf = (item: Item): readonly number[] => (/((?:\d+, )+\d+) millimetres/.exec(told(item))?.[1] ?? "").split(", ").map(Number);

/** Where a condition that holds from some point on begins to hold, by halving. */
const firstWhere = (holds: (value: number) => boolean, upTo: number): number => {
  let [low, high] = [0, upTo];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
};
const upToTenth = (value: number): number => Math.ceil(value * 10 - 1e-6) / 10;
const downToTenth = (value: number): number => Math.floor(value * 10 + 1e-6) / 10;

/** Depths in tenths that pass the capsule and keep the margin, tried one by one. */
const depthsLeft = (of: Given): readonly number[] =>
  Array.from({ length: 400 }, (_, depth) => depth).filter((depth) => {
    const beyond = depth - tenths(of("entryToJunctionMm"));
    return beyond >= tenths(of("throughCapsuleMm")) && beyond + tenths(of("marginMm")) <= tenths(of("junctionToBundleMm"));
  });

describe("depths on one line, counted in tenths", () => {
  it("leave 9.2 mm of meniscus for boys and 8.5 mm for girls (Schachne 2019), and agree on 1000 widths", () => {
    expect([compute("path-width", { freeEdgeToBundleMm: 14.4, junctionToBundleMm: 5.2 }), compute("path-width", { freeEdgeToBundleMm: 13.1, junctionToBundleMm: 4.6 })]).toEqual([{ widthMm: 9.2 }, { widthMm: 8.5 }]);
    expect(notRight("path-width", (_, of) => one((tenths(of("freeEdgeToBundleMm")) - tenths(of("junctionToBundleMm"))) / 10, 1))).toEqual([]);
  });
  it("take half millimetres until the capsule is passed", () => {
    expect(notRight("least-depth", (_, of) => {
      let depth = 0;
      while (depth < tenths(of("entryToJunctionMm")) + tenths(of("throughCapsuleMm"))) depth += 5;
      return one(depth / 10, 1);
    })).toEqual([]);
  });
  it("take half millimetres as long as the margin is kept, and the next one is unsafe", () => {
    const most = (of: Given): number => {
      let depth = 0;
      while (depth + 5 + tenths(of("marginMm")) <= tenths(of("entryToJunctionMm")) + tenths(of("junctionToBundleMm"))) depth += 5;
      return depth / 10;
    };
    expect(notRight("greatest-depth", (_, of) => one(most(of), 1))).toEqual([]);
    expect(items("greatest-depth").filter((item) => grade(item, one(most(reader(item)) + 0.5, 1)).verdict !== "unsafe-side")).toEqual([]);
  });
  it("are tried one by one: those that are left, or none", () => {
    const answers = items("window").map((item) => depthsLeft(reader(item)));
    expect(notRight("window", (_, of) => {
      const left = depthsLeft(of);
      return left.length === 0 ? NONE : many({ leastMm: (left[0] ?? 0) / 10, greatestMm: (left.at(-1) ?? 0) / 10 }, 1);
    })).toEqual([]);
    const [empty, touching] = [answers.filter(({ length }) => length === 0).length, answers.filter(({ length }) => length === 1).length];
    expect([empty > 200, empty < 800, touching > 20]).toEqual([true, true, true]);
  });
  it("stop at the first printed stop inside, and nowhere where none is", () => {
    expect(notRight("stop-setting", (item, of) => {
      const stop = stopsOf(item).find((one) => one >= of("leastMm") && one <= of("greatestMm"));
      return stop === undefined ? NONE : one(stop, 1);
    })).toEqual([]);
  });
  it("follow one another in the chain: limit in halves, need in tenths, the first stop between", () => {
    expect(notRight("depth-to-stop", (item, of) => {
      const limit = Math.floor((tenths(of("entryToJunctionMm")) + tenths(of("junctionToBundleMm")) - tenths(of("marginMm"))) / 5) / 2;
      const need = (tenths(of("entryToJunctionMm")) + tenths(of("throughCapsuleMm"))) / 10;
      const stop = need > limit ? undefined : stopsOf(item).find((one) => one >= need && one <= limit);
      const steps = [one(limit, 1), need > limit ? NONE : one(need, 1), stop === undefined ? NONE : one(stop, 1)];
      return { kind: "chain", steps } as Response;
    })).toEqual([]);
  });
});

describe("angles and lengths, walked instead of solved", () => {
  it("turn the far end until the zone is as wide as printed; 48, 52 and 14.1 give 15.6°", () => {
    const turn = (near: number, far: number, width: number): number =>
      firstWhere((deg) => Math.hypot(near - far * Math.cos((deg * Math.PI) / 180), far * Math.sin((deg * Math.PI) / 180)) >= width, 90);
    expect(turn(48, 52, 14.1)).toBeCloseTo(15.6, 1);
    expect(notRight("zone-angle", (_, of) => one(turn(of("nearEdgeMm"), of("farEdgeMm"), of("widthMm")), 1))).toEqual([]);
  });
  it("come nearest where a walk along the needle does", () => {
    expect(notRight("closest", (_, of) => {
      const gap = (at: number): number => Math.hypot(at - of("forwardMm"), of("asideMm")) - of("structureRadiusMm") - of("needleRadiusMm");
      let [low, high] = [0, of("depthMm")];
      for (let step = 0; step < 80; step += 1) {
        const [first, second] = [low + (high - low) / 3, high - (high - low) / 3];
        if (gap(first) < gap(second)) high = second;
        else low = first;
      }
      return one(downToTenth(gap((low + high) / 2)), 1);
    })).toEqual([]);
  });
  it("miss by the tangent, taken from the doubled angle", () => {
    expect(notRight("aim-error", (_, of) => {
      const doubled = (of("errorDeg") * Math.PI) / 90;
      const missMm = (of("pathMm") * Math.sin(doubled)) / (1 + Math.cos(doubled));
      return many({ missMm, leftMm: of("clearMm") - missMm }, 1);
    })).toEqual([]);
  });
  it("bend a needle step by step along its arc", () => {
    const steps = 500;
    expect(items("curve").filter((item) => {
      const of = reader(item);
      let [forwardMm, sideMm] = [0, 0];
      for (let step = 0; step < steps; step += 1) {
        const turned = (of("arcMm") * (step + 0.5)) / (steps * of("curveRadiusMm"));
        forwardMm += (of("arcMm") / steps) * Math.cos(turned);
        sideMm += (of("arcMm") / steps) * Math.sin(turned);
      }
      return grade(item, many({ forwardMm, sideMm }, 1)).verdict !== "right";
    })).toEqual([]);
  });
  it("walk a tilted needle through a flat layer and up to a round vessel; 10.5 deep and 2 aside is met at 9.0 straight and at 8.2 at 11°", () => {
    const meets = (of: Given, tiltDeg: number): number => {
      const tilt = (tiltDeg * Math.PI) / 180;
      const kept = of("vesselRadiusMm") + of("marginMm");
      const gap = (at: number): number => Math.hypot(at * Math.sin(tilt) - of("asideMm"), at * Math.cos(tilt) - of("deepMm"));
      let near = 0;
      while (gap(near) > kept && near < 40) near += 0.05;
      return near - 0.05 + firstWhere((more) => gap(near - 0.05 + more) <= kept, 0.05);
    };
    const known = { vesselRadiusMm: 2.5, marginMm: 0, deepMm: 10.5, asideMm: 2 } as Readonly<Record<string, number>>;
    const of = (key: string): number => known[key] ?? 0;
    expect([meets(of, 0).toFixed(1), meets(of, 11).toFixed(1)]).toEqual(["9.0", "8.2"]);
    expect(notRight("angle-and-depth", (_, given) => {
      const leastMm = firstWhere((at) => at * Math.cos((given("tiltDeg") * Math.PI) / 180) >= given("needMm"), 40);
      const greatestMm = meets(given, given("tiltDeg"));
      return leastMm > greatestMm ? NONE : many({ leastMm: upToTenth(leastMm), greatestMm: downToTenth(greatestMm) }, 1);
    })).toEqual([]);
    const earlier = items("angle-and-depth").every((item) => meets(reader(item), reader(item)("tiltDeg")) <= meets(reader(item), 0));
    expect(earlier).toBe(true);
  });
  it("add up the bell curve in strips for the share that a habit reaches", () => {
    expect(notRight("depth-share", (_, of) => {
      const [from, to, strips] = [of("meanMm") - 8 * of("sdMm"), of("beyondMm"), 600];
      const width = (to - from) / strips;
      let share = 0;
      for (let strip = 0; strip < strips; strip += 1) {
        const z = (from + (strip + 0.5) * width - of("meanMm")) / of("sdMm");
        share += (width / (of("sdMm") * Math.sqrt(2 * Math.PI))) * Math.exp((-z * z) / 2);
      }
      return one(100 * share, 0);
    })).toEqual([]);
  });
});

describe("a needle in the drawn knee", () => {
  it("stands as deep as the need and no deeper: half a millimetre less is never right", () => {
    for (const item of items("needle").slice(0, 200)) {
      const of = reader(item);
      const answer = answerTo(item) as { readonly angleDeg: string; readonly depthMm: string };
      expect(Number(answer.depthMm)).toBeGreaterThanOrEqual(of("entryToJunctionMm") + of("throughCapsuleMm") - 1e-9);
      expect(grade(item, { kind: "line", angleDeg: String(answer.angleDeg), depthMm: String(Number(answer.depthMm) - 0.5) }).verdict).not.toBe("right");
    }
  });
  it("has the nerve and the retractor of a medial repair on the side away from the popliteus, the retractor farther to the front", () => {
    for (const item of items("medial-side").slice(0, 300)) {
      const { points } = answerTo(item) as { readonly points: Readonly<Record<string, { readonly xMm: string; readonly yMm: string }>> };
      const at = (id: string) => ({ x: Number(points[id]?.xMm), y: Number(points[id]?.yMm) });
      const medial = item.about["side"] === "left" ? 1 : -1;
      expect([Math.sign(at("retractor").x), Math.sign(at("nerve").x), at("retractor").y > at("nerve").y]).toEqual([medial, medial, true]);
    }
  });
});

describe("orders and judgements, by their rule in words", () => {
  const orderOf = (item: Item): readonly string[] => (answerTo(item) as { readonly cards: readonly string[] }).cards;
  const swapped = (cards: readonly string[], card: string, before: string): readonly string[] => {
    const rest = cards.filter((one) => one !== card);
    return [...rest.slice(0, rest.indexOf(before)), card, ...rest.slice(rest.indexOf(before))];
  };
  it("look three times before the cuff and three times after it, and call before anything else", () => {
    for (const item of items("pulse-and-foot")) {
      const cards = orderOf(item);
      const at = (card: string): number => cards.indexOf(card);
      const looks = ["pulse", "move", "feel"];
      expect(looks.every((look) => at(`first-${look}`) < at("write") && at("cuff-down") < at(`again-${look}`) && at(`again-${look}`) < at("compare"))).toBe(true);
      expect(at("write") < at("cuff-up")).toBe(true);
      expect(cards.includes("call")).toBe(/something has changed|shows a change/.test(told(item)));
      for (const look of looks) expect(grade(item, { kind: "order", cards: swapped(cards, "compare", `again-${look}`) }).verdict).toBe("unsafe-side");
      expect(grade(item, { kind: "order", cards: swapped(cards, "cuff-up", "write") }).verdict).toBe("unsafe-side");
    }
  });
  it("see the retractor before the first needle, and go in front of the biceps before it is placed", () => {
    for (const item of items("retractor-order")) {
      const cards = orderOf(item);
      expect([cards.indexOf("see") < cards.indexOf("needles"), cards.indexOf("in-front-of-biceps") < cards.indexOf("place"), cards.indexOf("bend") < cards.indexOf("cut")]).toEqual([true, true, true]);
      expect(grade(item, { kind: "order", cards: swapped(cards, "needles", "see") }).verdict).toBe("unsafe-side");
    }
  });
  it("keep the needle line where it has a window, ask where something is not known, and cut where no line is left", () => {
    const decided = (text: string): string => {
      if (/missing|nobody in the room/i.test(text)) return "ask";
      return /no line has a window|no depth is left|every line there comes within/i.test(text) ? "worth" : "not-here";
    };
    expect(items("retractor-worth").filter((item) => (answerTo(item) as { readonly picks: string }).picks !== decided(told(item)))).toEqual([]);
  });
  it("take the paper that measured what is asked: this structure, this line, this bend", () => {
    const wanted: readonly (readonly [RegExp, RegExp])[] = [
      [/way behind the junction|aimed at the bundle\./, /^meniscocapsular junction to bundle/],
      [/shortest way/, /shortest/],
      [/bent to a right angle/, /at 90°/],
      [/nearly straight/, /near extension/],
      [/sideways along the junction/, /^popliteus tendon to bundle/],
      [/really fired/, /^fired device/],
    ];
    for (const item of items("two-papers")) {
      const [first = "", second = ""] = ["First", "Second"].map((label) => new RegExp(`${label} paper: ([^.]+(?:\\.\\d[^.]*)*)\\.`).exec(told(item))?.[1] ?? "");
      const measured = wanted.find(([asked]) => asked.test(told(item)))?.[1];
      const fitting = [first, second].map((paper) => measured?.test(paper) ?? false);
      expect(fitting.filter(Boolean).length).toBe(measured === undefined ? 0 : 1);
      const picked = fitting[0] ? "first" : "second";
      expect((answerTo(item) as { readonly picks: string }).picks).toBe(measured === undefined ? "neither" : picked);
    }
    expect(new Set(items("two-papers").map(({ about }) => about["case"])).size).toBe(10);
  });
});
