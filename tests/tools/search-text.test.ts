import { describe, expect, it } from "vitest";
import { searchText } from "../../src/tools/search-text.ts";

const textOf = (html: string): string => searchText(html).replace(/<[^>]*>/g, "");

describe("a page as search reads it", () => {
  it("has a gap wherever one part ends and the next begins", () => {
    expect(textOf("<dl><dt>stop</dt><dd>The setting.</dd><dd>Also: collar.</dd></dl>")).toBe("stop The setting. Also: collar. ");
    expect(textOf('<td>M01</td><td>The growing knee</td>')).toBe("M01 The growing knee");
    expect(textOf("<a><span>M07</span><b>Fluid</b></a><span>31</span>")).toBe("M07 Fluid  31");
  });

  it("keeps words, formulas and places where a text goes on as they were", () => {
    for (const html of ["<p>mm<sup>2</sup>, and <b>so</b>, on.</p>", "<math><mi>p</mi><mn>2</mn></math>", "<p>(<a>here</a>)</p>"]) expect(searchText(html)).toBe(html);
  });
});
