import { describe, expect, it } from "vitest";
import {
  clearanceMm,
  depthWindowMm,
  standOffDeg,
  stitchCount,
  stopSettingMm,
  zoneAngleDeg,
  zoneDepthMm,
} from "../../src/engine/index.ts";
import { xoshiro128 } from "../../src/engine/random/xoshiro.ts";

/**
 * Beck and others 2019, Defining a safe zone for all-inside lateral meniscal repairs in pediatric patients,
 * Arthroscopy, item S0749-8063(18)30667-4, abstract: mean D3 (at the junction) and mean D4 (8 mm in front), in mm.
 */
const BECK = [
  { ages: "5-7", junctionWidthMm: 14.1, anteriorWidthMm: 11.39 },
  { ages: "8-10", junctionWidthMm: 15.8, anteriorWidthMm: 13.24 },
  { ages: "11-13", junctionWidthMm: 17.0, anteriorWidthMm: 14.59 },
  { ages: "14-16", junctionWidthMm: 17.2, anteriorWidthMm: 14.8 },
] as const;
const SEPARATION_MM = 8;

/** Second method: the two sides of the zone drawn as lines and cut with each other. */
const apexByLines = ({ junctionWidthMm, anteriorWidthMm }: (typeof BECK)[number]): number => {
  const slope = (junctionWidthMm - anteriorWidthMm) / 2 / SEPARATION_MM;
  return junctionWidthMm / 2 / slope;
};

describe("the zone of Beck 2019 as a triangle", () => {
  const depths = BECK.map((zone) => zoneDepthMm({ ...zone, separationMm: SEPARATION_MM }));
  const angles = BECK.map(({ junctionWidthMm }, index) => {
    const sideMm = Math.hypot(depths[index] ?? 0, junctionWidthMm / 2);
    return zoneAngleDeg({ nearEdgeMm: sideMm, farEdgeMm: sideMm, widthMm: junctionWidthMm });
  });

  it("has its apex where its two sides cross", () => {
    for (const [index, zone] of BECK.entries()) expect(depths[index]).toBeCloseTo(apexByLines(zone), 9);
    // Worked by hand from the printed means: 8 × 14.1 ÷ 2.71 and so on.
    expect(depths.map((depth) => depth.toFixed(1))).toEqual(["41.6", "49.4", "56.4", "57.3"]);
  });

  it("gets wider with age at the junction and narrower as an angle", () => {
    for (let index = 1; index < BECK.length; index += 1) {
      expect(BECK[index]?.junctionWidthMm).toBeGreaterThan(BECK[index - 1]?.junctionWidthMm ?? 0);
      expect(angles[index]).toBeLessThan(angles[index - 1] ?? 0);
    }
    // By hand: 2 atan((D3 − D4) ÷ 16).
    expect(angles.map((angle) => angle.toFixed(1))).toEqual(["19.2", "18.2", "17.1", "17.1"]);
  });
});

/** McCulloch and others 2016, What is the optimal minimum penetration depth for all-inside meniscal repairs?: 8 to 10 mm, adults. */
const MCCULLOCH_MM = [8, 10] as const;
/** Schachne and others 2019, 10.1177/2325967119855027, means from the junction to the bundle, boys and girls of 10 to 18. */
const SCHACHNE_JUNCTION_MM = [5.2, 4.6] as const;

describe("depth along one line", () => {
  it("has no window where McCulloch's adult need meets Schachne's distances", () => {
    for (const throughCapsuleMm of MCCULLOCH_MM) {
      for (const junctionToStructureMm of SCHACHNE_JUNCTION_MM) {
        for (const marginMm of [0.1, 1, 3]) {
          const line = { entryToJunctionMm: 5, throughCapsuleMm, junctionToStructureMm, marginMm };
          expect(depthWindowMm(line)).toBeNull();
          expect(stopSettingMm(depthWindowMm(line), [12, 14, 16, 18])).toBeNull();
        }
      }
    }
  });

  it("starts at entry to junction plus McCulloch's need: 3 mm gives 11 to 13, 5 gives 13 to 15, 8 gives 16 to 18", () => {
    const least = (entryToJunctionMm: number, throughCapsuleMm: number) =>
      depthWindowMm({ entryToJunctionMm, throughCapsuleMm, junctionToStructureMm: 40, marginMm: 3 })?.leastMm;
    expect([3, 5, 8].map((entry) => MCCULLOCH_MM.map((need) => least(entry, need)))).toEqual([[11, 13], [13, 15], [16, 18]]);
  });

  it("is a window of one depth for every touching case on the grid of a tenth", () => {
    const missed: string[] = [];
    for (let entry = 20; entry <= 100; entry += 3) {
      for (let need = 10; need <= 100; need += 1) {
        for (let margin = 5; margin <= 40; margin += 1) {
          const line = {
            entryToJunctionMm: entry / 10,
            throughCapsuleMm: need / 10,
            junctionToStructureMm: (need + margin) / 10,
            marginMm: margin / 10,
          };
          const window = depthWindowMm(line);
          if (window?.leastMm !== (entry + need) / 10 || window.greatestMm !== window.leastMm) missed.push(JSON.stringify(line));
          const short = depthWindowMm({ ...line, junctionToStructureMm: (need + margin - 1) / 10 });
          if (short !== null) missed.push(`short ${JSON.stringify(line)}`);
        }
      }
    }
    expect(missed).toEqual([]);
  });
});

const random = xoshiro128([11, 22, 33, 44]);
const between = (least: number, greatest: number): number => least + (random() / 2 ** 32) * (greatest - least);

describe("angles and distances against a second method", () => {
  it("the zone angle is the angle between two vectors that close the triangle", () => {
    for (let run = 0; run < 300; run += 1) {
      const angleRad = between(0.01, 3.1);
      const near = { xMm: between(5, 70), yMm: 0 };
      const farEdgeMm = between(5, 70);
      const far = { xMm: farEdgeMm * Math.cos(angleRad), yMm: farEdgeMm * Math.sin(angleRad) };
      const widthMm = Math.hypot(far.xMm - near.xMm, far.yMm);
      const angle = zoneAngleDeg({ nearEdgeMm: near.xMm, farEdgeMm, widthMm });
      expect(angle).toBeCloseTo((angleRad * 180) / Math.PI, 9);
    }
  });

  it("clearance is the least over many points of the needle", () => {
    for (let run = 0; run < 60; run += 1) {
      const point = () => ({ xMm: between(-30, 30), yMm: between(-30, 30) });
      const needle = { entry: point(), tip: point(), centre: point(), radiusMm: between(1, 4), needleRadiusMm: 0.5 };
      const { entry, tip, centre } = needle;
      let least = Number.POSITIVE_INFINITY;
      for (let step = 0; step <= 4000; step += 1) {
        const share = step / 4000;
        const xMm = entry.xMm + share * (tip.xMm - entry.xMm) - centre.xMm;
        const yMm = entry.yMm + share * (tip.yMm - entry.yMm) - centre.yMm;
        least = Math.min(least, Math.hypot(xMm, yMm));
      }
      // Neighbouring points stand at most 0.022 mm apart, so the nearest is missed by at most 0.011 mm.
      const sampled = least - needle.radiusMm - needle.needleRadiusMm;
      expect(clearanceMm(needle)).toBeLessThanOrEqual(sampled + 0.000001);
      expect(clearanceMm(needle)).toBeGreaterThan(sampled - 0.011);
    }
  });

  it("a round vessel is met earlier by a tilted needle than a flat wall would be", () => {
    // Vessel of radius 2.5 centred 10.5 deep and 2 aside, by x² + y²: straight at 10.5 − √(2.5² − 2²) = 9.0.
    const vessel = { entry: { xMm: 0, yMm: 0 }, centre: { xMm: 2, yMm: 10.5 }, radiusMm: 2.5, needleRadiusMm: 0 };
    expect(clearanceMm({ ...vessel, tip: { xMm: 0, yMm: 9 } })).toBeCloseTo(0, 9);
    const tiltRad = (11 * Math.PI) / 180;
    const tipAt = (depth: number) => ({ xMm: depth * Math.sin(tiltRad), yMm: depth * Math.cos(tiltRad) });
    expect(clearanceMm({ ...vessel, tip: tipAt(8.1) })).toBeGreaterThan(0);
    expect(clearanceMm({ ...vessel, tip: tipAt(8.2) })).toBeLessThan(0.01);
  });

  it("a line turned by the stand-off passes the widened structure at exactly the margin", () => {
    for (let run = 0; run < 100; run += 1) {
      const [radiusMm, marginMm] = [between(1, 4), between(0, 4)];
      const rangeMm = radiusMm + marginMm + between(1, 60);
      const angleRad = (standOffDeg({ rangeMm, radiusMm, marginMm }) * Math.PI) / 180;
      const tip = { xMm: 200 * Math.sin(angleRad), yMm: 200 * Math.cos(angleRad) };
      const line = { entry: { xMm: 0, yMm: 0 }, tip, centre: { xMm: 0, yMm: rangeMm }, radiusMm, needleRadiusMm: 0 };
      expect(clearanceMm(line)).toBeCloseTo(marginMm, 9);
    }
  });

  it("the stitch count is the first number whose gaps are not too wide", () => {
    for (let tear = 50; tear <= 400; tear += 7) {
      for (let margin = 0; margin <= 60; margin += 5) {
        for (let spacing = 20; spacing <= 70; spacing += 5) {
          let count = 1;
          while (tear - 2 * margin > spacing * (count - 1)) count += 1;
          expect(stitchCount({ tearMm: tear / 10, endMarginMm: margin / 10, greatestSpacingMm: spacing / 10 })).toBe(count);
        }
      }
    }
  });
});
