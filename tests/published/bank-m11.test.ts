import { describe, expect, it } from "vitest";
import { answerTo, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";
import { items, many, notRight, one, reader } from "../support/second-way.ts";

/** Every family of module M11 beside a second way to its answer: laying stitches one by one, counting things one by one, or the rule in words. */

/** Stitches laid from one margin to the other, no step longer than the greatest spacing, in tenths of a millimetre. */
const laid = (tear: number, margin: number, spacing: number): number => {
  const [first, last, step] = [Math.round(margin * 10), Math.round((tear - margin) * 10), Math.round(spacing * 10)];
  let [at, count] = [first, 1];
  while (at < last) [at, count] = [Math.min(last, at + step), count + 1];
  return count;
};

describe("stitches on a tear", () => {
  it("are as many as laying them one by one needs, and 5 and 8 in the curriculum's examples", () => {
    expect([laid(25, 2.5, 5), laid(30, 2, 4)]).toEqual([5, 8]);
    expect(notRight("how-many", (_, of) => one(laid(of("tearMm"), of("endMarginMm"), of("greatestSpacingMm")), 0))).toEqual([]);
  });

  it("stand so far apart that their gaps and the margins fill the tear", () => {
    const failed = items("real-gap").filter((item) => {
      const of = reader(item);
      const fits = [...Array(2000).keys()].map((tenth) => tenth / 100).find((gap) => 2 * of("endMarginMm") + (of("stitches") - 1) * gap >= of("tearMm") - 1e-9);
      return grade(item, one(fits ?? 0, 2)).verdict !== "right";
    });
    expect(failed).toEqual([]);
  });

  it("pass, stay and come back as counted one by one", () => {
    expect(notRight("passes", (_, of) => {
      const count = { passes: 0, anchors: 0, needles: 0 };
      for (let device = 0; device < of("anchored"); device += 1) for (const _side of ["one", "other"]) [count.passes, count.anchors] = [count.passes + 1, count.anchors + 1];
      for (let suture = 0; suture < of("insideOut"); suture += 1) for (const _end of ["one", "other"]) [count.passes, count.needles] = [count.passes + 1, count.needles + 1];
      return many(count, 0);
    })).toEqual([]);
    expect(notRight("both-faces", (item, of) => {
      const count: Record<string, number> = { upper: 0, lower: 0 };
      let face = item.about["start"] ?? "";
      for (let stitch = 0; stitch < of("stitches"); stitch += 1) [count[face], face] = [(count[face] ?? 0) + 1, face === "upper" ? "lower" : "upper"];
      return many(count, 0);
    })).toEqual([]);
    expect(notRight("open-vs-used", (_, of) => many({ wasted: Array(of("opened")).fill("opened").slice(of("leftIn")).length, reorder: of("opened") }, 0))).toEqual([]);
  });

  it("fit into the cuff time as a minute by minute diary says", () => {
    expect(notRight("time-fit", (_, of) => {
      const diary = Array.from({ length: of("stitches") }, (_stitch, at) => (at === 0 ? 0 : of("swapMin")) + of("eachMin"));
      return one(of("cuffLeftMin") - diary.reduce((sum, minutes) => sum + minutes, of("lookMin")), 0);
    })).toEqual([]);
  });
});

describe("places for stitches", () => {
  /** Walks the tear from margin to margin, stitch by stitch, and never further than the widest gap; the rule of the printed sheet. */
  const keeps = (places: readonly string[], item: Item): boolean => {
    const of = reader(item);
    const left = new Set(places);
    let [at, used] = [of("endMarginMm"), 1];
    if (!left.delete(String(at))) return false;
    while (left.size > 0) {
      const next = Array.from({ length: of("greatestSpacingMm") }, (_, step) => at + step + 1).filter((place) => left.has(String(place)))[0];
      if (next === undefined || String(next) === item.about["soft"]) return false;
      left.delete(String(next));
      [at, used] = [next, used + 1];
    }
    return used === of("stitches") && at === of("tearMm") - of("endMarginMm");
  };
  /** Every way to choose so many of a list, by counting through all yes-and-no rows. */
  const ways = (list: readonly string[], count: number): readonly (readonly string[])[] =>
    Array.from({ length: 2 ** list.length }, (_, row) => list.filter((_one, at) => (row >> at) % 2 === 1)).filter((chosen) => chosen.length === count);

  it("are right exactly where a walk along the tear finds every stitch in reach, and more than one way is right in many draws", () => {
    let many = 0;
    const failed = items("spread").flatMap((item) => {
      if (item.kind !== "mark") return ["not marks"];
      // All sets that differ from a right one in one stitch, and in few draws all sets there are.
      const sets = Number(item.seed) < 40 ? ways(item.regions.map(({ id }) => id), item.targets.length) : [];
      const own = answerTo(item);
      const right = own.kind === "mark" ? item.targets.map(({ id }) => item.regions.find(({ xMm, yMm }) => xMm === own.points[id]?.xMm && yMm === own.points[id]?.yMm)?.id ?? "") : [];
      const near = right.flatMap((_, at) => item.regions.map(({ id }) => right.with(at, id)));
      const asked = [right, ...near, ...sets];
      if (sets.filter((set) => keeps(set, item)).length > 1) many += 1;
      return asked.filter((set) => {
        const points = Object.fromEntries(item.targets.map(({ id }, at) => [id, item.regions.find((region) => region.id === set[at]) ?? { xMm: "", yMm: "" }]));
        return (grade(item, { kind: "mark", points }).verdict === "right") !== (new Set(set).size === set.length && keeps(set, item));
      }).map((set) => `${item.seed} ${set.join(" ")}`);
    });
    expect(failed).toEqual([]);
    expect(many).toBeGreaterThan(5);
  });

  it("are right whichever stitch stands in which, and wrong beside the tear, with no error named", () => {
    for (const item of items("spread").slice(0, 100)) {
      const own = answerTo(item);
      if (item.kind !== "mark" || own.kind !== "mark") throw new Error("not marks");
      const ids = item.targets.map(({ id }) => id);
      const turned = Object.fromEntries(ids.map((id, at) => [id, own.points[ids.at(-1 - at) ?? ""] ?? { xMm: "", yMm: "" }]));
      expect(grade(item, { kind: "mark", points: turned })).toMatchObject({ verdict: "right", score: 1 });
      const beside = grade(item, { kind: "mark", points: { ...own.points, "stitch-1": { xMm: "99", yMm: "99" } } });
      expect([beside.verdict, beside.slip]).toEqual(["safe-side", undefined]);
      expect(beside.score).toBeLessThan(1);
    }
  });
});

it("a stitch lies as the fibres say that its thread crosses, counted one by one on hoops a twentieth of a millimetre apart (textbook knowledge of the fibres, no source)", () => {
  const [RIM_MM, HOOP_MM, POINTS] = [17, 0.05, 4000];
  const met = new Set<string>();
  expect(notRight("orientation", (_, of) => {
    const at = (fromRim: number, along: number): readonly [number, number] => [(RIM_MM - fromRim) * Math.cos(along / RIM_MM), (RIM_MM - fromRim) * Math.sin(along / RIM_MM)];
    const [[x, y], [toX, toY]] = [at(of("firstFromRimMm"), 0), at(of("secondFromRimMm"), of("apartAlongMm"))];
    const hoops = new Set(Array.from({ length: POINTS + 1 }, (_point, step) => Math.floor(Math.hypot(x + ((toX - x) * step) / POINTS, y + ((toY - y) * step) / POINTS) / HOOP_MM)));
    const share = (hoops.size * HOOP_MM) / Math.hypot(toX - x, toY - y);
    const [lies, fibres] = (share > 0.9 && ["vertical", "across"]) || (share < 0.4 && ["horizontal", "among"]) || ["oblique", "slant"];
    met.add(lies ?? "");
    return { kind: "name", picks: { lies: lies ?? "", fibres: fibres ?? "" } };
  })).toEqual([]);
  expect(met.size).toBe(3);
});

describe("the order of one stitch", () => {
  /** Steps that must come before others, as whole sentences of common practice; no source. */
  const CHAINS = [
    ["measure", "set-stop", "check-stop", "enter", "first-anchor", "withdraw", "second-site", "second-anchor", "slack", "probe", "cut", "recount"],
    ["guard", "enter"], ["slack", "compare", "cut"], ["cut", "look", "recount"],
    ["incise", "retractor", "see", "first-needle", "second-needle", "retrieve", "flex", "tie", "test", "trim", "needles-counted"],
  ];
  it("is right exactly where every chain is kept", () => {
    const failed = items("one-stitch").flatMap((item) => {
      if (item.kind !== "order") return ["not an order"];
      const cards = item.cards.map(({ id }) => id);
      const sorted = CHAINS.flat().filter((card, at, all) => all.indexOf(card) === at && cards.includes(card));
      const orders = [cards, ...cards.slice(1).map((card, at) => [...cards.slice(0, at), card, cards[at] ?? "", ...cards.slice(at + 2)]), ...sorted.slice(1).map((card, at) => [...sorted.slice(0, at), card, sorted[at] ?? "", ...sorted.slice(at + 2)])];
      return orders.filter((order) => {
        const isKept = CHAINS.every((chain) => {
          const shown = chain.filter((card) => order.includes(card)).map((card) => order.indexOf(card));
          return shown.every((place, at) => at === 0 || place > (shown[at - 1] ?? -1));
        });
        return isKept !== (grade(item, { kind: "order", cards: order }).verdict === "right");
      }).map((order) => `${item.seed} ${order.join(" ")}`);
    });
    expect(failed).toEqual([]);
  });
});

it("after the probe, what the printed sheet says is done, read sentence by sentence from the stem", () => {
  const SENTENCES: readonly (readonly [RegExp, string, string])[] = [
    [/thread has cut through/, "technique", "cut"],
    [/needle cannot come at/, "technique", "reach"],
    [/from below the probe opens/, "face", "below"],
    [/the probe opens the edges\./, "between", "opens"],
    [/lifts neither edge/, "stop", "holds"],
  ];
  const met = new Set<string>();
  expect(notRight("one-more", (item, of) => {
    const [, picks, reason] = SENTENCES.find(([said]) => said.test(item.stem.join(" "))) ?? [/^$/, "", ""];
    const tooWide = of("widestGapMm") > of("sheetGapMm");
    const reasons = tooWide ? [...(picks === "stop" ? [] : [reason]), "gap"] : [reason];
    const decision = picks === "stop" && tooWide ? "between" : picks;
    met.add(`${decision} ${reasons.join(" ")}`);
    return { kind: "judge", picks: decision, reasons };
  })).toEqual([]);
  expect([...met].sort()).toEqual(["between gap", "between opens", "between opens gap", "face below", "stop holds", "technique cut", "technique reach"]);
});

describe("figures that are not a child's", () => {
  it("are ranked on one bench only: two stitches of one paper (Rimmer 1995 in adult menisci, the 2006 series in cattle)", () => {
    expect(notRight("load-share", (item) => {
      const text = item.stem.join(" ");
      const [human, cattle] = [text.split("human menisci").length - 1, text.split("cattle menisci").length - 1];
      if (human + cattle === 1) return { kind: "judge", picks: "reject", reasons: ["one-stitch", "not-a-child"] };
      return human > 0 && cattle > 0 ? { kind: "judge", picks: "reject", reasons: ["other-bench"] } : { kind: "judge", picks: "rank", reasons: ["same-bench"] };
    })).toEqual([]);
  });

  it("are a hole in a growth plate only as large as an ellipse drawn point by point: 58.0 mm² at 8 mm and 60°", () => {
    const drawn = (drill: number, angleDeg: number): number => {
      const [half, steps] = [drill / 2 / Math.sin((angleDeg * Math.PI) / 180), 20_000];
      return Array.from({ length: steps }, (_, step) => -half + ((step + 0.5) * 2 * half) / steps).reduce((sum, x) => sum + drill * Math.sqrt(1 - (x / half) ** 2) * ((2 * half) / steps), 0);
    };
    expect(drawn(8, 60)).toBeCloseTo(58.0, 1);
    expect(items("physis-share").slice(0, 100).filter((item) => {
      const of = reader(item);
      const hole = drawn(of("drillMm"), of("angleDeg"));
      const response: Response = item.about["asks"] === "limit" ? { kind: "sum", says: "ask-locally" } : many({ holeMm2: hole, sharePercent: (100 * hole) / of("plateMm2") }, 2);
      return grade(item, response).verdict !== "right";
    }).map(({ seed }) => seed)).toEqual([]);
  });
});
