import { howMany } from "../support/how-many.ts";
import { describe, expect, it } from "vitest";
import { chanceFor } from "../../src/engine/random/chance.ts";
import { needleUnder } from "../../src/engine/knee/aimed-needle.ts";
import { KNEE_BANDS } from "../../src/facts/knee-model.ts";
import { axialFigure } from "../../src/figures/axial-figure.ts";
import { axialFrame, pointAt } from "../../src/figures/axial-frame.ts";
import { blockedInside } from "../../src/figures/axial-model.ts";
import { axialModelOf, type AxialSetting, NEEDLE_RADIUS_MM } from "../../src/figures/axial-setting.ts";
import { AXIAL_WORDS, mm } from "../../src/figures/axial-words.ts";
import { angleRule } from "../../src/figures/angle-rule.ts";
import { shareClear } from "../../src/figures/axial-share.ts";

const SETTINGS = howMany(1000, 50);
const chance = chanceFor("axial", 1, "20261125");
const random = (): AxialSetting => ({
  band: chance.pick(KNEE_BANDS),
  side: chance.pick(["left", "right"]),
  portal: chance.pick(["AL", "AM"]),
  bearingDeg: chance.onGrid({ least: -20, greatest: 60, step: 1 }),
  entryToJunctionMm: chance.onGrid({ least: 1, greatest: 5, step: 0.5 }),
  depthMm: chance.onGrid({ least: 2, greatest: 20, step: 0.5 }),
  marginMm: chance.onGrid({ least: 0, greatest: 4, step: 0.5 }),
  capsuleMm: chance.onGrid({ least: 2, greatest: 8, step: 0.5 }),
});
const settings = Array.from({ length: SETTINGS }, random);
const look = { isOwn: true, showsAngles: true };

describe("the axial figure", () => {
  it(`says in words what the engine computes, on ${SETTINGS} settings drawn by a fixed seed`, () => {
    const failed = settings.filter((setting) => {
      const { text, view } = axialFigure(axialModelOf(setting, look));
      const needle = needleUnder({ ...setting, knee: view.model.knee, needleRadiusMm: NEEDLE_RADIUS_MM });
      if (needle === null) return !text.includes("misses the lateral meniscus");
      return needle.structures.some(({ id, clearanceMm }) => !text.includes(`${AXIAL_WORDS.en.structures[id]}, ${mm(clearanceMm)}`) && !text.includes(`${AXIAL_WORDS.en.structures[id]} ${mm(clearanceMm)}`));
    });
    expect(failed).toEqual([]);
    expect(settings.filter((setting) => axialFigure(axialModelOf(setting, look)).view.needle !== null).length).toBeGreaterThan(SETTINGS / 3);
  });

  it("gives the same distances and angles for the mirrored knee", () => {
    for (const setting of settings.slice(0, 200)) {
      const [right, left] = (["right", "left"] as const).map((side) => axialFigure(axialModelOf({ ...setting, side }, look)).view);
      expect(left?.needle?.structures.map(({ clearanceMm }) => clearanceMm.toFixed(6))).toEqual(right?.needle?.structures.map(({ clearanceMm }) => clearanceMm.toFixed(6)));
      expect(left?.angles.clear.map(({ fromDeg }) => fromDeg.toFixed(6))).toEqual(right?.angles.clear.map(({ fromDeg }) => fromDeg.toFixed(6)));
    }
  });

  it("inks what is not clear and nothing else: together the two fill the rim", () => {
    for (const setting of settings.slice(0, 200)) {
      const { view } = axialFigure(axialModelOf(setting, look));
      const length = (list: readonly { fromDeg: number; toDeg: number }[]): number => list.reduce((sum, { fromDeg, toDeg }) => sum + toDeg - fromDeg, 0);
      expect(length(blockedInside(view)) + length(view.angles.clear)).toBeCloseTo(view.angles.rim.toDeg - view.angles.rim.fromDeg, 6);
    }
  });

  it("does not ink angles where they would give an answer away", () => {
    const { markup, text } = axialFigure(axialModelOf(settings[0] as AxialSetting, { isOwn: true, showsAngles: false }));
    expect(markup).not.toMatch(/p-forbid|class="clear"|class="keep"/);
    expect(text).not.toContain("Stays at least");
  });

  it.each([
    ["left-5-7-from-the-front", { band: "5-7", side: "left", portal: "AL", bearingDeg: -6, entryToJunctionMm: 3, depthMm: 6, marginMm: 1.5, capsuleMm: 3 }],
    ["right-14-16-crossing", { band: "14-16", side: "right", portal: "AM", bearingDeg: 32, entryToJunctionMm: 4, depthMm: 9, marginMm: 3, capsuleMm: 5 }],
    ["right-8-10-missing-the-rim", { band: "8-10", side: "right", portal: "AL", bearingDeg: 60, entryToJunctionMm: 4, depthMm: 9, marginMm: 3, capsuleMm: 5 }],
  ] as const)("is drawn as it was looked at: %s", async (name, setting) => {
    const { markup, text, view } = axialFigure(axialModelOf(setting, look));
    expect(markup.match(/\d\.\d{4,}/g)).toBeNull();
    await expect(`${markup}\n${angleRule(view, 840)}\n<!-- ${text} -->\n`).toMatchFileSnapshot(`golden/${name}.svg.txt`);
  });

  it("finds the point under a place of the picture", () => {
    for (const name of ["wide", "narrow"] as const) {
      const frame = axialFrame(name);
      const [x, y] = frame.at({ xMm: 12.5, yMm: -30 });
      const point = pointAt(name, x / frame.widthPx, y / frame.widthPx);
      expect([point.xMm.toFixed(6), point.yMm.toFixed(6)]).toEqual(["12.500000", "-30.000000"]);
    }
  });

  it("holds nothing that is not a number, and no attribute of style", () => {
    for (const setting of settings.slice(0, 300)) {
      const { markup, view } = axialFigure(axialModelOf(setting, look));
      expect(`${markup}${angleRule(view, 800)}`).not.toMatch(/NaN|undefined|Infinity|style=/);
    }
  });

  it("draws the same share of knees again, between 0 and 1, and a smaller one for a wider margin", () => {
    const setting = { ...(settings[0] as AxialSetting), band: "8-10", portal: "AL", bearingDeg: -4, entryToJunctionMm: 3, depthMm: 7, marginMm: 0 } as const;
    const share = shareClear(setting);
    expect(share).toBe(shareClear(setting));
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThanOrEqual(1);
    expect(shareClear({ ...setting, marginMm: 4 })).toBeLessThan(share);
  });
});
