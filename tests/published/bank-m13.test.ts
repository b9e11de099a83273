import { describe, expect, it } from "vitest";
import { answerTo, compute, draw, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { OrderResponse, Response } from "../../src/engine/question/response.ts";
import carbon from "../../content/ledger/carbon.json" with { type: "json" };
import count from "../../content/ledger/count.json" with { type: "json" };

const SEEDS = Array.from({ length: 1000 }, (_, seed) => seed + 30_000);
const items = (id: string): readonly Item[] => SEEDS.map((seed) => draw(id, seed));
const value = (item: Item, key: string): number => {
  const given = item.givens.find((one) => one.key === key);
  if (!given) throw new Error(`${item.family} ${item.seed} has no ${key}`);
  return Number(given.text);
};
const answers = (item: Item): unknown => answerTo(item);
const stem = (item: Item): string => item.stem.join(" ");
const valueOfEntry = (topic: typeof carbon, key: string): unknown => topic.entries.find((entry) => entry.key === key)?.revisions[0]?.value;

/** Numbers of a line of the sheet, read out of the printed sentence. */
const numbersIn = (text: string, pattern: RegExp): readonly number[] => {
  const match = pattern.exec(text);
  if (!match) throw new Error(`no line like ${String(pattern)} in ${text}`);
  return match.slice(1).map((piece) => Number(piece ?? "0"));
};

describe("the count", () => {
  it("lays things on and takes them away one by one, from the printed lines, seeds 30000 to 30999", () => {
    for (const item of items("reconcile")) {
      const byClass = Object.fromEntries([["swabs", "Swabs"], ["needles", "Needles"], ["blades", "Blades"], ["tips", "Instrument tips"]].map(([id = "", name = ""]) => {
        const [opening = 0, added = 0, off = 0, present = 0] = numbersIn(stem(item), new RegExp(`${name}: (\\d+) at opening, (\\d+) added, (\\d+) handed off and signed for, (\\d+) on the trolley`));
        const broken = id === "tips" ? Number(/, (\d+) of them with its end broken off/.exec(stem(item))?.[1] ?? 0) : 0;
        const there = Array.from({ length: opening + added }, (_, index) => index).slice(off);
        return [id, String(present - broken - there.length)];
      }));
      expect(answers(item)).toEqual({ kind: "count", byClass });
    }
  });

  it("never takes a match for an answer where a class is short: that is unsafe", () => {
    const zeros: Response = { kind: "count", byClass: { swabs: "0", needles: "0", blades: "0", tips: "0" } };
    for (const item of items("reconcile")) {
      const { byClass } = answerTo(item) as { readonly byClass: Readonly<Record<string, string>> };
      const isShort = Object.values(byClass).some((text) => text.startsWith("-"));
      expect(grade(item, zeros).verdict === "unsafe-side").toBe(isShort);
    }
  });

  it("opens packet after packet, seeds 30000 to 30999", () => {
    for (const item of items("needles")) {
      const packets = [...Array<number>(value(item, "pairedPacketsPieces")).fill(2), ...Array<number>(value(item, "otherPacketsPieces")).fill(value(item, "perOtherPacketPieces"))];
      expect(answers(item)).toEqual({ kind: "sum", text: String(packets.reduce((sum, needles) => sum + needles, 0)) });
    }
  });

  it("traces implants lot by lot from the printed lines, seeds 30000 to 30999", () => {
    for (const item of items("implant-trace")) {
      const lot = (name: string): string => {
        const [opened = 0, dropped = 0, unused = 0, labels = 0] = numbersIn(stem(item), new RegExp(`${name} lot, \\w+: (\\d+) opened, (\\d+) dropped, (\\d+) opened but not implanted; (\\d+) label`));
        return String(labels + dropped + unused - opened);
      };
      const sides = Number(/(\d+) of the labels ha/.exec(stem(item))?.[1] ?? 0);
      expect(answers(item)).toEqual({ kind: "count", byClass: { first: lot("First"), second: lot("Second"), third: lot("Third"), side: String(0 - sides) } });
    }
  });
});

describe("the drill and the streams", () => {
  /** Rules as a theatre says them, on the printed cards; common practice, no source. */
  const keepsTheDrill = (texts: readonly string[]): boolean => {
    const at = (pattern: RegExp): number => texts.findIndex((text) => pattern.test(text));
    const isAfter = (later: RegExp, earlier: RegExp): boolean => at(later) < 0 || at(earlier) < 0 || at(later) > at(earlier);
    return isAfter(/Closure stops/, /Tell the surgeon/) && isAfter(/recount together/, /Closure stops/) && isAfter(/Close the wound/, /recount together/) && isAfter(/Close the wound/, /image is taken/) && isAfter(/Close the wound/, /is found/) && isAfter(/Search floor/, /further pair of hands/) && isAfter(/report it/, /Close the wound/) && isAfter(/image is taken/, /Search floor/);
  };
  const cardsOf = (item: Item, cards: readonly string[]): readonly string[] => cards.map((id) => ("cards" in item ? (item.cards.find((card) => card.id === id)?.text ?? "") : ""));

  it("keeps its answer within the rules, and calls closing first unsafe, seeds 30000 to 30999", () => {
    for (const item of items("drill")) {
      const { cards } = answerTo(item) as OrderResponse;
      expect(keepsTheDrill(cardsOf(item, cards))).toBe(true);
      const closedFirst = ["close", ...cards.filter((card) => card !== "close")];
      expect(grade(item, { kind: "order", cards: closedFirst }).verdict).toBe("unsafe-side");
    }
    expect(new Set(items("drill").map(({ about }) => about["case"])).size).toBeGreaterThanOrEqual(7);
    expect(count.entries.find(({ key }) => key === "count-moments.uk")?.revisions[0]?.value).toEqual({ value: "3" });
  });

  it("sorts by the printed sheet, seeds 30000 to 30999", () => {
    const streams: readonly (readonly [RegExp, string])[] = [[/^clinical waste/, "clinical"], [/^recycling/, "recycle"], [/^the box for electronics/, "electronics"], [/^the shelf/, "keep"]];
    for (const item of items("streams")) {
      const local = (start: string): string => {
        const rest = stem(item).split(`${start} to `)[1] ?? "";
        return streams.find(([pattern]) => pattern.test(rest))?.[1] ?? "?";
      };
      const { picks } = answerTo(item) as { readonly picks: Readonly<Record<string, string>> };
      expect(picks).toMatchObject({ needle: "sharps", blade: "sharps", stylet: "sharps", battery: "electronics", label: "keep", probe: "reprocess" });
      expect(picks).toMatchObject({ wrap: local("clean paper wrap"), "saline-bag": local("emptied saline bags"), tubing: local("tubing with only saline in it"), scope: local("a used scope of the single-use kit") });
      for (const wrong of [{ scope: "reprocess" }, { needle: "clinical" }, { battery: "sharps" }, { blade: "recycle" }]) {
        expect(grade(item, { kind: "name", picks: { ...picks, ...wrong } as Record<string, string> }).verdict).toBe("unsafe-side");
      }
      expect(grade(item, { kind: "name", picks: { ...picks, label: "clinical" } }).verdict).toBe("safe-side");
    }
    expect(new Set(items("streams").map(({ about }) => ["wrap", "saline-bag", "tubing", "scope"].map((thing) => about[thing]).join())).size).toBeGreaterThanOrEqual(7);
  });

  it("finds empty and half lines by their text, seeds 30000 to 30999", () => {
    const isWhole = (text: string): boolean => !/\(empty\)|see packet|see folder|one signed$|, down$|: sent$|: \d+\u2009mL, portals$/.test(text);
    for (const item of items("record")) {
      const things = "things" in item ? item.things : [];
      expect(answers(item)).toEqual({ kind: "tray", found: things.filter(({ text }) => !isWhole(text)).map(({ id }) => id).sort() });
    }
    expect(new Set(items("record").map(({ about }) => JSON.stringify(about))).size).toBeGreaterThan(250);
  });
});

describe("cost, carbon, rarity", () => {
  it("weighs the bags in grams, seeds 30000 to 30999 (Pearson 2024: 249 and 569 kg for a tonne)", () => {
    expect([valueOfEntry(carbon, "carbon-waste.clinical"), valueOfEntry(carbon, "carbon-waste.infectious")]).toEqual([{ value: "249" }, { value: "569" }]);
    for (const item of items("mass-carbon")) {
      const grams = (Math.round(value(item, "clinicalKg") * 10) * 249 + Math.round(value(item, "infectiousKg") * 10) * 569) / 10;
      expect(answers(item)).toEqual({ kind: "sum", text: (Math.floor(grams / 10 + 0.5) / 100).toFixed(2) });
    }
  });

  it("pays case after case until the set is paid for, seeds 30000 to 30999", () => {
    for (const item of items("break-even")) {
      const perCase = value(item, "singlePieces") - value(item, "reprocessPieces") - value(item, "repairPieces");
      let open = value(item, "capitalPieces");
      let cases = 0;
      for (; open > 0 && perCase > 0; cases += 1) open -= perCase;
      expect(answers(item)).toEqual(perCase > 0 ? { kind: "sum", text: String(cases) } : { kind: "sum", says: "none" });
    }
    expect(compute("break-even", { capitalPieces: 10_000, singlePieces: 300, reprocessPieces: 200, repairPieces: 100 })).toEqual({ says: "none" });
  });

  it("waits year after year for one thing left behind, seeds 30000 to 30999 (WHO: one in 5000 to 19 000)", () => {
    expect(count.entries.find(({ key }) => key === "retained.who-range")?.revisions[0]?.value).toEqual({ from: "5000", to: "19000" });
    for (const item of items("how-rare")) {
      const nearest = (operations: number): string => {
        let years = 0;
        while ((years + 0.5) * value(item, "casesPerYearPieces") <= operations) years += 1;
        return String(years);
      };
      expect(answers(item)).toEqual({ kind: "range", from: nearest(5000), to: nearest(19_000) });
    }
  });

  it("judges a conclusion by the two printed numbers, seeds 30000 to 30999", () => {
    for (const item of items("evidence-both-ways")) {
      const [single = 0, reused = 0] = numbersIn(stem(item), /found ([\d.]+)\u2009kg of CO₂ equivalent a case for single use and ([\d.]+)\u2009kg for reuse/);
      const claim = /for that device, (single use|reuse) weighed less/.exec(stem(item))?.[1];
      const isRead = claim === (single < reused ? "single use" : "reuse");
      const aboutMeasured = isRead ? "holds-there" : "contradicts";
      expect((answers(item) as { readonly picks: string }).picks).toBe(claim === undefined ? "nothing-here" : aboutMeasured);
    }
  });
});
