import { describe, expect, it } from "vitest";
import { draw, families as bank } from "../../src/bank/index.ts";
import { KNEE_BANDS } from "../../src/facts/knee-model.ts";
import { angleRule } from "../../src/figures/angle-rule.ts";
import { axialFigure } from "../../src/figures/axial-figure.ts";
import { marksOfItem } from "../../src/figures/axial-marks.ts";
import { axialOfItem } from "../../src/figures/axial-of-item.ts";
import { axialModelOf, type AxialSetting } from "../../src/figures/axial-setting.ts";
import { lineFigure } from "../../src/figures/line-figure.ts";
import { lineOfItem } from "../../src/figures/line-of-item.ts";
import { howMany } from "../support/how-many.ts";

/** A little wider than the letters of the label face are on average, and their height over and under the line. */
const LETTER = { width: 0.48, above: 0.72, below: 0.22 };
const LEAST_GAP_PX = 2;
const DRAWS = howMany(40, 8);

interface Box { readonly text: string; readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }

const numberOf = (attributes: string, name: string): number => Number(new RegExp(`(?:^| )${name}="([^"]+)"`).exec(attributes)?.[1]);

/** The box of each line of letters in one drawing. */
const boxesIn = (svg: string): readonly Box[] =>
  [...svg.matchAll(/<text ([^>]*)>([\s\S]*?)<\/text>/g)].map(([, attributes = "", inside = ""]) => {
    const text = inside.replace(/<[^>]+>/g, "");
    const [x, y, sizePx] = [numberOf(attributes, "x"), numberOf(attributes, "y"), numberOf(attributes, "font-size")];
    const width = text.length * sizePx * LETTER.width;
    const before = { start: 0, middle: width / 2, end: width }[/text-anchor="(middle|end)"/.exec(attributes)?.[1] ?? "start"] ?? 0;
    return { text, left: x - before, right: x - before + width, top: y - LETTER.above * sizePx, bottom: y + LETTER.below * sizePx };
  });

const isNear = (one: Box, other: Box): boolean =>
  one.left < other.right + LEAST_GAP_PX && other.left < one.right + LEAST_GAP_PX && one.top < other.bottom + LEAST_GAP_PX && other.top < one.bottom + LEAST_GAP_PX;

const touchingIn = (markup: string): readonly string[] =>
  markup.split("</svg>").flatMap((svg) => {
    const boxes = boxesIn(svg);
    return boxes.flatMap((one, index) => boxes.slice(index + 1).filter((other) => isNear(one, other)).map((other) => `${one.text} and ${other.text}`));
  });

const bothLooks = (setting: AxialSetting): string => [true, false].map((showsAngles) => axialFigure(axialModelOf(setting, { isOwn: true, showsAngles })).markup).join("");

describe("letters in the map of the knee", () => {
  it("are found, and two that lie over each other are seen", () => {
    expect(boxesIn(axialFigure(axialModelOf(axialOfItem(draw("needle", 1)) as AxialSetting, { isOwn: true, showsAngles: true })).markup).length).toBeGreaterThan(20);
    expect(touchingIn('<text x="10" y="20" font-size="15">artery</text><text x="30" y="24" font-size="15">vein</text></svg>')).toEqual(["artery and vein"]);
  });

  it(`never touch in ${DRAWS} draws of the question with a needle, wherever the needle stands`, () => {
    for (let seed = 0; seed < DRAWS; seed += 1) {
      const first = axialOfItem(draw("needle", seed)) as AxialSetting;
      for (const bearingDeg of [-15, 0, 20, 45]) expect([seed, touchingIn(bothLooks({ ...first, bearingDeg, depthMm: 9 }))]).toEqual([seed, []]);
    }
  });

  it(`never touch in ${DRAWS} draws of the question with numbered places`, () => {
    for (let seed = 0; seed < DRAWS; seed += 1) expect([seed, touchingIn(marksOfItem(draw("structures", seed))?.markup ?? "")]).toEqual([seed, []]);
  });

  it("never touch in a knee of any age and side from either portal, nor on the rule of its angles", () => {
    for (const band of KNEE_BANDS) for (const side of ["left", "right"] as const) for (const portal of ["AL", "AM"] as const) for (let bearingDeg = -20; bearingDeg <= 60; bearingDeg += 10) {
      const { markup, view } = axialFigure(axialModelOf({ band, side, portal, bearingDeg, entryToJunctionMm: 3, depthMm: 8, marginMm: 2, capsuleMm: 4 }, { isOwn: false, showsAngles: true }));
      expect([band, side, portal, bearingDeg, touchingIn(markup), touchingIn(angleRule(view, 840)), touchingIn(angleRule(view, 356))]).toEqual([band, side, portal, bearingDeg, [], [], []]);
    }
  });
});

describe("letters in the figure along the needle", () => {
  const families = bank.map(({ id }) => id).filter((id) => lineOfItem(draw(id, 1), true) !== null);

  it("is drawn for several families", () => expect(families.length).toBeGreaterThan(4));

  it.each(families)(`never touch in ${DRAWS} draws of %s, with no own depth, a near one, a far one, and two`, (family) => {
    for (let seed = 0; seed < DRAWS; seed += 1) {
      const item = draw(family, seed);
      for (const yours of [[], [2], [9.5], [18], [4, 30]]) {
        const model = lineOfItem(item, true, yours);
        expect([seed, yours, model ? touchingIn(lineFigure(model).markup) : []]).toEqual([seed, yours, []]);
      }
    }
  });
});
