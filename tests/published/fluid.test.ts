import { describe, expect, it } from "vitest";
import { annularFlow, headPressureMmHg } from "../../src/engine/index.ts";

/** Density of pure water, in kg/m³: Tanaka and others 2001, Recommended table for the density of water, Metrologia 38:301–9, 10.1088/0026-1394/38/4/3 (constants from memory). */
const waterDensity = (celsius: number): number =>
  999.97495 * (1 - ((celsius - 3.983035) ** 2 * (celsius + 301.797)) / (522_528.9 * (celsius + 69.34881)));

describe("pressure of a column", () => {
  it("of one centimetre of conventional water is 0.735559 mmHg", () => {
    // NIST Special Publication 811, appendix B: centimetre of water, conventional, 98.0665 Pa; millimetre of mercury 133.3224 Pa.
    expect(headPressureMmHg({ heightCm: 1, densityKgPerM3: 1000 })).toBeCloseTo(98.0665 / 133.3224, 6);
  });

  it("of a millimetre of mercury, 13 595.1 kg/m³, is 1 mmHg", () => {
    // BIPM, SI Brochure, 8th edition, table 8: the conventional density of mercury.
    expect(headPressureMmHg({ heightCm: 0.1, densityKgPerM3: 13_595.1 })).toBeCloseTo(1, 9);
  });

  it("of a metre of water follows the published density of water", () => {
    // Densities printed in the same table: 999.975 at 4 °C, 998.207 at 20 °C, 993.33 at 37 °C (from memory).
    const printed = [[4, 999.975], [20, 998.207], [37, 993.33]] as const;
    for (const [celsius, densityKgPerM3] of printed) {
      expect(waterDensity(celsius)).toBeCloseTo(densityKgPerM3, 2);
      const byConventionalWater = (100 * (densityKgPerM3 / 1000) * 98.0665) / 133.3224;
      expect(headPressureMmHg({ heightCm: 100, densityKgPerM3: waterDensity(celsius) })).toBeCloseTo(byConventionalWater, 2);
    }
  });

  it("of a foot of saline is about 22 mmHg", () => {
    // "22 mmHg per foot": common practice, no source. Density of 0.9 % saline 1004.6 kg/m³ at 20 °C, from Rogers and Pitzer 1982, J Phys Chem Ref Data 11:15.
    expect(headPressureMmHg({ heightCm: 30.48, densityKgPerM3: 1004.6 })).toBeCloseTo(22.5, 1);
  });
});

/** A gap so long and slow that no limit is near; outer diameter 2 mm. */
const slow = (ratio: number) => ({
  scopeMm: 2 * ratio,
  boreMm: 2,
  lengthMm: 1000,
  dropMmHg: 0.01,
  viscosityMPaS: 1.002,
  densityKgPerM3: 998.2,
  eccentricity: 0,
});

/** Darcy friction factor times Reynolds number, 2 Δp Dh² ÷ (μ L V), from what the function returns. */
const frictionConstant = (ratio: number): number => {
  const gap = slow(ratio);
  const { flowMlPerMin } = annularFlow(gap);
  const areaMm2 = (Math.PI / 4) * (gap.boreMm ** 2 - gap.scopeMm ** 2);
  const speedMPerS = (flowMlPerMin ?? Number.NaN) / 60 / areaMm2;
  const hydraulicM = (gap.boreMm - gap.scopeMm) / 1000;
  return (2 * gap.dropMmHg * 133.322387415 * hydraulicM ** 2) / ((gap.viscosityMPaS / 1000) * (gap.lengthMm / 1000) * speedMPerS);
};

describe("laminar flow through a concentric annulus", () => {
  // White, Fluid Mechanics, table 6.3: laminar friction factors for a concentric annulus, f Re over inner ÷ outer radius.
  it.each([
    [0, 64.0],
    [0.00001, 70.09],
    [0.0001, 71.78],
    [0.001, 74.68],
    [0.01, 80.11],
    [0.05, 86.27],
    [0.1, 89.37],
    [0.2, 92.35],
    [0.4, 94.71],
    [0.6, 95.59],
    [0.8, 95.92],
    [0.9999999, 96.0],
  ])("has White's constant at a ratio of %d: %d", (ratio, printed) => {
    expect(frictionConstant(ratio)).toBeCloseTo(printed, 2);
  });

  it("is the velocity profile summed over the gap", () => {
    // Profile: Bird, Stewart, Lightfoot, Transport Phenomena, section 2.4; summed by Simpson's rule.
    for (const ratio of [0.1, 0.5, 2.3 / 2.7, 0.95]) {
      const gap = slow(ratio);
      const steps = 2000;
      const profile = (r: number) => 1 - r * r + ((1 - ratio * ratio) * Math.log(r)) / Math.log(1 / ratio);
      let sum = 0;
      for (let step = 0; step <= steps; step += 1) {
        const r = ratio + ((1 - ratio) * step) / steps;
        const inner = step % 2 === 0 ? 2 : 4;
        sum += (step === 0 || step === steps ? 1 : inner) * profile(r) * r;
      }
      const integral = (sum * (1 - ratio)) / steps / 3;
      const scale = (gap.dropMmHg * 133.322387415 * 0.001 ** 4) / (4 * (gap.viscosityMPaS / 1000) * (gap.lengthMm / 1000));
      const flowMlPerMin = 2 * Math.PI * scale * integral * 6e7;
      expect((annularFlow(gap).flowMlPerMin ?? 0) / flowMlPerMin).toBeCloseTo(1, 8);
    }
  });

  it("is 2.5 times as large where the scope touches the wall", () => {
    // Tao and Donovan 1955, Through-flow in concentric and eccentric annuli, Trans ASME 77:1291; the lexicon value is 2.5.
    const concentric = annularFlow(slow(0.9)).flowMlPerMin ?? 0;
    expect((annularFlow({ ...slow(0.9), eccentricity: 1 }).flowMlPerMin ?? 0) / concentric).toBeCloseTo(2.5, 12);
    // Second method: the thin gap cut into slots whose height is h (1 + e cos θ); the flow of a slot goes with height³ (Munson and others, chapter 6).
    for (const eccentricity of [0.3, 0.7, 1]) {
      let mean = 0;
      for (let slot = 0; slot < 360; slot += 1) mean += (1 + eccentricity * Math.cos((slot * Math.PI) / 180)) ** 3 / 360;
      expect((annularFlow({ ...slow(0.9), eccentricity }).flowMlPerMin ?? 0) / concentric).toBeCloseTo(mean, 9);
    }
  });
});

describe("where the laminar formula is refused", () => {
  // An invented training scope and three wider pairs; 0.9 % saline at 20 °C; the limits are those of the public face.
  const pair = (scopeMm: number, boreMm: number) =>
    annularFlow({ scopeMm, boreMm, lengthMm: 100, dropMmHg: 60, viscosityMPaS: 1.015, densityKgPerM3: 1004.6, eccentricity: 0 });

  it("names the first limit that is passed", () => {
    expect([pair(2.3, 2.9), pair(4, 5), pair(4, 5.5), pair(0, 2.7)].map(({ refused }) => refused)).toEqual([
      "end-losses",
      "entrance-length",
      "reynolds",
      "reynolds",
    ]);
    expect(pair(4, 5.5)).toMatchObject({ flowMlPerMin: null, laminar: false });
    expect(pair(4, 5)).toMatchObject({ flowMlPerMin: null, laminar: true });
  });

  it("answers where all three are kept", () => {
    expect(pair(2.3, 2.7).flowMlPerMin).toBeCloseTo(24.77, 2);
    expect(pair(4, 4.5).flowMlPerMin).toBeCloseTo(82.23, 2);
    expect(pair(2.3, 2.7)).not.toHaveProperty("refused");
  });
});
