import { describe, expect, it } from "vitest";
import { drawItem } from "../../src/engine/question/draw.ts";
import { explainItem } from "../../src/engine/question/explain.ts";
import type { ChainFamily, JudgeFamily, SumFamily } from "../../src/engine/question/family.ts";
import type { Draw, Givens } from "../../src/engine/question/family-head.ts";
import { gradeItem } from "../../src/engine/question/grade.ts";
import type { ChainItem, SumItem } from "../../src/engine/question/item.ts";
import { judgeRules } from "../../src/engine/question/kinds/judge.ts";
import { markRules } from "../../src/engine/question/kinds/mark.ts";
import type { Response, SumResponse } from "../../src/engine/question/response.ts";
import { isTypable, slipAt } from "../../src/engine/question/solve.ts";
import { chain, DRAW, judge, mark, pair, sum } from "../support/plain-families.ts";

/** Where one sign more or less in the rules of the kinds changes what a learner is told. Expected values are worked by hand. */

const drawn = (lengthMm: number, gapMm = 2): Draw => ({ ...DRAW, givens: { lengthMm, gapMm } });
const itemOf = (family: SumFamily, draw: Draw = DRAW): SumItem => drawItem({ ...family, draw: () => draw }, { seed: 1 }) as SumItem;
const explained = (family: SumFamily, response: Response, { draw = DRAW, item = itemOf(family, draw) } = {}) =>
  explainItem(family, item, { response, verdict: gradeItem(family, item, response) });
const typed = (text: string): SumResponse => ({ kind: "sum", text });
const asking = (...asks: readonly Partial<SumFamily["asks"][number]>[]): SumFamily["asks"] =>
  asks.map((ask, index) => ({ id: `ask${index}`, unit: "mm", roundTo: 0.1, rounding: "down", safeSide: "down", ...ask }));
/** Asks one or two things, and gives what the test says. */
const giving = (values: Givens, asks: SumFamily["asks"]): SumFamily => ({ ...sum, asks, solve: () => values, slips: [{ id: "one", gives: () => Object.fromEntries(asks.map(({ id }) => [id, 1])) }, { id: "two", gives: () => Object.fromEntries(asks.map(({ id }) => [id, 2])) }] });

describe("what stands beside the answer", () => {
  it("writes each ask in its own unit and sets each typed value beside its own ask", () => {
    const family = giving({ ask0: 20, ask1: 20 }, asking({ unit: "mg" }, { unit: "mm" }));
    expect(explained(family, { kind: "sum", texts: { ask0: "7", ask1: "9" } }).compare).toMatchObject([{ yours: "7\u2009mg", answer: "20\u2009mg", accepted: "20\u2009mg" }, { yours: "9\u2009mm", answer: "20.0\u2009mm", accepted: "20.0\u2009mm" }]);
  });
  it("prints an end of the span as it is up to six characters, and one digit finer than asked beyond", () => {
    const accepted = (value: number) => explained(giving({ ask0: value }, asking({})), typed("1")).compare[0]?.accepted;
    expect([accepted(7.2345), accepted(7.23456)]).toEqual(["7.2 to 7.2345\u2009mm", "7.2 to 7.23\u2009mm"]);
  });
  it("prints no end that would not be taken: 6.956522 is cut to 6.9 where 7 is wrong, and 4.031234 raised to 4.1 where 4 is", () => {
    const accepted = (value: number, rounding: "down" | "up") => explained(giving({ ask0: value }, asking({ roundTo: 1, rounding, safeSide: "none" })), typed("1")).compare[0]?.accepted;
    expect([accepted(6.956522, "down"), accepted(4.031234, "up"), accepted(36.956522, "up")]).toEqual(["6 to 6.9\u2009mm", "4.1 to 5\u2009mm", "37\u2009mm"]);
    const nearest = explained(giving({ ask0: 1234.4 }, asking({ rounding: "nearest", safeSide: "none" })), typed("1")).compare[0];
    expect(nearest?.accepted).toBe("1234.35 to 1234.45\u2009mm");
  });
  it("prints a true minus sign at both ends, and one value where the ends meet", () => {
    const nearest = (value: number) => explained(giving({ ask0: value }, asking({ rounding: "nearest", safeSide: "none" })), typed("1")).compare[0];
    expect(nearest(-1.84)).toMatchObject({ answer: "−1.8\u2009mm", accepted: "−1.85 to −1.75\u2009mm" });
    expect(explained(giving({ ask0: -2 }, asking({})), typed("1")).compare[0]).toMatchObject({ answer: "−2.0\u2009mm", accepted: "−2.0\u2009mm" });
  });
  it("prints the exact answer with the digits of the finest given, where six decimals of it hold no more", () => {
    const coarse: SumFamily = { ...sum, givens: sum.givens.map((given) => (given.key === "gapMm" ? { ...given, step: 1 } : given)) };
    expect(explained(coarse, typed("1")).compare[0]).toMatchObject({ answer: "7.2\u2009mm" });
    const answer = (value: number) => explained(giving({ ask0: value }, asking({ roundTo: 0.5 })), typed("1")).compare[0]?.answer;
    expect([answer(7.2000004), answer(7.200004)]).toEqual(["7.2\u2009mm", "7.0\u2009mm"]);
  });
  it("repeats the answer where nothing was marked", () => {
    expect(explained(sum, { kind: "order", cards: [] }).compare).toEqual([{ ask: "fitMm", label: "Fit", answer: "7.2\u2009mm", accepted: "7.2\u2009mm" }]);
  });
  it("prints counts whole, also in what moves them, and a share as it is asked", () => {
    const count = giving({ ask0: 7 }, asking({ unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" }));
    expect(explained(count, typed("3")).compare[0]).toMatchObject({ yours: "3", answer: "7" });
    const doubled: SumFamily = { ...count, solve: ({ lengthMm = 0 }) => ({ ask0: 2 * lengthMm }) };
    expect(explained(doubled, typed("3"), { draw: drawn(6) }).moves[0]?.changes).toEqual({ ask0: "+2" });
    const whole: SumFamily = { ...doubled, asks: asking({ roundTo: 1 }) };
    expect(explained(whole, typed("3"), { draw: drawn(6) }).moves[0]?.changes).toEqual({ ask0: "+2.0\u2009mm" });
    const share = giving({ ask0: 0.2857 }, asking({ unit: "pieces", roundTo: 0.01, rounding: "nearest", safeSide: "none" }));
    expect(explained(share, typed("3")).compare[0]).toMatchObject({ answer: "0.29" });
  });
});

describe("when the answer would be right", () => {
  it("writes a given that is a dose without a trailing zero, and a length with its tenth", () => {
    const dose: SumFamily = { ...sum, givens: sum.givens.map((given) => ({ ...given, unit: "mg" as const })) };
    expect([explained(dose, typed("6")).inverse, explained(sum, typed("6")).inverse]).toEqual([["lengthMm would be 6\u2009mg"], ["lengthMm would be 6.0\u2009mm"]]);
    expect(explained(sum, typed("6.04")).inverse).toEqual(["lengthMm would be 6.0\u2009mm"]);
    const mixed: SumFamily = { ...sum, givens: sum.givens.map((given) => (given.key === "gapMm" ? { ...given, unit: "deg" as const } : given)) };
    expect([explained(mixed, typed("6")).inverse, explained({ ...mixed, inverseOf: "gapMm", solve: ({ gapMm = 0 }) => ({ fitMm: 3 * gapMm }) }, typed("9.6")).inverse]).toEqual([["lengthMm would be 6.0\u2009mm"], ["gapMm would be 3.2°"]]);
  });
  it("is silent where the page does not show the given", () => {
    const item = { ...itemOf(sum), givens: [] };
    const family: SumFamily = { ...sum, solve: ({ lengthMm = 7.2 }) => ({ fitMm: lengthMm }), slips: [], words: { en: { ...sum.words.en, working: () => ["working"] } } };
    expect(explained(family, typed("6"), { item }).inverse).toEqual([]);
  });
  it("says nothing after a right answer, and solves for the first ask that was answered", () => {
    expect(explained(sum, typed("7")).inverse).toEqual([]);
    const family: SumFamily = { ...pair, inverseOf: "gapMm" };
    expect(explained(family, { kind: "sum", texts: { leastMm: "3", greatestMm: "7.2" } }).inverse).toEqual(["gapMm would be 3.0\u2009mm"]);
  });
});

describe("a slip is named only where it shows", () => {
  it("in a judgement: by its decision where that is not the right one, else by a reason of its own that was named", () => {
    const family: JudgeFamily = { ...judge, slips: [{ id: "vain", gives: () => ({ picks: "mend", reasons: ["clean"] }) }, ...judge.slips] };
    const marked = (picks: string, ...reasons: readonly string[]) => judgeRules.mark(family, DRAW, { kind: "judge", picks, reasons });
    expect(marked("mend", "bent")).toStrictEqual({ verdict: "safe-side", score: 0.75, parts: [] });
    const half: JudgeFamily = { ...judge, slips: [{ id: "half", gives: () => ({ picks: "mend", reasons: ["bent", "clean"] }) }] };
    expect(judgeRules.mark(half, DRAW, { kind: "judge", picks: "mend", reasons: ["clean"] }).slip).toBe("half");
    expect([marked("mend", "bent", "clean").slip, marked("keep", "bent").slip, marked("throw", "bent").slip]).toEqual(["vain", "kept", "thrown"]);
  });
  it("in a figure: not at all where no slip points there", () => {
    const point = (xMm: string, yMm: string) => ({ xMm, yMm });
    const marked = (door: { xMm: string; yMm: string }) => markRules.mark(mark, DRAW, { kind: "mark", points: { lamp: point("0", "0"), door } });
    expect(marked(point("2.5", "41"))).toStrictEqual({ verdict: "safe-side", score: 0.5, parts: [] });
    expect(marked(point("1", "1"))).toStrictEqual({ verdict: "safe-side", score: 0.5, parts: [], slip: "door-left" });
    expect(markRules.mark(mark, DRAW, { kind: "mark", points: { lamp: point("8", "0"), door: point("2.5", "41") } })).toStrictEqual({ verdict: "unsafe-side", score: 0, parts: [], slip: "lamp-right" });
    const unnamed = { ...mark, critical: ["roof"] };
    expect(markRules.mark(unnamed, DRAW, { kind: "mark", points: { lamp: point("8", "0"), door: point("0", "40") } }).verdict).toBe("safe-side");
  });
});

describe("a chain whose formulas cannot take what the learner found", () => {
  const refuse = (value: number | undefined): number => {
    if (value !== undefined && value < 1) throw new RangeError("restMm must be at least 1");
    return value as number;
  };
  /** The second step, and one of its slips, refuse a rest below 1; another slip gives no number where nothing is left. */
  const family: ChainFamily = {
    ...chain,
    draw: () => DRAW,
    steps: [chain.steps[0] as ChainFamily["steps"][number], { ...(chain.steps[1] as ChainFamily["steps"][number]), solve: ({ restMm }) => ({ halfMm: refuse(restMm) / 2 }) }],
    slips: [...chain.slips.filter(({ step }) => step === "rest"), { id: "not-halved", step: "half", gives: ({ givens }) => ({ halfMm: givens["restMm"] as number }) }, { id: "never", step: "half", gives: ({ givens }) => ({ halfMm: 3 * refuse(givens["restMm"]) }) }],
  };
  const item = drawItem(family, { seed: 1 }) as ChainItem;
  const graded = (...steps: readonly SumResponse[]) => gradeItem(family, item, { kind: "chain", steps });
  const none: SumResponse = { kind: "sum", says: "none" };
  const untold: SumResponse = { kind: "sum", says: "cannot-be-told" };

  it("is graded without throwing: what no formula gives cannot be told", () => {
    expect(graded(typed("5.2"), typed("2.6")).verdict).toBe("right");
    expect([graded(none, untold).score, graded(typed("0.5"), untold).score, graded(typed("5000000000"), untold).score]).toEqual([0.5, 0.5, 0.5]);
    expect([graded(none, typed("2.6")).score, graded(typed("0.5"), typed("0.2")).score]).toEqual([0, 0]);
  });
  it("names no slip that has no value there, and says what each step would have been", () => {
    expect([graded(none, typed("2.6")).slip, graded(typed("5.2"), typed("5.2")).slip, graded(typed("5.2"), typed("15.6")).slip]).toEqual([undefined, "not-halved", "never"]);
    const beside = (...steps: readonly SumResponse[]) => explainItem(family, item, { response: { kind: "chain", steps }, verdict: graded(...steps) }).compare.map(({ answer }) => answer);
    expect([beside(typed("0.5"), typed("1")), beside(typed("9.2"), typed("1")), beside(none)]).toEqual([["5.2\u2009mm", "cannot be told"], ["5.2\u2009mm", "4.6\u2009mm"], ["5.2\u2009mm", "cannot be told"]]);
  });
  it("tells a typable answer from one that is missing, endless or too large, and passes on errors that are no refusal", () => {
    const asks = asking({}, {});
    expect([{ ask0: 1, ask1: -1e9 }, { says: "none" as const }, { ask0: 1 }, { ask0: Number.NaN, ask1: 1 }, { ask0: 1, ask1: 1e9 + 1 }].map((solution) => isTypable({ asks }, solution))).toEqual([true, true, false, false, false]);
    expect(() => slipAt({ asks }, { id: "broken", gives: () => { throw new TypeError("broken"); } }, DRAW)).toThrow("broken");
    expect(slipAt({ asks: asking({}) }, { id: "whole", gives: () => ({ ask0: 3 }) }, DRAW)).toEqual({ ask0: 3 });
  });
});
