import { describe, expect, it } from "vitest";
import { answerTo, compute, draw, explain, families, grade, slipsOf } from "../../src/bank/index.ts";
import { CATALOGUE } from "../../src/bank/catalogue.ts";
import type { Item, SumItem } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";
import { VERDICTS } from "../../src/engine/question/verdict.ts";

/** Laws that every family keeps; a new family is tested by being listed. Failures are collected, one expectation a law. */
const HELD_DRAWS = 10_000;
const DRAFT_DRAWS = 1_000;
/** Held families are drawn in full; drafts less often here, and in full by `npm run laws`. */
const drawsFor = (version: number): number => Number(process.env["DRAWS"] ?? (version > 0 ? HELD_DRAWS : DRAFT_DRAWS));
/** How many draws the costly laws look at. */
const FEW = 200;

/** A share of the families, so that several files can walk through the bank side by side. */
export const lawsFor = (part: number, parts: number): void => {
  describe.each(families.filter((_, index) => index % parts === part).map(({ id }) => id))("%s", keepsTheLaws);
};

/** What a sentence looks like where a value was missing. */
const HOLE = /undefined|NaN|\[object|\$\{|Infinity/;

const isSum = (item: Item): item is SumItem => item.kind === "sum";

/** Values just beyond the accepted span on the unsafe side of each ask, all else right. */
const unsafeResponses = (item: SumItem, right: Response): readonly Response[] => {
  if (right.kind !== "sum" || "says" in right) return [];
  const texts: Record<string, string> = "texts" in right ? right.texts : { [item.asks[0]?.id ?? ""]: right.text };
  const { accepted } = grade(item, right);
  const typed = (id: string, text: string): Response =>
    item.asks.length === 1 ? { kind: "sum", text } : { kind: "sum", texts: { ...texts, [id]: text } };
  return item.asks.flatMap((ask) => {
    const span = accepted[ask.id];
    if (ask.safeSide === "none" || !span) return [];
    const step = Number(ask.roundTo);
    const beyond = ask.safeSide === "down" ? Number(span.to) + step : Number(span.from) - step;
    return [typed(ask.id, beyond.toFixed(3)), ...(ask.safeSide === "down" ? [typed(ask.id, String(Number(span.to) * 10))] : [])];
  });
};

const isOnGrid = (text: string, step: number): boolean => {
  const steps = Number(text) / step;
  return Math.abs(steps - Math.round(steps)) < 1e-6;
};

const keepsTheLaws = (id: string): void => {
  const family = families.find((one) => one.id === id);
  const declared = CATALOGUE.flat().find((one) => one.id === id);
  if (!family || !declared) throw new Error(`${id} is not listed`);
  const draws = drawsFor(family.version);
  const few = Math.min(FEW, draws);
  const items = Array.from({ length: draws }, (_, seed) => draw(id, seed));
  const right = items.map(answerTo);
  const seedsWhere = (fails: (item: Item, index: number) => boolean): readonly string[] => items.filter(fails).map(({ seed }) => seed);

  it("draws the same item from the same seed", () => {
    expect(seedsWhere((item, seed) => seed % 7 === 0 && JSON.stringify(item) !== JSON.stringify(draw(id, seed)))).toEqual([]);
  });

  it("takes its own answer, typed as asked, as right", () => {
    const failed = seedsWhere((item, index) => {
      const { verdict, score } = grade(item, right[index] as Response);
      return verdict !== "right" || score !== 1;
    });
    expect(failed).toEqual([]);
  });

  it("names every slip, never takes one as right, and scores it below 1", () => {
    const used = new Set<string>();
    const failed = seedsWhere((item) => {
      const slips = slipsOf(item);
      return slips.length < 2 || slips.some((slip) => {
        used.add(slip.id);
        const graded = grade(item, slip.response);
        return graded.verdict === "right" || graded.slip !== slip.id || !(graded.score >= 0 && graded.score < 1) || (slip.unsafe && !family.unsafe);
      });
    });
    expect(failed).toEqual([]);
    // A slip that no draw ever offers is dead.
    expect(declared.slips.map((slip) => slip.id).filter((slip) => draws >= 2000 && !used.has(slip))).toEqual([]);
  });

  it("calls the unsafe side unsafe, also for a power of ten", () => {
    const failed = seedsWhere((item, index) => isSum(item) && unsafeResponses(item, right[index] as Response).some((response) => (grade(item, response).verdict === "unsafe-side") !== family.unsafe));
    expect(failed).toEqual([]);
  });

  it("answers a value with the unsafe side where none is right, and none where a value is right with the safe side", () => {
    const failed = seedsWhere((item, index) => {
      if (!isSum(item)) return false;
      const isNone = "says" in (right[index] as object);
      const texts = Object.fromEntries(item.asks.map((ask) => [ask.id, "5"]));
      const value: Response = item.asks.length === 1 ? { kind: "sum", text: "5" } : { kind: "sum", texts };
      const { verdict } = grade(item, isNone ? value : { kind: "sum", says: "none" });
      return verdict !== (isNone && family.unsafe ? "unsafe-side" : "safe-side");
    });
    expect(failed).toEqual([]);
  });

  it("prints givens on their grid and inside the stated range, each with a label", () => {
    const failed = seedsWhere((item) => item.givens.some(({ key, text, label }) => {
      const spec = family.givens.find((given) => given.key === key);
      const value = Number(text);
      return !spec || !Number.isFinite(value) || value < spec.least || value > spec.greatest || !isOnGrid(text, spec.step) || label === "" || label === key;
    }));
    expect(failed).toEqual([]);
  });

  it("computes a finite answer from the displayed givens", () => {
    const failed = seedsWhere((item) => {
      if (!isSum(item) || declared.kind !== "sum") return false;
      const givens = Object.fromEntries(item.givens.map(({ key, text }) => [key, Number(text)]));
      const solution = declared.solve(givens, item.about);
      return typeof solution["says"] !== "string" && !Object.values(solution).every((value) => Number.isFinite(value));
    });
    expect(failed).toEqual([]);
    if (declared.kind === "sum") expect(() => compute(id, {})).toThrow(/^givens must hold/);
  });

  it("uses only the listed verdicts, whatever is sent", () => {
    const strange: readonly Response[] = [{ kind: "sum", text: "1" }, { kind: "order", cards: [] }, { kind: "tray", found: ["?"] }, { kind: "name", picks: {} }, { kind: "judge", picks: "", reasons: [] }, { kind: "count", byClass: {} }, { kind: "range", from: "", to: "x" }, { kind: "mark", points: {} }, { kind: "line", angleDeg: "?", depthMm: "" }, { kind: "chain", steps: [] }];
    const failed = seedsWhere((item, seed) => seed < few && strange.some((response) => !VERDICTS.includes(grade(item, response).verdict)));
    expect(failed).toEqual([]);
    expect(seedsWhere((item, seed) => seed < few && strange.some((response) => response.kind !== item.kind && grade(item, response).verdict !== "not-recognised"))).toEqual([]);
  });

  it("explains its answer, every slip and a stray value, with three full panels and no hole", () => {
    const failed = seedsWhere((item, seed) => {
      if (seed >= few) return false;
      const responses = [right[seed] as Response, ...slipsOf(item).map(({ response }) => response), { kind: "sum", says: "ask-locally" } as const, { kind: "sum", text: "3.7" } as const];
      return responses.filter(({ kind }) => kind === item.kind).some((response) => {
        const text = explain(item, response);
        return text.happened.length === 0 || text.working.length === 0 || HOLE.test(JSON.stringify(text));
      });
    });
    expect(failed).toEqual([]);
  });

  it("has at least three wordings, a sentence for every slip, and no hole in any sentence", () => {
    const words = declared.words.en;
    expect(words.stems.length).toBeGreaterThanOrEqual(3);
    expect(Object.keys(words.slips).sort()).toEqual(declared.slips.map((slip) => slip.id).sort());
    expect(seedsWhere((item, seed) => seed < 500 && HOLE.test(JSON.stringify(item)))).toEqual([]);
  });
};
