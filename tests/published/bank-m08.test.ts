import { describe, expect, it } from "vitest";
import { notRight, one, ordersDiffer } from "../support/second-way.ts";

/** Families of module M08 that need no drawing beside a second way to their answer. */

describe("the orderly look", () => {
  it("goes round by the local sheet: from above, medial, notch, lateral, behind, record, instruments", () => {
    expect(ordersDiffer("stations", [["pouch", "patella", "medial", "notch", "lateral", "behind-lateral", "record", "instruments"], ["pouch", "gutters", "medial"], ["pouch", "trochlea", "medial"], ["lateral", "popliteus", "record"], ["notch", "behind-medial", "record"]])).toEqual([]);
  });

  it("misses the stations whose name is not read in the strip", () => {
    expect(notRight("unrecorded", (item) => {
      const strip = item.stem.join(" ").toLowerCase();
      return { kind: "tray", found: item.kind === "tray" ? item.things.filter(({ text }) => !new RegExp(`\\d ${text.toLowerCase()}`).test(strip)).map(({ id }) => id) : [] };
    })).toEqual([]);
  });

  it("leaves what a clock of seconds leaves, in whole minutes", () => {
    expect(notRight("time-budget", (_, of) => {
      let seconds = of("cuffLeftMin") * 60;
      for (let station = 0; station < of("stations"); station += 1) seconds -= of("eachS");
      return one((seconds - (seconds % 60)) / 60, 0);
    })).toEqual([]);
  });

  it("names one ruler above and below the line: 5.83 of 41.33 seen is 85.9 % unseen, 6.83 of 37.50 is 81.8 %", () => {
    const unseen = (seen: number, whole: number): number => (100 * (whole - seen)) / whole;
    expect([unseen(5.83, 41.33).toFixed(1), unseen(6.83, 37.5).toFixed(1)]).toEqual(["85.9", "81.8"]);
    expect(notRight("unseen", (item, of) => {
      const stem = item.stem.join(" ");
      if (stem.includes("a child of nine")) return { kind: "sum", says: "cannot-be-told" };
      return /(to use: scan|with the scan|ruler: scan)/.test(stem) ? one(unseen(of("seenScanMm"), of("wholeScanMm")), 3) : one(unseen(of("seenCutMm"), of("wholeCutMm")), 3);
    })).toEqual([]);
  });

  it("takes 21.5 per cent of an adult medial rim and of no other (Morin 1993)", () => {
    expect(notRight("blind-rim", (item, of) => (item.stem.join(" ").includes("medial rim of an adult") ? one(of("rimMm") * 0.215, 3) : { kind: "sum", says: "cannot-be-told" }))).toEqual([]);
  });
});
