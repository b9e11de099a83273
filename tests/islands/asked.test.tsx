import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { draw, grade } from "../../src/bank/index.ts";
import { wordsOf } from "../../src/facts/words.ts";
import { Asked } from "../../src/islands/Asked.tsx";

const said = (family: string, text: string): string => {
  const item = draw(family, 1);
  return renderToStaticMarkup(<Asked item={item} words={wordsOf("en")} problems={grade(item, { kind: "sum", text }).parts} trouble="" built={null} onAnswer={() => undefined} />);
};

describe("an answer with a unit that does not fit", () => {
  it("is told the unit that is asked for", () => {
    expect(said("least-depth", "3 kg")).toContain("The question asks for mm;");
  });

  it.each(["3 kg", "3 zorks"])("is told that stitches have none: %s", (text) => {
    const html = said("how-many", text);
    expect(html).toContain("a number without a unit");
    expect(html).not.toMatch(/asks for ;|Write ,/);
  });
});
