import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as engine from "../../src/engine/index.ts";
import { howMany } from "../support/how-many.ts";

const SETTINGS = { seed: 20_260_301, numRuns: howMany(300, 60) } as const;
const check = <T extends [unknown, ...unknown[]]>(property: fc.IProperty<T>): void => {
  fc.assert(property, SETTINGS);
};

/** Lengths as pages show them, in tenths of a millimetre. */
const tenths = (least: number, greatest: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 10, max: greatest * 10 }).map((value) => value / 10);
const real = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const point = fc.record({ xMm: real(-60, 60), yMm: real(-60, 60) });
const line = fc.record({
  entryToJunctionMm: tenths(1, 20),
  throughCapsuleMm: tenths(1, 12),
  junctionToStructureMm: tenths(1, 30),
  marginMm: tenths(1, 5),
});
const needle = fc.record({ entry: point, tip: point, centre: point, radiusMm: real(0.5, 5), needleRadiusMm: real(0, 1) });

describe("needle and stitches", () => {
  it("a window moves with the entry and shrinks as the margin grows, until it is gone", () => {
    check(fc.property(line, tenths(1, 5), (given, more) => {
      const window = engine.depthWindowMm(given);
      const moved = engine.depthWindowMm({ ...given, entryToJunctionMm: given.entryToJunctionMm + more });
      const tighter = engine.depthWindowMm({ ...given, marginMm: given.marginMm + more });
      if (window === null) expect([moved, tighter]).toEqual([null, null]);
      else {
        expect(moved?.leastMm).toBeCloseTo(window.leastMm + more, 9);
        expect(moved?.greatestMm).toBeCloseTo(window.greatestMm + more, 9);
        if (tighter !== null) expect(tighter.greatestMm).toBeLessThan(window.greatestMm);
      }
    }));
  });

  it("a window is there exactly where the need fits before the margin", () => {
    check(fc.property(line, (given) => {
      const tenth = (value: number) => Math.round(value * 10);
      const fits = tenth(given.throughCapsuleMm) <= tenth(given.junctionToStructureMm) - tenth(given.marginMm);
      expect(engine.depthWindowMm(given) !== null).toBe(fits);
    }));
  });

  it("the stop lies in the window, no smaller one does, and their order does not matter", () => {
    check(fc.property(line, fc.array(tenths(2, 40), { maxLength: 8 }), (given, stops) => {
      const window = engine.depthWindowMm(given);
      const stop = engine.stopSettingMm(window, stops);
      const inside = stops.filter((value) => window !== null && value >= window.leastMm && value <= window.greatestMm);
      expect(stop).toBe(inside.length === 0 ? null : Math.min(...inside));
      expect(engine.stopSettingMm(window, [...stops].reverse())).toBe(stop);
    }));
  });

  it("clearance is the same in the mirror, the other way round and after a shift", () => {
    const mirrored = ({ xMm, yMm }: { xMm: number; yMm: number }) => ({ xMm: -xMm, yMm });
    const shifted = ({ xMm, yMm }: { xMm: number; yMm: number }) => ({ xMm: xMm + 3, yMm: yMm - 7 });
    check(fc.property(needle, (given) => {
      const clearance = engine.clearanceMm(given);
      const { entry, tip, centre } = given;
      for (const move of [mirrored, shifted]) {
        const moved = { ...given, entry: move(entry), tip: move(tip), centre: move(centre) };
        expect(engine.clearanceMm(moved)).toBeCloseTo(clearance, 9);
      }
      expect(engine.clearanceMm({ ...given, entry: tip, tip: entry })).toBeCloseTo(clearance, 9);
      expect(engine.clearanceMm({ ...given, radiusMm: given.radiusMm + 1 })).toBeCloseTo(clearance - 1, 9);
    }));
  });

  it("a structure behind the entry or beyond the tip is measured from that end, not from the line", () => {
    check(fc.property(real(0.1, 40), real(-20, 20), real(1, 30), (beyond, aside, lengthMm) => {
      const given = { entry: { xMm: 0, yMm: 0 }, tip: { xMm: 0, yMm: lengthMm }, radiusMm: 1, needleRadiusMm: 0 };
      const expected = Math.hypot(aside, beyond) - 1;
      expect(engine.clearanceMm({ ...given, centre: { xMm: aside, yMm: -beyond } })).toBeCloseTo(expected, 9);
      expect(engine.clearanceMm({ ...given, centre: { xMm: aside, yMm: lengthMm + beyond } })).toBeCloseTo(expected, 9);
      expect(engine.clearanceMm({ ...given, tip: given.entry, centre: { xMm: aside, yMm: beyond } })).toBeCloseTo(expected, 9);
    }));
  });

  it("a line beside a structure keeps its distance however far it runs", () => {
    check(fc.property(real(0, 30), real(10, 60), (asideMm, lengthMm) => {
      const given = { entry: { xMm: 0, yMm: 0 }, tip: { xMm: 0, yMm: lengthMm }, centre: { xMm: asideMm, yMm: 5 }, radiusMm: 2, needleRadiusMm: 0.5 };
      expect(engine.clearanceMm(given)).toBeCloseTo(asideMm - 2.5, 9);
    }));
  });

  it("a zone that narrows less has its apex farther away, and the angle there is 2 atan of half the difference", () => {
    check(fc.property(tenths(5, 25), fc.integer({ min: 1, max: 40 }), tenths(2, 12), (anteriorWidthMm, more, separationMm) => {
      const junctionWidthMm = Math.round(anteriorWidthMm * 10 + more) / 10;
      const depth = engine.zoneDepthMm({ junctionWidthMm, anteriorWidthMm, separationMm });
      expect(depth).toBeGreaterThan(separationMm);
      const wider = engine.zoneDepthMm({ junctionWidthMm: junctionWidthMm + 1, anteriorWidthMm, separationMm });
      expect(wider).toBeLessThan(depth);
      const side = Math.hypot(depth, junctionWidthMm / 2);
      const angle = engine.zoneAngleDeg({ nearEdgeMm: side, farEdgeMm: side, widthMm: junctionWidthMm });
      const atApex = (2 * Math.atan((junctionWidthMm - anteriorWidthMm) / 2 / separationMm) * 180) / Math.PI;
      expect(angle).toBeCloseTo(atApex, 7);
    }));
  });

  it("the zone angle does not mind which edge comes first, nor the unit of length", () => {
    check(fc.property(tenths(20, 70), tenths(20, 70), real(0.05, 0.95), (nearEdgeMm, farEdgeMm, share) => {
      const difference = Math.abs(nearEdgeMm - farEdgeMm);
      const widthMm = difference + share * (nearEdgeMm + farEdgeMm - difference);
      const angle = engine.zoneAngleDeg({ nearEdgeMm, farEdgeMm, widthMm });
      expect(engine.zoneAngleDeg({ nearEdgeMm: farEdgeMm, farEdgeMm: nearEdgeMm, widthMm })).toBeCloseTo(angle, 9);
      expect(engine.zoneAngleDeg({ nearEdgeMm: nearEdgeMm * 10, farEdgeMm: farEdgeMm * 10, widthMm: widthMm * 10 })).toBeCloseTo(angle, 8);
    }));
  });

  it("the zone angle is 0 for ends behind each other and 180 for ends on both sides", () => {
    check(fc.property(tenths(1, 70), tenths(1, 70), (near, more) => {
      const far = Math.round(near * 10 + more * 10) / 10;
      expect(engine.zoneAngleDeg({ nearEdgeMm: near, farEdgeMm: far, widthMm: more })).toBe(0);
      expect(engine.zoneAngleDeg({ nearEdgeMm: near, farEdgeMm: more, widthMm: far })).toBe(180);
    }));
  });

  it("the stand-off grows with radius and margin, falls with range, and stays below 90", () => {
    check(fc.property(tenths(10, 80), tenths(1, 4), tenths(0, 4), (rangeMm, radiusMm, marginMm) => {
      const angle = engine.standOffDeg({ rangeMm, radiusMm, marginMm });
      expect(angle).toBeGreaterThan(0);
      expect(angle).toBeLessThan(90);
      expect(engine.standOffDeg({ rangeMm, radiusMm, marginMm: marginMm + 0.1 })).toBeGreaterThan(angle);
      expect(engine.standOffDeg({ rangeMm: rangeMm + 1, radiusMm, marginMm })).toBeLessThan(angle);
    }));
  });

  it("stitches leave no gap above the greatest, one fewer would, and margins that meet leave one", () => {
    check(fc.property(tenths(5, 50), tenths(0, 8), tenths(2, 8), (tearMm, endMarginMm, greatestSpacingMm) => {
      const count = engine.stitchCount({ tearMm, endMarginMm, greatestSpacingMm });
      const between = Math.round(tearMm * 10 - 2 * endMarginMm * 10);
      const spacing = Math.round(greatestSpacingMm * 10);
      if (between <= 0) expect(count).toBe(1);
      else {
        expect(between).toBeLessThanOrEqual(spacing * (count - 1));
        expect(between).toBeGreaterThan(spacing * (count - 2));
      }
    }));
  });
});

describe("picture and fluid", () => {
  it("the width seen grows in step with distance", () => {
    check(fc.property(tenths(1, 50), tenths(20, 170), tenths(1, 9), (distanceMm, fieldDeg, times) => {
      const width = engine.fieldWidthMm({ distanceMm, fieldDeg });
      expect(engine.fieldWidthMm({ distanceMm: distanceMm * times, fieldDeg }) / width).toBeCloseTo(times, 9);
      expect(engine.fieldWidthMm({ distanceMm, fieldDeg: fieldDeg + 1 })).toBeGreaterThan(width);
    }));
  });

  it("a liquid narrows the field, by more than its index alone, and index 1 changes nothing", () => {
    check(fc.property(tenths(10, 170), real(1.01, 1.6), (fieldInAirDeg, refractiveIndex) => {
      const inLiquid = engine.fieldInLiquidDeg({ fieldInAirDeg, refractiveIndex });
      expect(inLiquid).toBeLessThan(fieldInAirDeg / refractiveIndex);
      expect(engine.fieldInLiquidDeg({ fieldInAirDeg, refractiveIndex: 1 })).toBeCloseTo(fieldInAirDeg, 6);
      expect(engine.fieldInLiquidDeg({ fieldInAirDeg, refractiveIndex: refractiveIndex + 0.1 })).toBeLessThan(inLiquid);
    }));
  });

  it("turning a straight-ahead scope adds nothing; tilt adds to the cone and opens the blind one late", () => {
    check(fc.property(tenths(0, 70), tenths(20, 140), (viewDeg, fieldDeg) => {
      expect(engine.sweptConeDeg({ viewDeg: 0, fieldDeg })).toEqual({ totalDeg: fieldDeg, blindDeg: 0 });
      const { totalDeg, blindDeg } = engine.sweptConeDeg({ viewDeg, fieldDeg });
      expect(totalDeg).toBeCloseTo(2 * viewDeg + fieldDeg, 9);
      expect(blindDeg > 0).toBe(2 * viewDeg > fieldDeg);
    }));
  });

  const scope = fc.record({
    scopeMm: tenths(1, 4),
    boreMm: tenths(5, 6),
    lengthMm: tenths(50, 200),
    dropMmHg: real(0.0001, 0.001),
    viscosityMPaS: real(0.6, 3),
    densityKgPerM3: real(990, 1010),
    eccentricity: real(0, 1),
  });

  it("flow goes in step with the drop, against length and viscosity, and never falls off centre", () => {
    check(fc.property(scope, (given) => {
      const flow = (change: Partial<typeof given>) => engine.annularFlow({ ...given, ...change }).flowMlPerMin ?? Number.NaN;
      const now = flow({});
      fc.pre(Number.isFinite(now));
      expect(flow({ dropMmHg: given.dropMmHg / 2 }) / now).toBeCloseTo(0.5, 9);
      expect(flow({ lengthMm: given.lengthMm * 2 }) / now).toBeCloseTo(0.5, 9);
      expect(flow({ viscosityMPaS: given.viscosityMPaS * 2 }) / now).toBeCloseTo(0.5, 9);
      expect(now).toBeGreaterThanOrEqual(flow({ eccentricity: 0 }));
      expect(flow({ scopeMm: given.scopeMm + 0.5, eccentricity: 0 })).toBeLessThan(flow({ eccentricity: 0 }));
    }));
  });

  it("a scope thin as a hair leaves nearly the flow of the open tube, a vanishing gap nearly the thin-gap law", () => {
    const open = { scopeMm: 0, boreMm: 2, lengthMm: 500, dropMmHg: 0.001, viscosityMPaS: 1, densityKgPerM3: 1000, eccentricity: 0 };
    const poiseuille = (change: Partial<typeof open>) => engine.annularFlow({ ...open, ...change }).flowMlPerMin ?? Number.NaN;
    expect(poiseuille({ scopeMm: Number.MIN_VALUE }) / poiseuille({})).toBeGreaterThan(0.998);
    expect(poiseuille({ eccentricity: 1 })).toBe(poiseuille({}));
    // Slot law, Munson and others, chapter 6: Q = π D h³ Δp ÷ (12 μ L), with the mean diameter and the radial gap.
    for (const gapMm of [0.1, 0.001, 0.00001]) {
      const slot = (Math.PI * (2 - gapMm) * gapMm ** 3 * 0.001 * 133.322387415 * 0.06) / (12 * 0.001 * 0.5) / 1000;
      expect(poiseuille({ scopeMm: 2 - 2 * gapMm }) / slot).toBeCloseTo(1, gapMm > 0.01 ? 2 : 6);
    }
  });

  it("flow is null exactly where a refusal is named, and laminar is a Reynolds number of at most 2000", () => {
    check(fc.property(tenths(1, 4), tenths(1, 20), real(0.01, 150), (scopeMm, gap, dropMmHg) => {
      const given = { scopeMm, boreMm: scopeMm + gap / 10, lengthMm: 100, dropMmHg, viscosityMPaS: 1.015, densityKgPerM3: 1004.6, eccentricity: 0 };
      const { flowMlPerMin, refused, laminar, reynolds } = engine.annularFlow(given);
      expect(flowMlPerMin === null).toBe(refused !== undefined);
      expect(laminar).toBe(reynolds <= 2000);
      expect(refused === "reynolds").toBe(!laminar);
    }));
  });

  it("a column's pressure goes in step with height and density", () => {
    check(fc.property(tenths(1, 200), real(900, 1100), (heightCm, densityKgPerM3) => {
      const pressure = engine.headPressureMmHg({ heightCm, densityKgPerM3 });
      expect(engine.headPressureMmHg({ heightCm: 2 * heightCm, densityKgPerM3 }) / pressure).toBeCloseTo(2, 9);
      expect(engine.headPressureMmHg({ heightCm, densityKgPerM3: densityKgPerM3 / 2 }) / pressure).toBeCloseTo(0.5, 9);
    }));
  });
});

describe("theatre and evidence", () => {
  it("a dose never exceeds its cap nor the dose by weight, and meets one of them", () => {
    check(fc.property(tenths(3, 120), tenths(1, 60), tenths(10, 3000), (weightKg, mgPerKg, capMg) => {
      const dose = engine.cappedDoseMg({ weightKg, mgPerKg, capMg });
      expect(dose).toBeLessThanOrEqual(capMg);
      expect(dose).toBeLessThanOrEqual(weightKg * mgPerKg);
      expect(dose === capMg || dose === weightKg * mgPerKg).toBe(true);
    }));
  });

  it("the greatest volume carries the limit exactly, and twice the strength halves it", () => {
    check(fc.property(tenths(3, 120), tenths(1, 7), real(0.05, 2), (weightKg, limitMgPerKg, percent) => {
      const volume = engine.mostVolumeMl({ weightKg, limitMgPerKg, percent });
      expect((volume * percent * 1000) / 100 / weightKg).toBeCloseTo(limitMgPerKg, 9);
      expect(engine.mostVolumeMl({ weightKg, limitMgPerKg, percent: 2 * percent })).toBeCloseTo(volume / 2, 9);
    }));
  });

  it("the share nearer rises with distance, is a half at the mean, and mirrors about it", () => {
    check(fc.property(real(3, 20), real(0.5, 4), real(0.01, 2.9), (meanMm, sdMm, away) => {
      const nearer = (distanceMm: number) => engine.shareNearer({ distanceMm, meanMm, sdMm });
      expect(nearer(meanMm)).toBe(0.5);
      expect(nearer(meanMm + away) + nearer(meanMm - away)).toBeCloseTo(1, 12);
      expect(nearer(meanMm + away)).toBeGreaterThan(0.5);
    }));
  });

  it("predictive values lead back to the base rate, and rise and fall with it", () => {
    check(fc.property(real(0.05, 1), real(0.05, 0.99), real(0.001, 0.9), (sensitivity, specificity, baseRate) => {
      const { ppv, npv } = engine.predictiveValues({ sensitivity, specificity, baseRate });
      expect(engine.baseRateBehind({ sensitivity, specificity, ppv })).toBeCloseTo(baseRate, 9);
      const more = engine.predictiveValues({ sensitivity, specificity, baseRate: baseRate + 0.05 });
      expect(more.ppv).toBeGreaterThan(ppv);
      expect(more.npv).toBeLessThanOrEqual(npv);
    }));
  });

  it("a table turned over swaps sensitivity with specificity and the two predictive values", () => {
    const count = fc.nat(500);
    check(fc.property(count, count, count, count, (tp, fp, fn, tn) => {
      const straight = engine.twoByTwo({ tp, fp, fn, tn });
      const turned = engine.twoByTwo({ tp: tn, fp: fn, fn: fp, tn: tp });
      expect([turned.sensitivity, turned.ppv]).toEqual([straight.specificity, straight.npv]);
      expect([turned.specificity, turned.npv]).toEqual([straight.sensitivity, straight.ppv]);
    }));
  });

  it("Wilson's interval holds the share, stays in 0 to 1, mirrors, and narrows with more of the same", () => {
    check(fc.property(fc.integer({ min: 1, max: 2000 }), real(0, 1), (total, share) => {
      const events = Math.round(share * total);
      const { low, high } = engine.wilson({ events, total });
      expect(low).toBeGreaterThanOrEqual(0);
      expect(low).toBeLessThanOrEqual(events / total);
      expect(high).toBeGreaterThanOrEqual(events / total);
      expect(high).toBeLessThanOrEqual(1);
      const mirrored = engine.wilson({ events: total - events, total });
      expect(mirrored.low).toBeCloseTo(1 - high, 12);
      const more = engine.wilson({ events: 4 * events, total: 4 * total });
      expect(more.high - more.low).toBeLessThan(high - low);
    }));
  });

  it("kappa is the same for readers exchanged and at most 1", () => {
    const cell = fc.integer({ min: 1, max: 60 });
    check(fc.property(cell, cell, cell, cell, (a, b, c, d) => {
      const kappa = engine.cohenKappa([[a, b], [c, d]]);
      expect(engine.cohenKappa([[a, c], [b, d]])).toBeCloseTo(kappa, 12);
      expect(engine.cohenKappa([[d, c], [b, a]])).toBeCloseTo(kappa, 12);
      expect(kappa).toBeLessThan(1);
    }));
  });
});

describe("standing and cohort", () => {
  const model = fc.record({ known: real(0.01, 0.99), learn: real(0, 0.9), slip: real(0.01, 0.4), guess: real(0.01, 0.4), forget: real(0, 0.5) });
  const day = fc.record({ day: fc.nat(400), right: fc.boolean(), unsafe: fc.boolean() });

  it("a right answer never lowers the estimate and a wrong one never raises it", () => {
    check(fc.property(model, (given) => {
      expect(engine.knowledgeAfter(given, [true])[0]?.posterior).toBeGreaterThanOrEqual(given.known);
      expect(engine.knowledgeAfter(given, [false])[0]?.posterior).toBeLessThanOrEqual(given.known);
    }));
  });

  it("an estimate goes on where it stopped", () => {
    check(fc.property(model, fc.array(fc.boolean(), { maxLength: 8 }), fc.array(fc.boolean(), { maxLength: 8 }), (given, first, second) => {
      const whole = engine.knowledgeAfter(given, [...first, ...second]);
      const known = whole[first.length - 1]?.next ?? given.known;
      expect(whole.slice(first.length)).toEqual(engine.knowledgeAfter({ ...given, known }, second));
    }));
  });

  it("a return never lies before the last answer's day, nor more than 90 days after the latest", () => {
    check(fc.property(fc.array(day, { minLength: 1, maxLength: 20 }), (given) => {
      const answers = [...given].sort((first, second) => first.day - second.day);
      const latest = answers.at(-1)?.day ?? 0;
      const back = engine.nextReturn(answers);
      expect(back.day).toBeGreaterThanOrEqual(back.reason === "unsafe" ? latest + 1 : latest);
      expect(back.day).toBeLessThanOrEqual(latest + 90);
    }));
  });

  it("an unsafe answer brings the objective back the next day, whatever came before", () => {
    check(fc.property(fc.array(day, { maxLength: 12 }), (given) => {
      const answers = [...given].sort((first, second) => first.day - second.day);
      const today = (answers.at(-1)?.day ?? 0) + 1;
      expect(engine.nextReturn([...answers, { day: today, right: false, unsafe: true }])).toEqual({ day: today + 1, reason: "unsafe" });
    }));
  });

  it("clocks set back give no error", () => {
    check(fc.property(fc.array(day, { minLength: 1, maxLength: 20 }), (answers) => {
      const latest = Math.max(...answers.map((answer) => answer.day));
      expect(engine.nextReturn(answers).day).toBeLessThanOrEqual(latest + 90);
    }));
  });

  const matrix = fc.integer({ min: 2, max: 7 }).chain((items) =>
    fc.array(fc.array(fc.constantFrom(0, 1), { minLength: items, maxLength: items }), { minLength: 2, maxLength: 15 }));

  it("cohort figures do not mind the order of persons or items, nor the same cohort twice", () => {
    check(fc.property(matrix, (marks) => {
      const close = (value: number | null) => (value === null ? null : expect.closeTo(value, 9));
      const reliability = close(engine.kr20(marks));
      expect(engine.kr20([...marks].reverse())).toEqual(reliability);
      expect(engine.kr20(marks.map((row) => [...row].reverse()))).toEqual(reliability);
      expect(engine.kr20([...marks, ...marks])).toEqual(reliability);
      expect(engine.itemRest(marks.map((row) => [...row].reverse())).reverse()).toEqual(engine.itemRest(marks).map(close));
    }));
  });

  it("two identical items agree fully, and their reliability is 1", () => {
    check(fc.property(fc.array(fc.constantFrom(0, 1), { minLength: 2, maxLength: 15 }), (marks) => {
      fc.pre(new Set(marks).size === 2);
      const twice = marks.map((mark) => [mark, mark]);
      expect(engine.itemRest(twice)).toEqual([expect.closeTo(1, 9), expect.closeTo(1, 9)]);
      expect(engine.kr20(twice)).toBeCloseTo(1, 9);
    }));
  });
});
