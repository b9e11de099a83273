import { describe, expect, it } from "vitest";
import { compute, draw, explain, grade } from "../../src/bank/index.ts";
import type { SumItem } from "../../src/engine/question/item.ts";

/** An item of a family with givens of our choice: the givens are all that grading reads. */
const itemWith = (family: string, values: Record<string, string>): SumItem => {
  const item = draw(family, 1) as SumItem;
  return { ...item, about: { ...item.about, basis: "scan" }, givens: item.givens.map((given) => ({ ...given, text: values[given.key] ?? given.text })) };
};

const line = { entryToJunctionMm: "4.0", junctionToBundleMm: "5.2", freeEdgeToBundleMm: "14.4", marginMm: "2.0" };
const greatest = itemWith("greatest-depth", line);
const say = (item: SumItem, text: string) => grade(item, { kind: "sum", text });

describe("greatest depth where 7.2 mm is the limit", () => {
  it("takes 7.0 to 7.2 as right and nothing deeper", () => {
    expect(["7", "7.0", "7.1", "7.2", "7,2", "0.72 cm"].map((text) => say(greatest, text).verdict)).toEqual(Array(6).fill("right"));
    expect(say(greatest, "7.21").verdict).toBe("unsafe-side");
    expect(say(greatest, "7.8").verdict).toBe("unsafe-side");
    expect(say(greatest, "72").verdict).toBe("unsafe-side");
    expect(say(greatest, "6.5").verdict).toBe("safe-side");
    expect(say(greatest, "0.72").verdict).toBe("unit-or-power");
  });

  it("names the width counted twice, exact or rounded as asked", () => {
    expect(say(greatest, "16.4")).toMatchObject({ verdict: "unsafe-side", slip: "width-twice" });
    expect(say(greatest, "16").slip).toBe("width-twice");
    expect(say(greatest, "16.4").cautions).toContain("C10");
    expect(explain(greatest, { kind: "sum", text: "16.4" }).inverse.join(" ")).toContain("14.4");
  });
});

describe("one number, many spellings", () => {
  const width = itemWith("path-width", { freeEdgeToBundleMm: "18.4", junctionToBundleMm: "2.0" });
  it("reads 16.4 however it is typed", () => {
    const same = ["16.4", "16,4", "16.4 mm", "1.64 cm", " 16.4", "16.4mm", "+16.4", "1.64e1", "16.40"];
    expect(same.map((text) => say(width, text).verdict)).toEqual(same.map(() => "right"));
  });
  it("gives each unreadable text its own reason and never throws", () => {
    const reasons = { "": "empty", "   ": "empty", abc: "no-number", "1,640": "two-readings", "16.4 kg": "foreign-unit", "16.4 zorps": "unknown-unit", "7 or 8": "two-numbers", "7-8": "two-numbers", "1/2": "fraction", "0x10": "no-number", Infinity: "no-number", ["9".repeat(400)]: "too-long" };
    for (const [text, reason] of Object.entries(reasons)) expect([text, say(width, text).reason]).toEqual([text, reason]);
    expect(say(width, "164").verdict).toBe("unit-or-power");
    expect(say(width, "−16.4").verdict).toBe("safe-side");
    expect(grade(width, { kind: "judge", picks: "x", reasons: [] }).reason).toBe("other-kind");
  });
});

describe("the window", () => {
  it("is one depth wherever need and room just touch, in every grid case", () => {
    const failed: string[] = [];
    for (let entry = 20; entry <= 100; entry += 1) {
      for (let junction = 40; junction <= 84; junction += 1) {
        for (let margin = 10; margin <= 30; margin += 5) {
          if (junction - margin < 1) continue;
          const window = compute("window", { entryToJunctionMm: entry / 10, junctionToBundleMm: junction / 10, marginMm: margin / 10, throughCapsuleMm: (junction - margin) / 10 });
          if (window["says"] !== undefined || window["leastMm" as never] !== window["greatestMm" as never]) failed.push(`${entry} ${junction} ${margin}`);
        }
      }
    }
    expect(failed).toEqual([]);
  });
  it("is none where the need is larger than the room, and any value is then unsafe", () => {
    const item = itemWith("window", { ...line, throughCapsuleMm: "8.0" });
    expect(compute("window", { entryToJunctionMm: 4, junctionToBundleMm: 5.2, marginMm: 2, throughCapsuleMm: 8 })).toEqual({ says: "none" });
    expect(grade(item, { kind: "sum", says: "none" }).verdict).toBe("right");
    expect(grade(item, { kind: "sum", says: "ask-locally" }).verdict).toBe("safe-side");
    expect(grade(item, { kind: "sum", texts: { leastMm: "12", greatestMm: "7.2" } })).toMatchObject({ verdict: "unsafe-side", slip: "written-backwards" });
    expect(grade(item, { kind: "sum", texts: { leastMm: "12" } })).toMatchObject({ verdict: "not-recognised", reason: "part-missing" });
  });
});
