import { describe, expect, it } from "vitest";
import { goesOn, wordings } from "../../src/islands/search-words.ts";

describe("a typed word", () => {
  it("is taken for the beginning of the words that go on from it, and not for a longer word than they are", () => {
    expect([goesOn("popl", ["Popliteus,"]), goesOn("stop", ["(stop-depth)"]), goesOn("depth", ["stop-depth"])]).toEqual([true, true, true]);
    // What the index brings for words that stand nowhere: pages that share a few letters in front.
    expect([goesOn("zzqknee", ["Z."]), goesOn("meniscoblarg", ["Meniscal"]), goesOn("menicus", ["Men"]), goesOn("kneee", ["knee"]), goesOn("any", [])]).toEqual([false, false, false, false, false]);
  });

  it("is asked under the other names that the glossary has", () => {
    expect(wordings("how wide is the tourniquet", [["cuff", "tourniquet"]])).toEqual(["wide tourniquet", "wide cuff"]);
  });
});
