import { describe, expect, it } from "vitest";
import { answerTo, compute, draw, explain, slipsOf } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import antibiotic from "../../content/ledger/antibiotic.json" with { type: "json" };
import localAnaesthetic from "../../content/ledger/local-anaesthetic.json" with { type: "json" };

const SEEDS = Array.from({ length: 1000 }, (_, seed) => seed + 20_000);
const items = (id: string): readonly Item[] => SEEDS.map((seed) => draw(id, seed));
const texts = (item: Item): Readonly<Record<string, string>> => Object.fromEntries(item.givens.map(({ key, text }) => [key, text]));
const value = (item: Item, start: string): number => {
  const given = item.givens.find(({ key }) => key.startsWith(start));
  if (!given) throw new Error(`${item.family} ${item.seed} has no ${start}`);
  return Number(given.text);
};
/** Whole tenths that fit, found by counting up in thousandths instead of dividing. */
const countedDown = (fits: (tenths: number) => boolean): number => {
  let tenths = 0;
  while (fits(tenths + 1)) tenths += 1;
  return tenths / 10;
};
const thousandths = (number: number): number => Math.round(number * 1000);
const answers = (item: Item): unknown => answerTo(item);

describe("doses by weight", () => {
  it("gives the worked lines of the plan: 30 mg/kg at 22 kg is 660, at 82 kg the cap of 2000 (ASHP 2013)", () => {
    expect(compute("capped-dose", { weightKg: 22, doseMgPerKg: 30, capMg: 2000 })).toEqual({ doseMg: 660 });
    expect(compute("capped-dose", { weightKg: 82, doseMgPerKg: 30, capMg: 2000 })).toEqual({ doseMg: 2000 });
    expect(compute("most-volume", { weightKg: 22, limitMgPerKg: 2, strengthHundredthsPercent: 0.25 })).toEqual({ mostMl: 17.6 });
    expect(compute("percent", { strengthHundredthsPercent: 0.25 })).toEqual({ mgPerMl: 2.5 });
  });

  it("caps by adding kilogram after kilogram, seeds 20000 to 20999", () => {
    for (const item of items("capped-dose")) {
      let mg = 0;
      for (let kg = 0; kg < value(item, "weightKg") && mg < value(item, "capMg"); kg += 1) mg += value(item, "doseMgPerKg");
      const dose = Math.min(mg, value(item, "capMg"));
      const right = item.about["weight"] === "which" ? { kind: "sum", says: "ask-locally" } : { kind: "sum", text: String(dose - (dose % 10)) };
      expect(answers(item)).toEqual(right);
    }
  });

  it("reads per cent as grams in 100 mL, seeds 20000 to 20999", () => {
    for (const item of items("percent")) {
      const mgIn100 = thousandths(value(item, "strength"));
      expect(answers(item)).toEqual({ kind: "sum", text: (mgIn100 / 100).toFixed(1) });
    }
  });

  it("counts tenths of a millilitre up to the limit, seeds 20000 to 20999", () => {
    for (const item of items("most-volume")) {
      const limit = value(item, "weightKg") * value(item, "limitMgPerKg") * 1000;
      const most = countedDown((tenths) => tenths * thousandths(value(item, "strength")) <= limit);
      expect(answers(item)).toEqual({ kind: "sum", text: most.toFixed(1) });
    }
  });

  it("shares one limit between two agents by cross-multiplying, seeds 20000 to 20999", () => {
    for (const item of items("two-agents")) {
      const weight = value(item, "weightKg");
      const { firstLimitMgPerKg, nextLimitMgPerKg } = texts(item);
      const [first, next] = ["first", "next"].map((prefix) => {
        const given = item.givens.find(({ key }) => key.startsWith(prefix) && key.endsWith("Percent"));
        return thousandths(Number(given?.text));
      }) as [number, number];
      const whole = [first, next].map((percent, index) => ({ percent, limit: weight * Number(index === 0 ? firstLimitMgPerKg : nextLimitMgPerKg) * 100 }));
      const [one, two] = whole as [(typeof whole)[number], (typeof whole)[number]];
      // used/limit + new/limit ≤ 1, in whole numbers.
      const fits = (tenths: number): boolean => value(item, "givenMl") * one.percent * two.limit * 10 + tenths * two.percent * one.limit <= one.limit * two.limit * 10;
      const left = countedDown(fits);
      expect(answers(item)).toEqual(left === 0 ? { kind: "sum", says: "none" } : { kind: "sum", text: left.toFixed(1) });
    }
  });

  it("mixes by adding up the milligrams of the finished syringe, seeds 20000 to 20999", () => {
    for (const item of items("dilute")) {
      const answer = answers(item) as { readonly text: string };
      const mg = thousandths(Number(answer.text)) * value(item, "stockMgPerMl");
      expect(mg).toBe(value(item, "wantedMgPerMl") * value(item, "madeUpToMl") * 1000);
    }
  });

  it("lowers the limit by age alone, in whole hundredths, seeds 20000 to 20999 (AAP: amides 30 per cent under six months)", () => {
    for (const item of items("infant")) {
      const tenthsOfMg = Math.round(value(item, "weightKg") * 10) * value(item, "limitMgPerKg");
      const parts = value(item, "ageMonths") < 6 ? 70 : 100;
      expect(answers(item)).toEqual({ kind: "sum", text: String(Math.floor((tenthsOfMg * parts) / 1000)) });
    }
    expect(localAnaesthetic.entries.find(({ key }) => key === "la-cut.infant")?.revisions[0]?.value).toEqual({ value: "30" });
  });

  it("runs the pump for an hour, minute by minute, seeds 20000 to 20999", () => {
    for (const item of items("units")) {
      let micrograms = 0;
      for (let minute = 0; minute < 60; minute += 1) micrograms += value(item, "weightKg") * value(item, "doseMicrograms");
      expect(answers(item)).toEqual({ kind: "sum", text: (micrograms / 1000 / value(item, "strengthMgPerMl")).toFixed(1) });
    }
  });

  it("repeats by the calendar of the language, seeds 20000 to 20999", () => {
    for (const item of items("repeat-time")) {
      const at = (clock: string | undefined): number => Date.parse(`2027-03-30T${clock ?? ""}:00Z`);
      const due = new Date(value(item, "lostMl") > value(item, "weightKg") * value(item, "lossLimit") ? at(item.about["seen"]) : at(item.about["start"]) + value(item, "intervalH") * 3_600_000);
      expect(answers(item)).toEqual({ kind: "sum", texts: { hourH: String(due.getUTCHours()), minuteMin: String(due.getUTCMinutes()) } });
    }
    expect(antibiotic.entries.find(({ key }) => key === "cefazolin-repeat.ashp")?.revisions[0]?.value).toEqual({ value: "4" });
  });
});

const thingsOf = (item: Item): readonly { readonly id: string; readonly text: string }[] => ("things" in item ? item.things : []);
const FIRST_NUMBER = /(\d+(?:\.\d+)?)\u2009(mg|g|mL|micrograms)/;

describe("unsafe orders", () => {
  it("finds the orders by reading their text against the sheet, seeds 20000 to 20999", () => {
    for (const item of items("spot-it")) {
      const weight = value(item, "weightKg");
      const faulty = thingsOf(item).filter(({ text }) => {
        if (/pump/.test(text)) return true;
        if (/adrenaline/.test(text)) return /1:1000\b/.test(text);
        const [, digits = "0", unit = ""] = FIRST_NUMBER.exec(text.replace(/0\.25 per cent, /, "")) ?? [];
        const mg = Number(digits) * ({ g: 1000, micrograms: 0.001, mL: 2.5 }[unit] ?? 1);
        const limits: Readonly<Record<string, number>> = { Cefazolin: Math.min(weight * 30, 2000), Bupivacaine: weight * 2, Paracetamol: weight * value(item, "painMgPerKg"), Fentanyl: (weight * value(item, "opioidMicrograms")) / 1000 };
        return mg > (limits[text.split(" ")[0] ?? ""] ?? 0) + 1 / 1_000_000;
      });
      expect(answers(item)).toEqual({ kind: "tray", found: faulty.map(({ id }) => id).sort() });
    }
  });

  it("finds unsafe writing by patterns, seeds 20000 to 20999; common practice, no source", () => {
    const isLength = (text: string): boolean => /\u2009(mm|cm)$/.test(text);
    const unsafe = (text: string): boolean => !isLength(text) && [/\d\.\d*0\u2009m/, /(^|\s)\.\d/, /\d ug\b/, /\blb\b/, /more than \d+$/, /, no date$/].some((pattern) => pattern.test(text));
    const hasRoute = (text: string): boolean => isLength(text) || /^Weight|intravenous|by mouth|portals and skin/.test(text);
    for (const item of items("write-it-safely")) {
      const faulty = thingsOf(item).filter(({ text }) => unsafe(text) || !hasRoute(text));
      expect(answers(item)).toEqual({ kind: "tray", found: faulty.map(({ id }) => id).sort() });
      expect(thingsOf(item).length).toBeGreaterThanOrEqual(5);
    }
  });

  it("writes its own doses safely: no naked point, no zero behind the point, no ug", () => {
    for (const id of ["capped-dose", "percent", "most-volume", "two-agents", "dilute", "infant", "units", "spot-it"]) {
      for (const item of items(id).slice(0, 100)) {
        const said = slipsOf(item).flatMap(({ response }) => explain(item, response).happened);
        const printed = [...item.stem, ...item.givens.map(({ text, unit }) => `${text}\u2009${unit}`), ...explain(item, answerTo(item)).happened, ...explain(item, answerTo(item)).working, ...said, ...thingsOf(item).map(({ text }) => text)];
        expect(printed.filter((line) => /\d\.\d*0(?!\d)\s?(\u2009|mg|mL|%)|(^|\s)\.\d|\bug\b/.test(line))).toEqual([]);
      }
    }
  });
});

describe("sheets and places", () => {
  it("follows a sheet that is in force and asks where there is none, in every one of its cases", () => {
    for (const item of items("two-sheets")) {
      const isHeld = /^Your sheet, in date/m.test(item.stem.join(" ").replace(/.*?(Your sheet)/, "$1"));
      expect((answers(item) as { readonly picks: string }).picks).toBe(isHeld ? "mine" : "ask");
    }
  });

  it("never puts an agent into the joint (chondrolysis: 37.5 and 7.1 per cent under pumps, Buchko 2015)", () => {
    const picks = items("injection-site").map((item) => (answers(item) as { readonly picks: string }).picks);
    expect([...new Set(picks)].sort()).toEqual(["ask", "portals"]);
    for (const item of items("injection-site")) {
      const isKnown = !/nobody has written down|has no date/.test(item.stem.join(" "));
      expect((answers(item) as { readonly picks: string }).picks).toBe(isKnown ? "portals" : "ask");
    }
  });
});
