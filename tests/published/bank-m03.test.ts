import { describe, expect, it } from "vitest";
import { answerTo, compute, draw, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { NameResponse, Response } from "../../src/engine/question/response.ts";
import { scopeModelOf, settingAt } from "../../src/figures/scope-setting.ts";

/** Every family of module M03 beside a second way to its answer: rays in space, a pinhole, or the path of least time. */
const ITEMS = 1000;

const items = (id: string): readonly Item[] => Array.from({ length: ITEMS }, (_, seed) => draw(id, seed));
const valuesOf = (item: Item): Record<string, number> => Object.fromEntries(item.givens.map(({ key, text }) => [key, Number(text)]));
const value = (givens: Readonly<Record<string, number>>, key: string): number => givens[key] ?? Number.NaN;
const number = (id: string, givens: Record<string, number>, ask: string): number => value(compute(id, givens) as Record<string, number>, ask);
const notRight = (id: string, respond: (item: Item) => Response): readonly string[] =>
  items(id).filter((item) => grade(item, respond(item)).verdict !== "right").map(({ seed }) => seed);
const sum = (size: number, places = 4): Response => ({ kind: "sum", text: size.toFixed(places) });

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
/** Tangent of half an angle from the whole one: (1 − cos) ÷ sin (NIST Digital Library of Mathematical Functions, 4.21.29). */
const halfTangent = (degrees: number): number => (1 - Math.cos(radians(degrees))) / Math.sin(radians(degrees));

type Ray = readonly [number, number, number];
/** A direction at an angle off the shaft, turned about it. */
const ray = (offDeg: number, turnDeg: number): Ray => [Math.sin(radians(offDeg)) * Math.cos(radians(turnDeg)), Math.sin(radians(offDeg)) * Math.sin(radians(turnDeg)), Math.cos(radians(offDeg))];
const between = (first: Ray, second: Ray): number =>
  (180 / Math.PI) * Math.acos(Math.max(-1, Math.min(1, first[0] * second[0] + first[1] * second[1] + first[2] * second[2])));
const TURN = Array.from({ length: 360 }, (_, degree) => degree);
/** True where some turn of the scope about its shaft brings the direction into the picture. */
const isSeenTurning = (target: Ray, viewDeg: number, fieldDeg: number): boolean => TURN.some((turn) => between(ray(viewDeg, turn), target) <= fieldDeg / 2 + 1e-9);

describe("03a, 03b, 03i: the width of the field", () => {
  it("finds 20.0 mm for 90° at 10 and 28.6 mm for 100° at 12, as the curriculum prints", () => {
    expect(number("field-width", { fieldDeg: 90, distanceMm: 10 }, "widthMm")).toBeCloseTo(20, 6);
    expect(number("field-width", { fieldDeg: 100, distanceMm: 12 }, "widthMm")).toBeCloseTo(28.6, 1);
  });
  it("agrees on 1000 widths, distances and pixels with the tangent of half an angle from the whole one", () => {
    const width = (g: Record<string, number>): number => 2 * value(g, "distanceMm") * halfTangent(value(g, "fieldDeg"));
    expect(notRight("field-width", (item) => sum(width(valuesOf(item))))).toEqual([]);
    expect(notRight("back-off", (item) => {
      const g = valuesOf(item);
      let [near, far] = [0, 1000];
      for (let step = 0; step < 60; step += 1) {
        const middle = (near + far) / 2;
        if (width({ ...g, distanceMm: middle }) < value(g, "widthMm")) near = middle;
        else far = middle;
      }
      return sum(near);
    })).toEqual([]);
    expect(notRight("pixel-size", (item) => {
      const g = valuesOf(item);
      const pixel = width(g) / value(g, "acrossPx");
      return { kind: "sum", texts: { pixelMm: pixel.toFixed(6), detailMm: (pixel + pixel).toFixed(6) } };
    })).toEqual([]);
  });
});

describe("03c: what is in view, against rays in space", () => {
  const picks = (item: Item): NameResponse => {
    const g = valuesOf(item);
    const [viewDeg, fieldDeg] = [value(g, "viewDeg"), value(g, "fieldDeg")];
    const target = ray(value(g, "targetDeg"), item.about["side"] === "other" ? 180 : 0);
    const isStill = between(ray(viewDeg, 0), target) <= fieldDeg / 2 + 1e-9;
    const turned = isSeenTurning(target, viewDeg, fieldDeg) ? "rotating" : "tilting";
    const isSame = TURN.every((turn) => between(ray(viewDeg, turn), ray(viewDeg, 0)) < 1e-6);
    const isAheadSeen = isSeenTurning(ray(0, 0), viewDeg, fieldDeg);
    const wider = isAheadSeen ? "whole" : "gap";
    return { kind: "name", picks: { way: isStill ? "still" : turned, turning: isSame ? "same" : wider } };
  };
  it("agrees on 1000 targets", () => {
    expect(notRight("in-view", picks)).toEqual([]);
  });
  it("draws every answer, and never lets a straight-ahead scope help itself by turning", () => {
    const ways = items("in-view").map((item) => (answerTo(item) as NameResponse).picks);
    for (const way of ["still", "rotating", "tilting"]) expect(ways.filter((one) => one["way"] === way).length).toBeGreaterThan(30);
    for (const turning of ["same", "whole", "gap"]) expect(ways.filter((one) => one["turning"] === turning).length).toBeGreaterThan(30);
    expect(ways.filter((one) => one["turning"] === "same" && one["way"] === "rotating")).toEqual([]);
  });
});

describe("03d: the blind circle", () => {
  it("finds the 44 mm at 50 mm that a bench study printed for a 70° scope, with the field of 92.5° that it implies (Sinha 2016)", () => {
    expect(number("blind-ahead", { viewDeg: 70, fieldDeg: 92.5, distanceMm: 50 }, "circleMm")).toBeCloseTo(44, 0);
  });
  it("finds none for 30° with a field of 65° and more, and one with 47.5° (curriculum)", () => {
    expect(number("blind-ahead", { viewDeg: 30, fieldDeg: 65, distanceMm: 20 }, "circleMm")).toBe(0);
    expect(number("blind-ahead", { viewDeg: 30, fieldDeg: 47.5, distanceMm: 20 }, "circleMm")).toBeGreaterThan(0);
  });
  it("agrees on 1000 scopes: the edge of what no turn shows, found by halving", () => {
    expect(notRight("blind-ahead", (item) => {
      const g = valuesOf(item);
      const isSeen = (offDeg: number): boolean => isSeenTurning(ray(offDeg, 0), value(g, "viewDeg"), value(g, "fieldDeg"));
      if (isSeen(0)) return sum(0);
      let [dark, light] = [0, value(g, "viewDeg")];
      for (let step = 0; step < 40; step += 1) {
        const middle = (dark + light) / 2;
        if (isSeen(middle)) light = middle;
        else dark = middle;
      }
      return sum(2 * value(g, "distanceMm") * Math.tan(radians(dark)));
    })).toEqual([]);
  });
});

describe("03e: the field in saline, by the path of least time (Fermat 1662; Feynman Lectures I-26)", () => {
  /** Where the fastest way from a point in the liquid to one in the air crosses the window: 0 where Snell's law holds there. */
  const pull = (liquidDeg: number, airDeg: number, index: number): number => {
    const path = (x: number): number => index * Math.hypot(Math.tan(radians(liquidDeg)) + x, 1) + Math.hypot(Math.tan(radians(airDeg)) - x, 1);
    return path(1e-5) - path(-1e-5);
  };
  const inLiquid = (fieldDeg: number, index: number): number => {
    let [low, high] = [0, fieldDeg / 2];
    for (let step = 0; step < 50; step += 1) {
      const middle = (low + high) / 2;
      if (pull(middle, fieldDeg / 2, index) < 0) low = middle;
      else high = middle;
    }
    return low + high;
  };
  it("finds 72.9° for 105° and 64.0° for 90°, as the curriculum prints", () => {
    expect(number("saline-field", { printedDeg: 105, refractiveIndex: 1.335 }, "salineDeg")).toBeCloseTo(72.9, 1);
    expect(number("saline-field", { printedDeg: 90, refractiveIndex: 1.335 }, "salineDeg")).toBeCloseTo(64, 1);
  });
  it("agrees on 1000 fields, and says that it cannot be told where medium or window is missing", () => {
    expect(notRight("saline-field", (item) => (item.about["told"] === "all" ? sum(inLiquid(value(valuesOf(item), "printedDeg"), value(valuesOf(item), "refractiveIndex"))) : { kind: "sum", says: "cannot-be-told" }))).toEqual([]);
    expect(items("saline-field").filter((item) => item.about["told"] !== "all").length).toBeGreaterThan(40);
  });
});

describe("03f, 03g: the probe as a ruler, in a pinhole (rays through one point)", () => {
  const real = (g: Record<string, number>, tipDistance: number, farther: number): number => {
    const focalPx = (value(g, "tipPx") * tipDistance) / value(g, "tipMm");
    return (value(g, "targetPx") / focalPx) * (tipDistance + farther);
  };
  it("agrees on 1000 rulers at one distance, whatever that is", () => {
    for (const distance of [7, 19]) expect(notRight("probe-ruler", (item) => sum(real(valuesOf(item), distance, 0)))).toEqual([]);
  });
  it("agrees on 1000 rulers in depth", () => {
    expect(notRight("ruler-depth", (item) => sum(real(valuesOf(item), value(valuesOf(item), "tipDistanceMm"), value(valuesOf(item), "fartherMm"))))).toEqual([]);
  });
  it("asks for no length that a small knee could not hold", () => {
    const sizes = ["probe-ruler", "ruler-depth"].flatMap(items).map((item) => Number((answerTo(item) as { text: string }).text));
    expect(Math.max(...sizes)).toBeLessThan(16);
    expect(Math.min(...sizes)).toBeGreaterThan(0.5);
  });
});

describe("03h: the least tilt, degree by degree", () => {
  it("agrees on 1000 tilts, and says none where the portal forbids it", () => {
    expect(notRight("tilt-needed", (item) => {
      const g = valuesOf(item);
      const target = ray(value(g, "targetDeg"), 0);
      for (let tilt = 0; tilt <= value(g, "roomDeg"); tilt += 1) if (between(ray(tilt, 0), target) <= value(g, "fieldDeg") / 2 + 1e-6) return { kind: "sum", text: String(tilt) };
      return { kind: "sum", says: "none" };
    })).toEqual([]);
    const none = items("tilt-needed").filter((item) => "says" in answerTo(item)).length;
    expect(none).toBeGreaterThan(30);
    expect(none).toBeLessThan(ITEMS / 2);
  });
});

describe("03j: the same place, by trying every place of the second picture", () => {
  type Way = readonly [number, number, number];
  const scaled = ([x, y, z]: Way, by: number): Way => [x * by, y * by, z * by];
  const plus = (first: Way, second: Way): Way => [first[0] + second[0], first[1] + second[1], first[2] + second[2]];
  const cross = ([ax, ay, az]: Way, [bx, by, bz]: Way): Way => [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
  const ofLengthOne = (way: Way): Way => scaled(way, 1 / Math.hypot(...way));
  const beside = (ahead: Way): { readonly right: Way; readonly up: Way } => {
    const right = ofLengthOne([ahead[1], -ahead[0], 0]);
    return { right, up: cross(right, ahead) };
  };
  /** The direction that lies so far off a view, towards a clock angle of its level picture. */
  const off = (ahead: Way, offDeg: number, clockDeg: number): Way => {
    const { right, up } = beside(ahead);
    const aside = plus(scaled(up, Math.cos(radians(clockDeg))), scaled(right, Math.sin(radians(clockDeg))));
    return plus(scaled(ahead, Math.cos(radians(offDeg))), scaled(aside, Math.sin(radians(offDeg))));
  };
  const at = (ahead: Way, halfFieldDeg: number, [u, v]: readonly [number, number]): Way => off(ahead, Math.hypot(u, v) * halfFieldDeg, (Math.atan2(u, v) * 180) / Math.PI);

  it("agrees on 1000 pairs of pictures, with the shaft of the view that is drawn", () => {
    const shafts = new Map(["medial-back", "notch", "lateral-back", "lateral-body"].map((station) => {
      const { portal, camera } = scopeModelOf(settingAt(station as "notch"));
      return [station, ofLengthOne([camera.tip[0] - portal[0], camera.tip[1] - portal[1], camera.tip[2] - portal[2]])];
    }));
    expect(notRight("same-place", (item) => {
      const { about } = item;
      const [half, tilt] = [value(valuesOf(item), "fieldDeg") / 2, value(valuesOf(item), "tiltDeg")];
      const shaft = shafts.get(about["station"] ?? "") ?? [0, -1, 0];
      const [x = 0, y = 0] = (about["place"] ?? "").split(",").map((tenths) => Number(tenths) / 10);
      const sought = at(shaft, half, [x, y]);
      const tilted = off(shaft, tilt, Number(about["turnDeg"]));
      let [best, spot, span] = [-1, [0, 0] as readonly [number, number], 1];
      for (let round = 0; round < 6; round += 1, span /= 4) {
        const [fromU, fromV] = spot;
        for (let row = -8; row <= 8; row += 1) {
          for (let column = -8; column <= 8; column += 1) {
            const tried = [fromU + (column * span) / 8, fromV + (row * span) / 8] as const;
            const way = at(tilted, half, tried);
            const near = way[0] * sought[0] + way[1] * sought[1] + way[2] * sought[2];
            if (near > best) [best, spot] = [near, tried];
          }
        }
      }
      const mirrored = about["side"] === "left" ? -spot[0] : spot[0];
      const shown = Math.atan2(mirrored, spot[1]) + radians(30 * Number(about["up"]));
      const radius = 100 * Math.hypot(...spot);
      return { kind: "mark", points: { place: { xMm: (radius * Math.sin(shown)).toFixed(1), yMm: (radius * Math.cos(shown)).toFixed(1) } } };
    })).toEqual([]);
  });
});
