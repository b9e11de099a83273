import { describe, expect, it } from "vitest";
import { cappedDoseMg, cuffWidthCm, gs1CheckDigit, mostVolumeMl } from "../../src/engine/index.ts";

describe("cuff, dose and volume", () => {
  it("the cuff is wider than half the limb's diameter", () => {
    // AST Guidelines, Safe use of pneumatic tourniquets; BOAST, Safe use of intraoperative tourniquets, October 2021. Girth by a polygon of many sides.
    const diameterCm = 12;
    let girthCm = 0;
    for (let side = 0; side < 100_000; side += 1) girthCm += diameterCm * Math.sin(Math.PI / 100_000);
    expect(cuffWidthCm({ girthCm })).toBeCloseTo(diameterCm / 2, 8);
  });

  it("the dose stops at the adult dose", () => {
    // Bratzler and others 2013, Am J Health Syst Pharm 70:195–283, table 1: cefazolin 30 mg/kg for children, adult 2 g, never above the adult dose.
    const cefazolin = (weightKg: number) => cappedDoseMg({ weightKg, mgPerKg: 30, capMg: 2000 });
    expect([22, 66, 67, 82].map(cefazolin)).toEqual([660, 1980, 2000, 2000]);
  });

  it("the volume follows the printed table of strengths", () => {
    // Table of percentage by mass: 0.25 % 2.5, 0.5 % 5, 1 % 10, 2 % 20 mg/mL. So 1 kg at that many mg/kg is 1 mL.
    const rows = [[0.25, 2.5], [0.5, 5], [1, 10], [2, 20]] as const;
    for (const [percent, limitMgPerKg] of rows) {
      expect(mostVolumeMl({ weightKg: 1, limitMgPerKg, percent })).toBeCloseTo(1, 12);
    }
  });
});

describe("the GS1 check digit", () => {
  it.each([
    // Worked in a GS1 leaflet on check digits.
    ["730001100001", 7],
    // Worked on the pages of GS1 Hong Kong (GTIN-13) and GS1 India (GTIN-13).
    ["629104150021", 3],
    ["890400021003", 7],
    // GS1 General Specifications, section 7.9, SSCC; from memory.
    ["37610425002123456", 9],
    // FDA, UDI formats by issuing agency, v1.3, 2017: GTIN-14 in the sample string.
    ["5102222223333", 6],
    // ISBN as GTIN-13, ISO 2108, example of the users' manual; from memory.
    ["978030640615", 7],
  ])("of %s is %d", (text, digit) => {
    expect(gs1CheckDigit(text)).toBe(digit);
  });

  it("makes the weighted sum, read the other way, a multiple of ten", () => {
    // Second method: the whole key with its check digit, weights 1, 3, 1 … from the right, leaves no rest.
    for (let key = 1; key < 3_000_000; key += 7919) {
      const whole = `${key}${gs1CheckDigit(String(key))}`;
      let sum = 0;
      for (let place = 0; place < whole.length; place += 1) {
        sum += Number(whole[whole.length - 1 - place]) * (place % 2 === 0 ? 1 : 3);
      }
      expect(sum % 10).toBe(0);
    }
  });

  it("notices every single wrong digit", () => {
    const key = "629104150021";
    for (let place = 0; place < key.length; place += 1) {
      for (let digit = 0; digit <= 9; digit += 1) {
        const wrong = `${key.slice(0, place)}${digit}${key.slice(place + 1)}`;
        if (wrong !== key) expect(gs1CheckDigit(wrong)).not.toBe(3);
      }
    }
  });
});
