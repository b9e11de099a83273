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

describe("a count that cannot be read", () => {
  it.each(["minus one", "1/2", "9".repeat(400)])("is asked for as a whole number, without decimals or units: %s", (text) => {
    const item = draw("reconcile", 1);
    if (item.kind !== "count") throw new Error("reconcile is a count");
    const byClass = Object.fromEntries(item.classes.map(({ id }) => [id, text]));
    const html = renderToStaticMarkup(<Asked item={item} words={wordsOf("en")} problems={grade(item, { kind: "count", byClass }).parts} trouble="" built={null} onAnswer={() => undefined} />);
    expect(html).toContain("Write a whole number, such as −1, 0 or 2.");
    expect(html).not.toMatch(/12\.5|of its kind will do/);
  });
});
