import { describe, expect, it } from "vitest";
import { tallyOf } from "../../src/islands/tally-of.ts";

describe("the tally of a sheet", () => {
  // Worked by hand: four answers were off, and only one of their questions has a safe side.
  it("says that an answer was on the safe side only where its question has one", () => {
    const off = { verdict: "safe-side", isUnsafeKind: false } as const;
    const given = [off, { verdict: "safe-side", isUnsafeKind: true }, off, { verdict: "unsafe-side", isUnsafeKind: true }, off, { verdict: "right", isUnsafeKind: true }, { verdict: "right", isUnsafeKind: false }] as const;
    expect(tallyOf(given).map(({ text, count }) => `${text} ${count}`)).toEqual(["Right 2", "Off, on the unsafe side 1", "Off 3", "Off, on the safe side 1"]);
  });

  it("is empty where nothing was answered", () => {
    expect(tallyOf([])).toEqual([]);
  });
});
