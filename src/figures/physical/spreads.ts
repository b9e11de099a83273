import { withUnit } from "../../engine/quantity/format.ts";
import { element, pathThrough } from "../markup.ts";
import { drawn, END, inWords, linesOf, MIDDLE, WIDTH_PX, words } from "../pictures/picture.ts";
import type { PhysicalFigure } from "./physical-figure.ts";

/** A published value with its spread, where one was printed. */
export interface Published {
  readonly name: string;
  readonly mean: number;
  /** Standard deviation; null where the paper prints none. */
  readonly sd: number | null;
  /** Both as they were printed. */
  readonly said: { readonly mean: string; readonly sd: string };
}

export interface AtAge extends Published {
  readonly fromYears: number;
  readonly toYears: number;
}

const printed = ({ sd, said }: Published): string => `${withUnit(said.mean, "mm")}, ${sd === null ? "no spread printed" : `standard deviation ${withUnit(said.sd, "mm")}`}`;

const TICK_MM = 5;

const dot = (x: number, y: number): string => element("circle", { class: "k-dotink", cx: x, cy: y, r: 5 });
const bar = (from: readonly [number, number], to: readonly [number, number]): string => element("path", { class: "ax", d: pathThrough([from, to]) });

const GROWTH = { leftPx: 42, topPx: 16, bottomPx: 236, heightPx: 286, leastYears: 1, greatestYears: 18, greatestMm: 22 } as const;
const xAt = (years: number): number => GROWTH.leftPx + ((WIDTH_PX - GROWTH.leftPx - 4) * (years - GROWTH.leastYears)) / (GROWTH.greatestYears - GROWTH.leastYears);
const yAt = (value: number): number => GROWTH.bottomPx - ((GROWTH.bottomPx - GROWTH.topPx) * value) / GROWTH.greatestMm;

export interface GrowthSeries {
  readonly name: string;
  readonly points: readonly AtAge[];
}

/** A series: dots joined by a line; upright bars are one standard deviation each way, level bars the band of years. */
const series = ({ points }: GrowthSeries, isDashed: boolean): string => {
  const places = points.map((one) => [xAt((one.fromYears + one.toYears + 1) / 2), yAt(one.mean)] as const);
  return element("path", { class: "t-thin", ...(isDashed ? { "stroke-dasharray": "5 4" } : {}), d: pathThrough(places) }) +
    points.map((one, index) => {
      const [x, y] = places[index] ?? [0, 0];
      const upright = one.sd === null ? "" : bar([x, yAt(one.mean - one.sd)], [x, yAt(one.mean + one.sd)]);
      return bar([xAt(one.fromYears), y], [xAt(one.toYears + 1), y]) + upright + dot(x, y);
    }).join("");
};

/** Published means by age with their spreads, one line a series; the second is dashed. */
export const growthCurves = (list: readonly GrowthSeries[]): PhysicalFigure => {
  const ticks = Array.from({ length: Math.floor(GROWTH.greatestMm / TICK_MM) + 1 }, (_, index) => index * TICK_MM);
  const said = list.map(({ name, points }) => `${name}: ${points.map((one) => `${one.fromYears}–${one.toYears} years ${printed(one)}`).join("; ")}.`).join(" ");
  const how = "Upright bars are one standard deviation each way: about a third of children lie outside them, if the values are normal. Level bars are the bands of years.";
  return {
    markup: drawn({ name: "small", heightPx: GROWTH.heightPx }, [
      ...ticks.map((value) => element("path", { class: "t-thin", d: pathThrough([[GROWTH.leftPx, yAt(value)], [WIDTH_PX, yAt(value)]]) }) + words(GROWTH.leftPx - 6, yAt(value) + 5, [String(value), { ...END, class: "num" }])),
      ...[2, 5, 8, 11, 14, 17].map((years) => words(xAt(years), GROWTH.bottomPx + 22, [String(years), { ...MIDDLE, class: "num" }])),
      ...list.map((one, index) => series(one, index > 0)),
      words(GROWTH.leftPx, GROWTH.heightPx - 4, ["years of age; mm upwards", { class: "dim" }]),
    ]),
    text: inWords("Published values against age.", said, how),
    caption: `${list.map(({ name }, index) => `${name}, ${index === 0 ? "full line" : "dashes"}`).join("; ")}. ${how}`,
  };
};

const ROW_PX = 66;
const LETTERS = 44;

export interface Compared {
  readonly title: string;
  readonly rows: readonly Published[];
  readonly greatestMm: number;
}

/** Values of several papers on one scale, each with its spread; they are set side by side, not joined. */
export const papersCompared = ({ title, rows, greatestMm }: Compared): PhysicalFigure => {
  const x = (value: number): number => 8 + ((WIDTH_PX - 16) * value) / greatestMm;
  const bottomPx = rows.length * ROW_PX + 14;
  const ticks = Array.from({ length: Math.floor(greatestMm / TICK_MM) + 1 }, (_, index) => index * TICK_MM);
  const said = rows.map((one) => `${one.name}: ${printed(one)}.`).join(" ");
  const drawnRow = (one: Published, index: number): string => {
    const y = index * ROW_PX + 54;
    const names = linesOf(one.name, LETTERS).slice(0, 2);
    return names.map((line, row) => words(0, y - 14 - (names.length - 1 - row) * 18, [line, {}])).join("") + (one.sd === null ? "" : bar([x(Math.max(0, one.mean - one.sd)), y], [x(Math.min(greatestMm, one.mean + one.sd)), y])) + dot(x(one.mean), y);
  };
  const how = "A dot is a mean, a bar one standard deviation each way; a dot without a bar was printed without a spread. They measure different things in different people, so their order says nothing yet.";
  return {
    markup: drawn({ name: "small", heightPx: bottomPx + 34 }, [
      ...ticks.map((value) => element("path", { class: "t-thin", d: pathThrough([[x(value), bottomPx - 6], [x(value), bottomPx + 2]]) }) + words(x(value), bottomPx + 20, [String(value), { ...MIDDLE, class: "num" }])),
      element("path", { class: "t-thin", d: pathThrough([[x(0), bottomPx - 2], [x(greatestMm), bottomPx - 2]]) }),
      ...rows.map(drawnRow),
    ]),
    text: inWords(`${title}, in mm.`, said, how),
    caption: `${title}, in mm. ${how}`,
  };
};
