import { plateauPoints } from "../../src/engine/knee/plateau.ts";
import { howMany } from "../support/how-many.ts";
import { describe, expect, it } from "vitest";
import { clearanceMm } from "../../src/engine/index.ts";
import { gapToCircle } from "../../src/engine/geometry/circle.ts";
import { bundleDistances } from "../../src/engine/knee/bundle-distances.ts";
import { clearAngles } from "../../src/engine/knee/clear-angles.ts";
import { type Knee, kneeFrom, type PortalId } from "../../src/engine/knee/knee.ts";
import { lineToPeronealMm } from "../../src/engine/knee/line-to-peroneal-mm.ts";
import { meniscusOutline } from "../../src/engine/knee/meniscus.ts";
import { mirroredKnee } from "../../src/engine/knee/mirrored.ts";
import { needleAt } from "../../src/engine/knee/needle.ts";
import { drawnSizes, kneePopulation } from "../../src/engine/knee/population.ts";
import { shortestToArtery } from "../../src/engine/knee/shortest-to-artery.ts";
import type { KneeSizes, Side } from "../../src/engine/knee/sizes.ts";
import { zoneWidths } from "../../src/engine/knee/zone-widths.ts";
import { chanceFor } from "../../src/engine/random/chance.ts";
import { normalDraw } from "../../src/engine/random/normal-draw.ts";
import { ADULT_CAPSULE_MM, KNEE_BANDS, kneeSizes } from "../../src/facts/knee-model.ts";
import { kneeGroup } from "../../src/facts/knee-shares.ts";

const SEED = 20261125;
const SETTINGS = howMany(2000, 60);

interface Setting {
  readonly sizes: KneeSizes;
  readonly knee: Knee;
  readonly portal: PortalId;
  readonly targetDeg: number;
  readonly entryToJunctionMm: number;
  readonly depthMm: number;
  readonly needleRadiusMm: number;
  readonly marginMm: number;
  readonly beyondJunctionMm: number;
}

/** Random settings of drawn knees of all bands and both sides. */
const settings = ((): readonly Setting[] => {
  const chance = chanceFor("knee-test", 1, String(SEED));
  return Array.from({ length: SETTINGS }, () => {
    const group = kneeGroup(chance.pick(KNEE_BANDS), chance.pick<Side>(["right", "left"]));
    const sizes = { ...drawnSizes(group, chance), capsuleMm: chance.onGrid({ least: 1, greatest: 9, step: 0.1 }) };
    return {
      sizes,
      knee: kneeFrom(sizes),
      portal: chance.pick<PortalId>(["AL", "AM"]),
      targetDeg: chance.onGrid({ least: -125, greatest: 5, step: 0.1 }),
      entryToJunctionMm: chance.onGrid({ least: 0, greatest: 9, step: 0.1 }),
      depthMm: chance.onGrid({ least: 4, greatest: 24, step: 0.1 }),
      needleRadiusMm: chance.onGrid({ least: 0, greatest: 1, step: 0.1 }),
      marginMm: chance.onGrid({ least: 0, greatest: 4, step: 0.1 }),
      beyondJunctionMm: chance.onGrid({ least: 0, greatest: 15, step: 0.1 }),
    };
  });
})();

const along = (from: { xMm: number; yMm: number }, to: { xMm: number; yMm: number }, share: number) => ({ xMm: from.xMm + (to.xMm - from.xMm) * share, yMm: from.yMm + (to.yMm - from.yMm) * share });
const distance = (first: { xMm: number; yMm: number }, second: { xMm: number; yMm: number }) => Math.hypot(second.xMm - first.xMm, second.yMm - first.yMm);

describe("the needle", () => {
  it(`agrees with dense sampling in closest approach and touch on ${SETTINGS} settings (seed ${SEED})`, () => {
    let worstMm = 0;
    let touching = 0;
    for (const setting of settings) {
      const needle = needleAt(setting);
      for (const one of needle.structures) {
        const structure = setting.knee.structures.find(({ id }) => id === one.id);
        if (!structure) throw new Error(one.id);
        const edge = structure.radiusMm + setting.needleRadiusMm;
        let least = Number.POSITIVE_INFINITY;
        for (let step = 0; step <= 1000; step += 1) least = Math.min(least, distance(along(needle.entry, needle.tip, step / 1000), structure.centre) - edge);
        worstMm = Math.max(worstMm, Math.abs(least - one.clearanceMm));
        expect(one.clearanceMm).toBeCloseTo(clearanceMm({ entry: needle.entry, tip: needle.tip, centre: structure.centre, radiusMm: structure.radiusMm, needleRadiusMm: setting.needleRadiusMm }), 9);
        if (one.touchesAtMm === null || one.touchesAtMm === 0) continue;
        touching += 1;
        expect(distance(along(needle.entry, needle.tip, one.touchesAtMm / setting.depthMm), structure.centre)).toBeCloseTo(edge, 6);
        if (one.clearanceMm < -0.001) expect(one.touchesAtMm).toBeLessThan(setting.depthMm);
        if (one.clearanceMm > 0.001) expect(one.touchesAtMm).toBeGreaterThan(setting.depthMm);
      }
      expect(needle.nearest.clearanceMm).toBe(Math.min(...needle.structures.filter(({ id }) => id !== "popliteus").map((one) => one.clearanceMm)));
    }
    expect(worstMm).toBeLessThan(0.02);
    expect(touching).toBeGreaterThan(SETTINGS / 4);
  });

  it(`agrees with dense sampling in entry to capsule, and passes through its target (seed ${SEED})`, () => {
    for (const setting of settings) {
      const needle = needleAt(setting);
      const { lateral } = setting.knee.capsule;
      const portal = setting.knee.portals[setting.portal];
      let reached = 0;
      const lengthMm = distance(needle.entry, needle.tip);
      while (distance(along(needle.entry, needle.tip, reached / lengthMm), lateral.centre) < lateral.radiusMm) reached += 0.01;
      expect(Math.abs(reached - needle.entryToCapsuleMm)).toBeLessThan(0.011);
      expect(needle.overshootMm).toBeCloseTo(setting.depthMm - needle.entryToCapsuleMm, 9);
      expect(distance(needle.entry, needle.junction)).toBeCloseTo(setting.entryToJunctionMm, 9);
      expect(gapToCircle(needle.junction, setting.knee.lateral.rim)).toBeCloseTo(0, 9);
      expect(distance(portal, needle.entry) + distance(needle.entry, needle.tip)).toBeCloseTo(distance(portal, needle.tip), 9);
      if (needle.pathWidthMm !== null) expect(gapToCircle(along(needle.junction, portal, needle.pathWidthMm / distance(needle.junction, portal)), setting.knee.lateral.freeEdge)).toBeCloseTo(0, 6);
    }
  });

  it("refuses what lies outside its range, by name", () => {
    const knee = kneeFrom(kneeSizes({ band: "8-10", side: "right", capsuleMm: 6 }));
    const good = { knee, portal: "AL", targetDeg: -90, entryToJunctionMm: 4, depthMm: 10, needleRadiusMm: 0.5 } as const;
    for (const name of ["targetDeg", "entryToJunctionMm", "depthMm", "needleRadiusMm"]) {
      for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -200]) expect(() => needleAt({ ...good, [name]: bad })).toThrow(new RegExp(`^${name} must be`));
    }
    expect(() => needleAt({ ...good, targetDeg: 90 })).toThrow(/^targetDeg must lie on the far side/);
    expect(() => needleAt({ ...good, entryToJunctionMm: 90 })).toThrow(/^entryToJunctionMm must be/);
  });
});

describe("clear angles", () => {
  /** Least distance from the edges of vessels and nerves to points every half millimetre of a line, its end included. */
  const sampledMm = (knee: Knee, portal: PortalId, angleDeg: number, reachMm: number): number => {
    const start = knee.portals[portal];
    const sign = knee.side === "right" ? 1 : -1;
    const end = { xMm: start.xMm + sign * reachMm * Math.sin((angleDeg * Math.PI) / 180), yMm: start.yMm - reachMm * Math.cos((angleDeg * Math.PI) / 180) };
    const steps = Math.ceil(reachMm * 2);
    let least = Number.POSITIVE_INFINITY;
    for (const { id, centre, radiusMm } of knee.structures) {
      if (id === "popliteus") continue;
      for (let step = 0; step <= steps; step += 1) least = Math.min(least, distance(along(start, end, step / steps), centre) - radiusMm);
    }
    return least;
  };
  const toJunctionMm = (knee: Knee, portal: PortalId, angleDeg: number): number => {
    const start = knee.portals[portal];
    const sign = knee.side === "right" ? 1 : -1;
    const [x, y] = [knee.lateral.rim.centre.xMm - start.xMm, knee.lateral.rim.centre.yMm - start.yMm];
    const foot = sign * x * Math.sin((angleDeg * Math.PI) / 180) - y * Math.cos((angleDeg * Math.PI) / 180);
    return foot + Math.sqrt(Math.max(0, knee.lateral.rim.radiusMm ** 2 - (x * x + y * y - foot * foot)));
  };

  it.each(["without end", "with a tip"])(`agree with dense sampling on ${SETTINGS} settings, %s (seed ${SEED})`, (kind) => {
    const disagree: string[] = [];
    let blocked = 0;
    for (const [index, setting] of settings.entries()) {
      const { knee, portal, marginMm, needleRadiusMm, beyondJunctionMm } = setting;
      const question = { knee, portal, marginMm, needleRadiusMm, ...(kind === "with a tip" ? { beyondJunctionMm } : {}) };
      const { rim, clear } = clearAngles(question);
      for (let part = 0; part <= 60; part += 1) {
        const angleDeg = rim.fromDeg + ((rim.toDeg - rim.fromDeg) * part) / 60;
        const reachMm = kind === "with a tip" ? toJunctionMm(knee, portal, angleDeg) + beyondJunctionMm : 130;
        const spareMm = sampledMm(knee, portal, angleDeg, reachMm) - marginMm - needleRadiusMm;
        if (Math.abs(spareMm) < 0.03) continue;
        const inside = clear.some(({ fromDeg, toDeg }) => angleDeg >= fromDeg && angleDeg <= toDeg);
        if (!inside) blocked += 1;
        if (inside !== spareMm > 0) disagree.push(`${index} ${angleDeg} ${spareMm}`);
      }
    }
    expect(disagree).toEqual([]);
    expect(blocked).toBeGreaterThan(2.5 * SETTINGS);
  });

  it("shrink with the margin, and never overlap", () => {
    for (const { knee, portal, marginMm, needleRadiusMm } of settings.slice(0, 300)) {
      const width = (extraMm: number): number => clearAngles({ knee, portal, marginMm: marginMm + extraMm, needleRadiusMm }).clear.reduce((sum, { fromDeg, toDeg }) => sum + toDeg - fromDeg, 0);
      expect(width(1)).toBeLessThanOrEqual(width(0) + 1e-9);
      const { clear } = clearAngles({ knee, portal, marginMm, needleRadiusMm });
      expect(clear.every(({ fromDeg, toDeg }, index) => fromDeg < toDeg && (index === 0 || fromDeg > (clear[index - 1]?.toDeg ?? 0)))).toBe(true);
    }
  });

  it("refuse a negative length, by name", () => {
    const knee = kneeFrom(kneeSizes({ band: "8-10", side: "left", capsuleMm: 6 }));
    expect(() => clearAngles({ knee, portal: "AL", marginMm: -1, needleRadiusMm: 0.5 })).toThrow(/^marginMm must be/);
    expect(() => clearAngles({ knee, portal: "AL", marginMm: 1, needleRadiusMm: 0.5, beyondJunctionMm: -1 })).toThrow(/^beyondJunctionMm must be/);
  });
});

describe("left and right", () => {
  it(`give the same numbers (seed ${SEED})`, () => {
    for (const setting of settings.slice(0, 500)) {
      const { knee, portal, marginMm, needleRadiusMm } = setting;
      const other = mirroredKnee(knee);
      expect(other.side).not.toBe(knee.side);
      const numbers = (one: Knee): readonly number[] => {
        const needle = needleAt({ ...setting, knee: one });
        const angles = clearAngles({ knee: one, portal, marginMm, needleRadiusMm });
        const zone = zoneWidths(one, 8);
        return [needle.bearingDeg, needle.entryToCapsuleMm, needle.overshootMm, needle.pathWidthMm ?? -1, ...needle.structures.flatMap((each) => [each.clearanceMm, each.closestAtMm, each.touchesAtMm ?? -1]),
          ...angles.clear.flatMap(({ fromDeg, toDeg }) => [fromDeg, toDeg]), zone.junctionMm, zone.frontMm, ...Object.values(bundleDistances(one)), ...Object.values(shortestToArtery(one)), lineToPeronealMm(one, { portal, edge: "lateral" })];
      };
      const [here, there] = [numbers(knee), numbers(other)];
      expect(there.length).toBe(here.length);
      expect(Math.max(...here.map((value, index) => Math.abs(value - (there[index] ?? Number.NaN))))).toBeLessThan(1e-9);
      expect(mirroredKnee(other)).toEqual(knee);
    }
  });
  it("of the same sizes are mirror images", () => {
    const left = kneeFrom(kneeSizes({ band: "11-13", side: "left", capsuleMm: ADULT_CAPSULE_MM }));
    const right = kneeFrom(kneeSizes({ band: "11-13", side: "right", capsuleMm: ADULT_CAPSULE_MM }));
    expect(mirroredKnee(right)).toEqual(left);
    expect(right.portals.AL.xMm).toBeGreaterThan(0);
    expect(left.portals.AL.xMm).toBeLessThan(0);
  });
});

describe("the knee", () => {
  it("has its origin in the middle of the plateau, and the menisci on it", () => {
    for (const band of KNEE_BANDS) {
      const knee = kneeFrom(kneeSizes({ band, side: "right", capsuleMm: ADULT_CAPSULE_MM }));
      const xs = plateauPoints(knee.plateau).map(({ xMm }) => xMm);
      const ys = plateauPoints(knee.plateau).map(({ yMm }) => yMm);
      expect(Math.abs(Math.max(...xs) + Math.min(...xs))).toBeLessThan(0.1);
      expect(Math.abs(Math.max(...ys) + Math.min(...ys))).toBeLessThan(0.2);
      const outline = [...meniscusOutline(knee.lateral, 40), ...meniscusOutline(knee.medial, 40)];
      expect(Math.max(...outline.map(({ xMm }) => xMm))).toBeLessThan(Math.max(...xs));
      expect(Math.min(...outline.map(({ yMm }) => yMm))).toBeGreaterThan(Math.min(...ys));
    }
  });
  it("keeps vessels, nerves and tendon apart and behind the joint", () => {
    for (const band of KNEE_BANDS) {
      const { structures, lateral, medial } = kneeFrom(kneeSizes({ band, side: "right", capsuleMm: ADULT_CAPSULE_MM }));
      for (const [index, first] of structures.entries()) {
        for (const second of structures.slice(index + 1)) expect(gapToCircle(first.centre, second) - first.radiusMm, `${band} ${first.id} ${second.id}`).toBeGreaterThan(-0.01);
        if (first.id === "popliteus") continue;
        expect(Math.min(gapToCircle(first.centre, lateral.rim), gapToCircle(first.centre, medial.rim)) - first.radiusMm, `${band} ${first.id}`).toBeGreaterThan(0);
      }
    }
  });
  it("has menisci as wide as their sizes in front, at the side and behind, within a tenth of a millimetre", () => {
    const sizes = kneeSizes({ band: "14-16", side: "right", capsuleMm: ADULT_CAPSULE_MM });
    const { medial } = kneeFrom(sizes);
    const { rim, freeEdge } = medial;
    expect(gapToCircle({ xMm: rim.centre.xMm - rim.radiusMm, yMm: rim.centre.yMm }, freeEdge)).toBeCloseTo(sizes.medial.bodyWidthMm, 0);
    expect(Math.abs(gapToCircle({ xMm: rim.centre.xMm, yMm: rim.centre.yMm - rim.radiusMm }, freeEdge) - sizes.medial.backWidthMm)).toBeLessThan(0.2);
    expect(Math.abs(gapToCircle({ xMm: rim.centre.xMm, yMm: rim.centre.yMm + rim.radiusMm }, freeEdge) - sizes.medial.frontWidthMm)).toBeLessThan(0.2);
  });
  it("refuses a size that is no size, by name", () => {
    const good = kneeSizes({ band: "8-10", side: "right", capsuleMm: 6 });
    expect(() => kneeFrom({ ...good, capsuleMm: 0 })).toThrow(/^capsuleMm must be greater than 0, got 0$/);
    expect(() => kneeFrom({ ...good, bundle: { ...good.bundle, gapMm: -1 } })).toThrow(/^bundle.gapMm must be greater than 0/);
    expect(() => kneeFrom({ ...good, popliteus: { ...good.popliteus, rimDeg: Number.NaN } })).toThrow(/^popliteus.rimDeg must be/);
    expect(() => kneeFrom({ ...good, lateral: { ...good.lateral, backWidthMm: 90 } })).toThrow(/^lateral.backWidthMm must be/);
    expect(() => kneeFrom({ ...good, side: "both" as Side })).toThrow(/^side must be right or left/);
  });
});

describe("the population", () => {
  it("is the same for the same seed and another for another", () => {
    const groups = [kneeGroup("5-7"), kneeGroup("14-16", "left")];
    const knees = (seed: number | string) => kneePopulation({ groups, seed, count: 20 });
    expect(knees(7)).toEqual(knees("7"));
    expect(knees(7)).not.toEqual(knees(8));
    expect(knees(7).map(({ side }) => side).slice(0, 4)).toEqual(["right", "left", "right", "left"]);
    expect(kneePopulation({ groups, seed: 7, count: 10 })).toEqual(knees(7).slice(0, 10));
    expect(() => kneePopulation({ groups: [], seed: 7, count: 1 })).toThrow(/^groups must hold/);
    expect(() => kneePopulation({ groups, seed: 7, count: 1.5 })).toThrow(/^count must be/);
  });
  it(`draws from a normal distribution, cut off (seed ${SEED})`, () => {
    const chance = chanceFor("normal-test", 1, String(SEED));
    const draws = Array.from({ length: 20_000 }, () => normalDraw(chance, 3));
    const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length;
    const share = (limit: number): number => draws.filter((value) => Math.abs(value) < limit).length / draws.length;
    expect(Math.abs(mean)).toBeLessThan(0.03);
    expect(Math.max(...draws.map(Math.abs))).toBeLessThanOrEqual(3);
    // 68.3 % within one and 95.4 % within two standard deviations (any table of the normal distribution).
    expect(Math.abs(share(1) - 0.683)).toBeLessThan(0.015);
    expect(Math.abs(share(2) - 0.954)).toBeLessThan(0.01);
  });
});
