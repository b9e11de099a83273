import { describe, expect, it } from "vitest";
import { answerTo, compute, draw, families, grade, slipsOf } from "../../src/bank/index.ts";
import { CATALOGUE } from "../../src/bank/catalogue.ts";
import type { SumItem } from "../../src/engine/question/item.ts";
import { VERDICTS } from "../../src/engine/question/verdict.ts";

/** Laws that every family keeps; a new family is tested by being listed. Failures are collected, one expectation a law. */
const DRAWS = Number(process.env["DRAWS"] ?? 10_000);

const items = (id: string): SumItem[] => Array.from({ length: DRAWS }, (_, seed) => draw(id, seed));

const unitOf = (item: SumItem, ask: number): number => Number(item.asks[ask]?.roundTo);

/** Values just beyond the accepted span on the unsafe side of each ask, all else right. */
const unsafeTexts = (item: SumItem): { texts: Record<string, string> }[] => {
  const right = answerTo(item);
  if (right.kind !== "sum" || "says" in right) return [];
  const texts = "texts" in right ? right.texts : { [item.asks[0]?.id ?? ""]: right.text };
  const { accepted } = grade(item, right);
  return item.asks.flatMap((ask, index) => {
    const span = accepted[ask.id];
    if (ask.safeSide === "none" || !span) return [];
    const beyond = ask.safeSide === "down" ? Number(span.to) + unitOf(item, index) : Number(span.from) - unitOf(item, index);
    return [{ texts: { ...texts, [ask.id]: beyond.toFixed(2) } }, ...(ask.safeSide === "down" ? [{ texts: { ...texts, [ask.id]: String(Number(span.to) * 10) } }] : [])];
  });
};

const asResponse = (item: SumItem, texts: Record<string, string>) =>
  item.asks.length === 1 ? ({ kind: "sum", text: Object.values(texts)[0] ?? "" } as const) : ({ kind: "sum", texts } as const);

describe.each(families.map(({ id }) => id))("%s", (id) => {
  const family = families.find((one) => one.id === id);
  const drawn = items(id);

  it("draws the same item from the same seed", () => {
    expect(drawn.filter((item, seed) => JSON.stringify(item) !== JSON.stringify(draw(id, seed))).map(({ seed }) => seed)).toEqual([]);
  });

  it("takes its own answer, typed as asked, as right", () => {
    expect(drawn.filter((item) => grade(item, answerTo(item)).verdict !== "right").map(({ seed }) => seed)).toEqual([]);
  });

  it("names every slip and never takes one as right", () => {
    const failed = drawn.flatMap((item) => slipsOf(item).filter((slip) => {
      const graded = grade(item, slip.response);
      return graded.verdict === "right" || graded.slip !== slip.id;
    }).map((slip) => `${item.seed} ${slip.id}`));
    expect(failed).toEqual([]);
    expect(drawn.filter((item) => slipsOf(item).length < 2)).toEqual([]);
  });

  it("calls the unsafe side unsafe, also for a power of ten", () => {
    const failed = drawn.flatMap((item) => unsafeTexts(item).filter(({ texts }) => (grade(item, asResponse(item, texts)).verdict === "unsafe-side") !== family?.unsafe).map(() => item.seed));
    expect(failed).toEqual([]);
  });

  it("answers a value with the unsafe side where none is right, and none where a value is right with the safe side", () => {
    const failed = drawn.filter((item) => {
      const isNone = "says" in answerTo(item);
      const texts = Object.fromEntries(item.asks.map((ask) => [ask.id, "5"]));
      const wrong = isNone ? grade(item, asResponse(item, texts)).verdict : grade(item, { kind: "sum", says: "none" }).verdict;
      return wrong !== (isNone && family?.unsafe ? "unsafe-side" : "safe-side");
    });
    expect(failed.map(({ seed }) => seed)).toEqual([]);
  });

  it("prints givens on their grid and inside the stated range", () => {
    const failed = drawn.flatMap((item) => item.givens.filter(({ key, text }) => {
      const spec = family?.givens.find((given) => given.key === key);
      const value = Number(text);
      if (!spec || !Number.isFinite(value) || value < spec.least || value > spec.greatest) return true;
      const steps = value / spec.step;
      return Math.abs(steps - Math.round(steps)) > 1e-9;
    }).map(({ key, text }) => `${item.seed} ${key} ${text}`));
    expect(failed).toEqual([]);
  });

  it("computes a finite answer from the displayed givens", () => {
    const failed = drawn.filter((item) => {
      const solution = compute(id, Object.fromEntries(item.givens.map(({ key, text }) => [key, Number(text)])));
      return typeof solution["says"] !== "string" && !Object.values(solution).every((value) => Number.isFinite(value) && Number(value) > 0);
    });
    expect(failed.map(({ seed }) => seed)).toEqual([]);
  });

  it("uses only the listed verdicts, and labels every given", () => {
    expect(drawn.filter((item) => !VERDICTS.includes(grade(item, { kind: "sum", text: "1", ...{} }).verdict))).toEqual([]);
    expect(drawn.filter((item) => item.givens.some(({ label, key }) => label === "" || label === key)).map(({ seed }) => seed)).toEqual([]);
  });

  it("has at least three wordings and a sentence for every slip", () => {
    const declared = CATALOGUE.flat().find((one) => one.id === id);
    expect(declared?.words.en.stems.length).toBeGreaterThanOrEqual(3);
    expect(Object.keys(declared?.words.en.slips ?? {}).sort()).toEqual(declared?.slips.map((slip) => slip.id).sort());
  });
});
