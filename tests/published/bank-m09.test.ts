import { describe, expect, it } from "vitest";
import { draw, explain, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";

/** Families of module M09 that need no drawing beside a second way to their answer: printed tables, polygons, ratings written out. */

const ITEMS = 1000;
type Given = (key: string) => number;

const items = (id: string): readonly Item[] => Array.from({ length: ITEMS }, (_, seed) => draw(id, seed));
const reader = (item: Item): Given => (key) => Number(item.givens.find((given) => given.key === key)?.text ?? Number.NaN);
const notRight = (id: string, respond: (item: Item, of: Given) => Response): readonly string[] =>
  items(id).filter((item) => grade(item, respond(item, reader(item))).verdict !== "right").map(({ seed }) => seed);
const one = (value: number, places: number): Response => ({ kind: "sum", text: value.toFixed(places) });

describe("reading the tear", () => {
  it("puts a tear into the zones of the printed table: below 3, to 5, above 5 mm (adults)", () => {
    expect(notRight("rim-zone", (_, of) => ({ kind: "name", picks: { zone: String(1 + [3, 5].filter((border) => of("fromRimMm") > border).length), decides: "no" } }))).toEqual([]);
    expect(items("rim-zone").filter((item) => [3, 5].includes(reader(item)("fromRimMm")))).toEqual([]);
  });

  it("measures along the clock as a polygon of many corners does: 28.8 mm at 15 mm and 110°", () => {
    const walked = (radius: number, degrees: number): number => {
      const corners = 20_000;
      return corners * 2 * radius * Math.sin((degrees * Math.PI) / 180 / corners / 2);
    };
    expect(walked(15, 110)).toBeCloseTo(28.8, 1);
    expect(notRight("clock-length", (item, of) => {
      const hours = [/from (?:half past )?(\d+)/, /to (?:half past )?(\d+)/, /begins at (?:half past )?(\d+)/, /ends at (?:half past )?(\d+)/];
      expect(hours.some((hour) => hour.test(item.stem.join(" ")))).toBe(true);
      return one(walked(of("rimRadiusMm"), (Number(item.about["toHalves"]) - Number(item.about["fromHalves"])) * 15), 3);
    })).toEqual([]);
  });

  it("meets the printed criteria of a discoid meniscus: 15 mm, a fifth of the tibia, three slices of 5 mm (1989, 1991)", () => {
    expect(notRight("discoid", (item, of) => {
      const met = (isMet: boolean): string => (isMet ? "met" : "not-met");
      const picks = { width: met(of("widthMm") > 15), share: met(5 * of("widthMm") > of("tibialMm")), slices: of("sliceMm") === 5 ? met(of("slices") > 2) : "cannot", next: /no symptoms/.test(item.stem.join(" ")) ? "watch" : "rim" };
      return { kind: "name", picks };
    })).toEqual([]);
  });

  it("steps off a length whose every value rounds to the counted steps", () => {
    expect(notRight("probe-steps", (_, of) => {
      const lengths = Array.from({ length: 6000 }, (_length, hundredth) => hundredth / 100).filter((length) => Math.round(length / of("tipMm")) === of("steps"));
      return { kind: "range", from: (lengths[0] ?? 0).toFixed(2), to: (lengths.at(-1) ?? 0).toFixed(2) };
    })).toEqual([]);
  });

  it("counts depth in width by tenths of a millimetre", () => {
    expect(notRight("depth-in-width", (_, of) => one((100 * Math.round(of("depthMm") * 10)) / Math.round(of("widthMm") * 10), 3))).toEqual([]);
  });

  it("leaves the sheet's rim and never less", () => {
    expect(notRight("rim-left", (_, of) => {
      let trimmed = 0;
      while (of("widthMm") - (trimmed + 0.5) >= of("targetMm")) trimmed += 0.5;
      return trimmed === 0 ? { kind: "sum", says: "none" } : one(trimmed, 1);
    })).toEqual([]);
    expect(items("rim-left").filter((item) => grade(item, one(Math.max(0, reader(item)("widthMm") - reader(item)("targetMm")) + 0.1, 1)).verdict !== "unsafe-side")).toEqual([]);
  });

  it("agrees beyond chance as all pairs of ratings do: 20, 5, 10, 15 give 0.40 (Cohen 1960)", () => {
    const kappa = (cells: readonly number[]): readonly [number, number] => {
      const films = cells.flatMap((count, cell) => Array.from({ length: count }, () => ({ first: cell < 2, second: cell % 2 === 0 })));
      const agreed = films.filter(({ first, second }) => first === second).length / films.length;
      let chance = 0;
      for (const one of films) for (const other of films) if (one.first === other.second) chance += 1;
      chance /= films.length ** 2;
      return [agreed, (agreed - chance) / (1 - chance)];
    };
    expect(kappa([20, 5, 10, 15])[1]).toBeCloseTo(0.4, 10);
    expect(notRight("agreement", (_, of) => {
      const [agreed, beyond] = kappa(["bothYes", "firstOnly", "secondOnly", "bothNo"].map(of));
      return { kind: "sum", texts: { agreedPercent: (100 * agreed).toFixed(2), kappa: beyond.toFixed(4) } };
    })).toEqual([]);
  });

  it("follows the sheet that is printed in the stem", () => {
    expect(notRight("stability", (item, of) => {
      const stem = item.stem.join(" ");
      const isStable = of("shiftMm") < of("sheetMm") && stem.includes("It stays in place when the probe pulls");
      const isException = item.about["meniscus"] === "medial" || stem.includes("being reconstructed in the same operation");
      if (isStable) return { kind: "name", picks: { stable: "stable", plan: isException ? "repair-although" : "leave" } };
      return { kind: "name", picks: { stable: "unstable", plan: stem.includes("does not go back") ? "ask" : "repair" } };
    })).toEqual([]);
  });

  it("looks for the loose rim on the side that the disc has left (Kang 2019, abstract), and adds what the probe has met", () => {
    type Way = readonly [number, number];
    const moved: readonly (readonly [RegExp, Way])[] = [[/too far forward/, [0, 1]], [/too far back/, [0, -1]], [/too far toward the notch/, [-1, 0]]];
    const rim: Readonly<Record<string, Way>> = { front: [0, 1], back: [0, -1], outer: [1, 0] };
    /** The place of the rim that lies most against the way the disc has gone. */
    const leftBehind = ([right, forward]: Way): string => Object.entries(rim).toSorted(([, one], [, other]) => one[0] * right + one[1] * forward - (other[0] * right + other[1] * forward))[0]?.[0] ?? "";
    const met = new Set<string>();
    expect(notRight("rim-stability", (item) => {
      const stem = item.stem.join(" ");
      const gone = moved.find(([words]) => words.test(stem))?.[1];
      const lifted = /the (front|back) so far, and there the rim lifts|: (in front|at the back) it lifts/.exec(stem)?.slice(1).find((one) => one !== undefined)?.replace(/^(in|at the) /, "");
      const places = [...new Set([gone && leftBehind(gone), lifted].filter((one) => one !== undefined))];
      const unknown = stem.includes("not been probed yet") ? "untold" : "nowhere";
      const loose = places.length > 1 ? "both" : (places[0] ?? unknown);
      met.add(`${gone} ${loose} ${lifted}`);
      return { kind: "name", picks: { loose, stitch: loose } };
    })).toEqual([]);
    expect(met.size).toBe(9);
  });

  it("names the thought behind every wrong pair of places, and one place of two by the registry's 36.8 %", () => {
    for (const item of items("rim-stability").slice(0, 60)) {
      const [loose = [], stitch = []] = item.kind === "name" ? item.attributes.map(({ options }) => options.map(({ id }) => id)) : [];
      const wrong = loose.flatMap((one) => stitch.map((other): Response => ({ kind: "name", picks: { loose: one, stitch: other } }))).filter((response) => grade(item, response).verdict !== "right");
      expect(wrong).toHaveLength(7 * 7 - 1);
      expect(wrong.filter((response) => grade(item, response).slip === undefined)).toEqual([]);
      const told = wrong.map((response) => explain(item, response).happened.join(" "));
      const [isTwo, stable] = [item.about["probed"] === item.about["lifts"], told.filter((text) => text.includes("48.5"))];
      expect(stable.length > 0).toBe(item.about["probed"] !== "all" || item.about["lifts"] !== "nothing");
      expect(told.filter((text) => text.includes("36.8")).length).toBeGreaterThanOrEqual(isTwo ? 13 : 1);
    }
  });
});
