import { describe, expect, it } from "vitest";
import { clockAfter } from "../../src/engine/theatre/clock-after.ts";
import { clockMinutes } from "../../src/engine/theatre/clock-minutes.ts";
import { cuffPeriods } from "../../src/engine/theatre/cuff-periods.ts";
import { cuffSettingMmHg } from "../../src/engine/theatre/cuff-setting-mm-hg.ts";
import { dilutionMl } from "../../src/engine/theatre/dilution-ml.ts";
import { infusionMlPerHour } from "../../src/engine/theatre/infusion-ml-per-hour.ts";
import { minutesLeft } from "../../src/engine/theatre/minutes-left.ts";
import { mostVolumeMl } from "../../src/engine/theatre/most-volume-ml.ts";
import { occlusionEstimateMmHg } from "../../src/engine/theatre/occlusion-estimate-mm-hg.ts";
import { percentToMgPerMl } from "../../src/engine/theatre/percent-to-mg-per-ml.ts";
import { repeatTime } from "../../src/engine/theatre/repeat-time.ts";
import { sharedLimit } from "../../src/engine/theatre/shared-limit.ts";
import { volumeForDoseMl } from "../../src/engine/theatre/volume-for-dose-ml.ts";
import { type Calculator, examplesOf, placesOf } from "../support/legal-calls.ts";

const CALCULATORS: readonly Calculator[] = [
  { file: "theatre/clock-minutes", run: clockMinutes, legal: [{ from: "08:00", to: "09:15" }] },
  { file: "theatre/clock-after", run: clockAfter, legal: [{ from: "08:00", afterMin: 75 }] },
  { file: "theatre/minutes-left", run: minutesLeft, legal: [{ upAt: "08:00", nowAt: "08:40", limitMin: 90 }] },
  { file: "theatre/cuff-periods", run: cuffPeriods, legal: [[{ upAt: "08:00", downAt: "08:40" }], { restMin: 10 }] },
  { file: "theatre/cuff-setting-mm-hg", run: cuffSettingMmHg, legal: [{ occlusionMmHg: 124, bands: [{ fromMmHg: 0, marginMmHg: 50 }] }] },
  { file: "theatre/occlusion-estimate-mm-hg", run: occlusionEstimateMmHg, legal: [{ systolicMmHg: 95, tissueCoefficient: 0.85 }] },
  { file: "theatre/percent-to-mg-per-ml", run: percentToMgPerMl, legal: [{ percent: 0.5 }] },
  {
    file: "theatre/shared-limit",
    run: sharedLimit,
    legal: [{ weightKg: 20, given: [{ volumeMl: 6, percent: 1, limitMgPerKg: 4 }], next: { percent: 0.25, limitMgPerKg: 2 } }],
  },
  { file: "theatre/dilution-ml", run: dilutionMl, legal: [{ stockMgPerMl: 5, wantedMgPerMl: 1, madeUpToMl: 10 }] },
  { file: "theatre/infusion-ml-per-hour", run: infusionMlPerHour, legal: [{ weightKg: 20, microgramPerKgPerMin: 5, mgPerMl: 2 }] },
  { file: "theatre/volume-for-dose-ml", run: volumeForDoseMl, legal: [{ doseMg: 44, mgPerMl: 2.5 }] },
  {
    file: "theatre/repeat-time",
    run: repeatTime,
    legal: [{ startAt: "08:00", intervalMin: 240, bloodLoss: { seenAt: "10:00", lostMl: 500, limitMl: 400 } }],
  },
];

const clockOf = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;

describe("the clock", () => {
  it("agrees with the calendar of the language, over midnight and over a whole day", () => {
    // Second method: Date in UTC, ECMA-262.
    for (let start = 0; start < 1440; start += 97) {
      for (const afterMin of [0, 1, 59, 60, 719, 1439, 1440, 2881]) {
        const at = new Date(Date.UTC(2027, 2, 30, 0, start + afterMin));
        const daysLater = (Date.UTC(at.getUTCFullYear(), at.getUTCMonth(), at.getUTCDate()) - Date.UTC(2027, 2, 30)) / 86_400_000;
        expect(clockAfter({ from: clockOf(start), afterMin })).toEqual({ clock: at.toISOString().slice(11, 16), daysLater });
      }
    }
  });

  it("counts back what was counted forward", () => {
    for (let start = 0; start < 1440; start += 61) {
      for (const afterMin of [0, 1, 61, 720, 1439]) {
        const to = clockAfter({ from: clockOf(start), afterMin }).clock;
        expect(clockMinutes({ from: clockOf(start), to })).toBe(afterMin);
        expect((clockMinutes({ from: to, to: clockOf(start) }) + afterMin) % 1440).toBe(0);
      }
    }
  });

  it.each(["24:00", "8:00", "12:60", "12.30", "12:30 ", "", "1230", "-1:00"])("does not know a time %j", (from) => {
    expect(() => clockMinutes({ from, to: "08:00" })).toThrow(new RangeError(`from must be a time from 00:00 to 23:59, got ${from}`));
  });
});

describe("time under the cuff", () => {
  it("of the published review ends two hours after inflation", () => {
    // Wilson and Oloff 2021, review of foot and ankle tourniquets, part 3: at most 120 min, then at least 10 min without pressure (adults).
    expect(minutesLeft({ upAt: "22:40", nowAt: "00:30", limitMin: 120 })).toEqual({ usedMin: 110, leftMin: 10, limitAt: "00:40" });
    const first = { upAt: "08:00", downAt: "10:00" };
    expect(cuffPeriods([first, { upAt: "10:10", downAt: "10:40" }], { restMin: 10 })).toEqual({ totalMin: 150, runningMin: 30 });
    expect(cuffPeriods([first, { upAt: "10:09", downAt: "10:40" }], { restMin: 10 })).toEqual({ totalMin: 151, runningMin: 151 });
  });

  it("falls below 0 past the limit, by a minute each minute", () => {
    const left = (minute: number) => minutesLeft({ upAt: "23:30", nowAt: clockOf((1410 + minute) % 1440), limitMin: 75 }).leftMin;
    for (let minute = 0; minute < 200; minute += 1) expect(left(minute)).toBe(75 - minute);
  });

  it("is the sum of the periods where no rest is long enough, and the last one where all are", () => {
    const periods = [{ upAt: "23:00", downAt: "23:50" }, { upAt: "00:00", downAt: "00:20" }, { upAt: "00:30", downAt: "01:10" }];
    expect(cuffPeriods(periods, { restMin: 11 })).toEqual({ totalMin: 110, runningMin: 110 });
    expect(cuffPeriods(periods, { restMin: 10 })).toEqual({ totalMin: 110, runningMin: 40 });
    expect(() => cuffPeriods([], { restMin: 10 })).toThrow("periods must hold at least one inflation, got 0");
  });
});

describe("the cuff pressure", () => {
  // AST guidelines, Safe use of pneumatic tourniquets: adults 40 below 130 mmHg, 60 from 131 to 190, 80 above 190; children 50.
  const adult = [{ fromMmHg: 0, marginMmHg: 40 }, { fromMmHg: 131, marginMmHg: 60 }, { fromMmHg: 191, marginMmHg: 80 }];
  const child = [{ fromMmHg: 0, marginMmHg: 50 }];

  it.each([[110, 150], [129, 169], [131, 191], [190, 250], [191, 271], [210, 290]])("at %d mmHg is %d by the bands for adults", (occlusionMmHg, setting) => {
    expect(cuffSettingMmHg({ occlusionMmHg, bands: adult })).toBe(setting);
  });

  it.each([90, 130, 131, 190, 250])("at %d mmHg is fifty more for a child", (occlusionMmHg) => {
    expect(cuffSettingMmHg({ occlusionMmHg, bands: child })).toBe(occlusionMmHg + 50);
  });

  it("never falls as the measured pressure rises, where the margins rise", () => {
    for (let occlusionMmHg = 61; occlusionMmHg < 260; occlusionMmHg += 1) {
      expect(cuffSettingMmHg({ occlusionMmHg, bands: adult })).toBeGreaterThan(cuffSettingMmHg({ occlusionMmHg: occlusionMmHg - 1, bands: adult }));
    }
  });

  it("refuses bands that do not start at 0 or do not rise", () => {
    const setting = (...from: number[]) => () => cuffSettingMmHg({ occlusionMmHg: 120, bands: from.map((fromMmHg) => ({ fromMmHg, marginMmHg: 50 })) });
    expect(setting()).toThrow("bands must hold at least one band, got 0");
    expect(setting(10)).toThrow("bands[0].fromMmHg must be 0, got 10");
    expect(setting(0, 130, 130)).toThrow("bands[2].fromMmHg must be greater than 130, got 130");
  });

  it("is estimated from the systolic pressure as published, and needs more where tissue takes more", () => {
    // Tuncali and others 2006, 10.1213/01.ane.0000209018.00998.24: (systolic + 10) / coefficient. At 1 nothing is lost on the way.
    expect(occlusionEstimateMmHg({ systolicMmHg: 100, tissueCoefficient: 1 })).toBe(110);
    for (let hundredths = 50; hundredths < 100; hundredths += 1) {
      const estimate = occlusionEstimateMmHg({ systolicMmHg: 100, tissueCoefficient: hundredths / 100 });
      expect(estimate * (hundredths / 100) - 10).toBeCloseTo(100, 9);
      expect(estimate).toBeGreaterThan(occlusionEstimateMmHg({ systolicMmHg: 100, tissueCoefficient: (hundredths + 1) / 100 }));
    }
  });
});

describe("strength, dose and volume", () => {
  it.each([[0.25, 2.5], [0.5, 5], [1, 10], [2, 20]])("%d per cent is %d mg/mL in the printed table", (percent, printed) => {
    // Teaching table of percentage by mass in volume.
    expect(percentToMgPerMl({ percent })).toBe(printed);
  });

  it("the volume of the whole dose is the greatest volume", () => {
    for (const percent of [0.1, 0.25, 0.5, 1, 2]) {
      const whole = volumeForDoseMl({ doseMg: 22 * 2, mgPerMl: percentToMgPerMl({ percent }) });
      expect(whole).toBeCloseTo(mostVolumeMl({ weightKg: 22, limitMgPerKg: 2, percent }), 12);
    }
  });

  it("two agents fill the limit together", () => {
    // Common practice, no source: shares of the limits add up to 1. Second method: the pair (a, b) solved as a straight line between the two limits.
    const [lidocaine, bupivacaine] = [{ percent: 1, limitMgPerKg: 4 }, { percent: 0.25, limitMgPerKg: 2 }];
    const [mostOfFirst, mostOfSecond] = [lidocaine, bupivacaine].map((agent) => mostVolumeMl({ weightKg: 25, ...agent }));
    for (let volumeMl = 0; volumeMl <= 12; volumeMl += 0.5) {
      const { usedShare, leftMl } = sharedLimit({ weightKg: 25, given: [{ ...lidocaine, volumeMl }], next: bupivacaine });
      const onLine = (mostOfSecond ?? 0) - ((mostOfSecond ?? 0) / (mostOfFirst ?? 1)) * volumeMl;
      expect(leftMl).toBeCloseTo(Math.max(0, onLine), 10);
      expect(usedShare).toBeCloseTo(volumeMl / (mostOfFirst ?? 1), 12);
    }
  });

  it("the order of what was given does not matter, and one agent in two parts is one agent", () => {
    const next = { percent: 0.25, limitMgPerKg: 2 };
    const first = { volumeMl: 3, percent: 1, limitMgPerKg: 4 };
    const second = { volumeMl: 2, percent: 0.2, limitMgPerKg: 3 };
    const left = (...given: (typeof first)[]) => sharedLimit({ weightKg: 20, given, next }).leftMl;
    expect(left(first, second)).toBeCloseTo(left(second, first), 12);
    expect(left({ ...first, volumeMl: 1 }, { ...first, volumeMl: 2 })).toBeCloseTo(left(first), 12);
    expect(left()).toBe(16);
    expect(left({ ...first, volumeMl: 40 })).toBe(0);
  });

  it("a dilution keeps the mass and the volume", () => {
    for (const wantedMgPerMl of [0.5, 1, 2.5, 4, 5]) {
      const { stockMl, diluentMl } = dilutionMl({ stockMgPerMl: 5, wantedMgPerMl, madeUpToMl: 20 });
      expect(stockMl + diluentMl).toBeCloseTo(20, 12);
      expect(stockMl * 5).toBeCloseTo(20 * wantedMgPerMl, 12);
    }
    // 1:1000 is 1 mg/mL, 1:200 000 is 5 micrograms per mL (teaching page on admixtures): 0.1 mL made up to 20 mL.
    expect(dilutionMl({ stockMgPerMl: 1, wantedMgPerMl: 0.005, madeUpToMl: 20 }).stockMl).toBeCloseTo(0.1, 12);
    expect(() => dilutionMl({ stockMgPerMl: 1, wantedMgPerMl: 2, madeUpToMl: 5 })).toThrow("wantedMgPerMl must be greater than 0 and at most 1, got 2");
  });

  it("the rule of six makes one millilitre an hour one microgram per kilogram and minute", () => {
    // Paediatric rule of six: 6 mg per kg made up to 100 mL (common practice, teaching pages).
    for (const weightKg of [3, 12, 26.5, 50]) {
      for (const dose of [1, 5, 20]) {
        expect(infusionMlPerHour({ weightKg, microgramPerKgPerMin: dose, mgPerMl: (6 * weightKg) / 100 })).toBeCloseTo(dose, 10);
      }
    }
    // Worked on a teaching page: 70 kg, 5 micrograms, 400 mg in 250 mL, 13.1 mL/h.
    expect(infusionMlPerHour({ weightKg: 70, microgramPerKgPerMin: 5, mgPerMl: 400 / 250 }).toFixed(1)).toBe("13.1");
  });
});

describe("the second dose", () => {
  // Bratzler and others 2013, Am J Health Syst Pharm 70:195–283: cefazolin again after 4 h. Loss above 20 mL/kg: one hospital's sheet; above 25 mL/kg: another's.
  const dose = (lostMl: number, seenAt: string, perKg: number) =>
    repeatTime({ startAt: "08:20", intervalMin: 240, bloodLoss: { seenAt, lostMl, limitMl: perKg * 26 } });

  it("is due four hours after the first, or at the loss of the sheet", () => {
    expect(repeatTime({ startAt: "08:20", intervalMin: 240, bloodLoss: null })).toEqual({ clock: "12:20", daysLater: 0, because: "interval" });
    expect(dose(560, "10:05", 20)).toEqual({ clock: "10:05", daysLater: 0, because: "blood-loss" });
    expect(dose(560, "10:05", 25)).toEqual({ clock: "12:20", daysLater: 0, because: "interval" });
  });

  it("keeps to the interval at the limit itself and where the loss comes later", () => {
    expect(dose(520, "10:05", 20).because).toBe("interval");
    expect(dose(520.5, "10:05", 20).because).toBe("blood-loss");
    expect(dose(900, "12:20", 20).because).toBe("interval");
    expect(dose(900, "13:00", 20).clock).toBe("12:20");
  });
});

describe("every calculator of the theatre", () => {
  it.each(placesOf(CALCULATORS))("$calculator refuses what is no value for $parameter", ({ parameter, refusalOf }) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      const error = refusalOf(value);
      expect(error).toBeInstanceOf(RangeError);
      expect((error as RangeError).message).toMatch(new RegExp(`${parameter}.* must .+, got ${String(value)}$`));
    }
  });

  it.each(CALCULATORS)("$file does what its example says", (calculator) => {
    expect(() => calculator.run(...(calculator.legal as never[]))).not.toThrow();
    const examples = examplesOf(calculator);
    expect(examples).toHaveLength(1);
    for (const { got, expected } of examples) expect(got()).toEqual(expected());
  });
});
