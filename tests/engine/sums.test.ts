import { describe, expect, it } from "vitest";
import { drawItem } from "../../src/engine/question/draw.ts";
import { answerOf, explainItem, slipResponses } from "../../src/engine/question/explain.ts";
import type { SumFamily } from "../../src/engine/question/family.ts";
import type { Draw } from "../../src/engine/question/family-head.ts";
import { gradeItem } from "../../src/engine/question/grade.ts";
import { inverseGiven } from "../../src/engine/question/inverse.ts";
import type { SumItem } from "../../src/engine/question/item.ts";
import { markSum } from "../../src/engine/question/mark-sum.ts";
import type { Response } from "../../src/engine/question/response.ts";
import { placesOf } from "../../src/engine/quantity/places.ts";
import { sayFor } from "../../src/engine/question/say.ts";
import { typedAs } from "../../src/engine/question/solve.ts";
import { wholeOf } from "../../src/engine/question/verdict.ts";
import { DRAW, order, pair, sum } from "../support/plain-families.ts";

/** How a sum is marked, on a shelf where 7.2 mm fit, rounded down to half a millimetre, and less is safe. */

const say = (text: string, family: SumFamily = sum, draw: Draw = DRAW) => markSum(family, draw, { kind: "sum", text });
const verdicts = (texts: readonly string[], family: SumFamily = sum, draw: Draw = DRAW) => texts.map((text) => say(text, family, draw).verdict);
const drawn = (lengthMm: number, gapMm = 2): Draw => ({ ...DRAW, givens: { lengthMm, gapMm } });
const asking = (changes: Partial<SumFamily["asks"][number]>): SumFamily => ({ ...sum, asks: sum.asks.map((ask) => ({ ...ask, ...changes })) });

describe("one number", () => {
  it("is right from the rounded to the exact value", () => {
    expect(verdicts(["7", "7.0", "7.2", "7.1", "0.72 cm"])).toEqual(Array(5).fill("right"));
    expect(say("7.0")).toEqual({ accepted: { fitMm: { from: "7.0", to: "7.2" } }, verdict: "right", score: 1, parts: [{ ask: "fitMm", value: "7", verdict: "right" }] });
  });
  it("is unsafe beyond the span against the safe side only", () => {
    expect(verdicts(["7.201", "8", "72", "6.9", "-1"])).toEqual(["unsafe-side", "unsafe-side", "unsafe-side", "safe-side", "safe-side"]);
    const up = asking({ rounding: "up", safeSide: "up" });
    expect(verdicts(["7.2", "7.5", "7.19", "0.72", "7.6", "75"], up)).toEqual(["right", "right", "unsafe-side", "unsafe-side", "safe-side", "unit-or-power"]);
    expect(verdicts(["7.3", "6.9"], asking({ safeSide: "none" }))).toEqual(["safe-side", "safe-side"]);
    expect(verdicts(["7.3", "6.9"], { ...sum, unsafe: false })).toEqual(["safe-side", "safe-side"]);
  });
  it("is a power of ten away up to three, never where 0 is accepted", () => {
    const none = asking({ safeSide: "none" });
    expect(verdicts(["72", "720", "7200", "0.72", "0.072", "0.0072"], none)).toEqual(Array(6).fill("unit-or-power"));
    expect(verdicts(["72000", "0.00072", "36", "0"], none)).toEqual(["safe-side", "safe-side", "safe-side", "safe-side"]);
    expect(verdicts(["0.00072", "72000"], asking({ safeSide: "none", unit: "N" }))).toEqual(["safe-side", "safe-side"]);
    expect(verdicts(["0.6", "3"], asking({ safeSide: "none", rounding: "nearest" }), drawn(0))).toEqual(["safe-side", "safe-side"]);
  });
  it("is in another unit where reading it so gives the answer", () => {
    // 7.2 inches are 182.88 mm, 18.288 cm.
    const inches = asking({ safeSide: "none", unit: "in", roundTo: 0.1 });
    expect(verdicts(["182.88", "18.288", "0.18288", "300"], inches)).toEqual(["unit-or-power", "unit-or-power", "unit-or-power", "safe-side"]);
  });
  it("is a matter of rounding where it is rounded in another direction or ten times too coarsely", () => {
    expect(verdicts(["7.5", "8", "5", "10", "6.5"], asking({ safeSide: "none" }))).toEqual(["rounding", "rounding", "safe-side", "safe-side", "safe-side"]);
    expect(verdicts(["7.3", "8", "7", "10"], asking({ safeSide: "none", roundTo: 0.1 }), drawn(7.24))).toEqual(["rounding", "rounding", "rounding", "safe-side"]);
    expect(verdicts(["43", "40", "50", "45"], asking({ safeSide: "none", roundTo: 1 }), drawn(42.4))).toEqual(["rounding", "rounding", "rounding", "safe-side"]);
    expect(verdicts(["43", "40", "50", "0"], asking({ safeSide: "none", roundTo: 1, unit: "pieces" }), drawn(42.4))).toEqual(["rounding", "safe-side", "safe-side", "safe-side"]);
    expect(verdicts(["0", "10"], asking({ safeSide: "none", roundTo: 1 }), drawn(4.4))).toEqual(["safe-side", "rounding"]);
    expect(verdicts(["45", "50", "35", "30"], asking({ safeSide: "none", roundTo: 5 }), drawn(42.4))).toEqual(["rounding", "rounding", "safe-side", "safe-side"]);
    expect(verdicts(["7.3", "7.2", "8", "7"], asking({ safeSide: "none", roundTo: 0.01 }), drawn(7.246))).toEqual(["rounding", "rounding", "safe-side", "safe-side"]);
  });
  it("gives its reason and the piece found where it cannot be read", () => {
    expect(say("about 7")).toEqual({ accepted: { fitMm: { from: "7.0", to: "7.2" } }, verdict: "not-recognised", score: 0, reason: "not-first", parts: [{ ask: "fitMm", verdict: "not-recognised", reason: "not-first", found: "about 7" }] });
    expect(say("")).toMatchObject({ reason: "empty", parts: [{ ask: "fitMm", verdict: "not-recognised", reason: "empty" }] });
    expect("found" in (say("").parts[0] ?? {})).toBe(false);
    expect(markSum(sum, DRAW, { kind: "sum", texts: {} })).toMatchObject({ verdict: "not-recognised", reason: "part-missing" });
    expect(markSum(sum, DRAW, { kind: "order", cards: [] })).toEqual({ verdict: "not-recognised", reason: "other-kind", score: 0, parts: [] });
  });
  it("names the slip that gives it, and none that does not", () => {
    expect([say("9"), say("5"), say("9.2"), say("5.2"), say("9.3"), say("4.9"), say("6")].map(({ slip }) => slip)).toEqual(["gap-added", "gap-taken", "gap-added", "gap-taken", undefined, undefined, undefined]);
    expect("slip" in say("6")).toBe(false);
    const twice: SumFamily = { ...sum, slips: [{ id: "wide", gives: () => ({ fitMm: 9.4 }) }, { id: "narrow", gives: () => ({ fitMm: 9 }) }] };
    expect([say("9", twice).slip, say("9.2", twice).slip]).toEqual(["wide", "wide"]);
    const exact: SumFamily = { ...asking({ roundTo: 1, rounding: "nearest" }), slips: [{ id: "touches", gives: () => ({ fitMm: 9.6 }) }, { id: "typed", gives: () => ({ fitMm: 9 }) }] };
    expect([say("9.5", exact).slip, say("9", exact).slip, say("10", exact).slip]).toEqual(["touches", "typed", "touches"]);
  });
});

describe("the answers that are not a number", () => {
  const says = (word: "none" | "cannot-be-told" | "ask-locally", family: SumFamily, draw: Draw) => markSum(family, draw, { kind: "sum", says: word });
  const nothing = drawn(3, 5);
  it("are right where nothing fits, and on the safe side elsewhere", () => {
    expect(says("none", pair, nothing)).toEqual({ accepted: {}, acceptedSays: "none", verdict: "right", score: 1, parts: [] });
    expect(says("ask-locally", pair, nothing)).toEqual({ accepted: {}, acceptedSays: "none", verdict: "safe-side", score: 0, parts: [] });
    expect(says("none", sum, DRAW)).toMatchObject({ verdict: "safe-side", score: 0 });
    expect(says("none", pair, DRAW)).toMatchObject({ verdict: "safe-side", score: 0, slip: "nothing-fits" });
    expect("slip" in says("cannot-be-told", pair, DRAW)).toBe(false);
  });
  it("make every value unsafe where nothing fits", () => {
    const marked = markSum(pair, nothing, { kind: "sum", texts: { leastMm: "4", greatestMm: "4.50" } });
    expect(marked).toMatchObject({ verdict: "unsafe-side", score: 0, parts: [{ ask: "leastMm", value: "4", verdict: "unsafe-side" }, { ask: "greatestMm", value: "4.5", verdict: "unsafe-side" }] });
    expect(markSum({ ...pair, unsafe: false }, nothing, { kind: "sum", texts: { leastMm: "4", greatestMm: "4" } }).verdict).toBe("safe-side");
  });
});

describe("two numbers", () => {
  const marked = (leastMm: string, greatestMm: string, family: SumFamily = pair, draw: Draw = DRAW) => markSum(family, draw, { kind: "sum", texts: { leastMm, greatestMm } });
  it("are right together, and otherwise the first verdict of the stated order stands", () => {
    expect(marked("2", "7.2")).toMatchObject({ verdict: "right", score: 1 });
    expect(marked("2", "7.3")).toMatchObject({ verdict: "unsafe-side", score: 0.5 });
    expect(marked("2.1", "7.2")).toMatchObject({ verdict: "safe-side", score: 0.5 });
    expect(marked("2.15", "8")).toMatchObject({ verdict: "unsafe-side", score: 0 });
    expect(marked("7.2", "2")).toMatchObject({ verdict: "safe-side", slip: "swapped" });
    expect(marked("7.2", "2.05").slip).toBeUndefined();
    expect(marked("7.3", "2").slip).toBeUndefined();
  });
  it("need both parts, and no text for one alone", () => {
    expect(marked("2", "")).toMatchObject({ verdict: "not-recognised", score: 0, reason: "empty" });
    expect(markSum(pair, DRAW, { kind: "sum", texts: { leastMm: "2" } })).toMatchObject({ verdict: "not-recognised", score: 0, reason: "part-missing" });
    expect(markSum(pair, DRAW, { kind: "sum", text: "2" })).toMatchObject({ verdict: "not-recognised", score: 0, reason: "part-missing" });
  });
  it("may be called unsafe by the family itself, but not where they are right or cannot be read", () => {
    const seen: unknown[] = [];
    const strict: SumFamily = { ...pair, isUnsafe: (_, values) => seen.push(values) > 0 };
    expect(marked("2.1", "7.2", strict)).toMatchObject({ verdict: "unsafe-side", score: 0.5 });
    expect(seen).toEqual([{ leastMm: 2.1, greatestMm: 7.2 }]);
    expect([marked("2", "7.2", strict).verdict, marked("2", "", strict).verdict, marked("2.1", "7.2", { ...strict, unsafe: false }).verdict]).toEqual(["right", "not-recognised", "safe-side"]);
    expect(markSum(strict, DRAW, { kind: "sum", says: "none" }).verdict).toBe("safe-side");
    expect(seen).toHaveLength(1);
    expect(marked("2.1", "7.2", { ...pair, isUnsafe: () => false }).verdict).toBe("safe-side");
  });
  it("take a value of another unit for what it is, and nothing beyond the limit", () => {
    const head: SumFamily = { ...sum, unsafe: true, solve: () => ({ fitMm: 70.4 }), asks: [{ id: "fitMm", unit: "mmHg", roundTo: 1, rounding: "down", safeSide: "down" }] };
    // 70.4 mmHg are 9.38590 kPa (13.5951 × 9.80665 Pa a millimetre): 9.385 kPa keep the limit, 9.386 kPa, typed rounded up, pass it.
    const code = (text: string) => markSum(head, DRAW, { kind: "sum", text }).verdict;
    expect([code("9.385 kPa"), code("9385e-3 kPa"), code("9.386 kPa"), code("9.39 kPa"), code("70.4008")]).toEqual(["right", "right", "unsafe-side", "unsafe-side", "unsafe-side"]);
  });
  it("are typed as asked", () => {
    expect(typedAs(pair, { leastMm: 2, greatestMm: 7.28 })).toEqual({ kind: "sum", texts: { leastMm: "2.0", greatestMm: "7.2" } });
    expect(typedAs(sum, { fitMm: 7.2 })).toEqual({ kind: "sum", text: "7.0" });
    expect(typedAs(pair, { says: "none" })).toEqual({ kind: "sum", says: "none" });
    expect(markSum({ ...pair, solve: () => ({ says: "none" }) }, DRAW, { kind: "sum", says: "none" }).accepted).toEqual({});
    expect(markSum({ ...pair, solve: () => ({ leastMm: 2.01, greatestMm: 7.28 }) }, DRAW, { kind: "sum", texts: {} }).accepted).toEqual({ leastMm: { from: "2.01", to: "2.1" }, greatestMm: { from: "7.2", to: "7.28" } });
  });
  it("take the gravest verdict: a rounding or a unit only where nothing is plainly off", () => {
    expect([wholeOf(["safe-side", "unit-or-power", "rounding"]), wholeOf(["safe-side", "not-recognised"]), wholeOf([])]).toEqual(["safe-side", "not-recognised", "safe-side"]);
    expect([wholeOf(["rounding", "unit-or-power"]), wholeOf(["rounding"]), wholeOf(["rounding", "unsafe-side", "safe-side"])]).toEqual(["unit-or-power", "rounding", "unsafe-side"]);
  });
});

/** An item of a family for the draw of our choice. */
const itemOf = (family: SumFamily, draw: Draw = DRAW): SumItem => drawItem({ ...family, draw: () => draw }, { seed: 1 }) as SumItem;
const explained = (family: SumFamily, response: Response, draw: Draw = DRAW) => {
  const item = itemOf(family, draw);
  return explainItem(family, item, { response, verdict: gradeItem(family, item, response) });
};
const typed = (text: string): Response => ({ kind: "sum", text });
/** Slips that give numbers where the answer is that nothing fits. */
const numbered: SumFamily = { ...pair, slips: [{ id: "small", gives: () => ({ leastMm: 1, greatestMm: 2 }) }, { id: "large", gives: () => ({ leastMm: 2, greatestMm: 3 }) }], words: { en: { ...pair.words.en, asks: {} } } };

describe("what is said after a sum", () => {
  it("names what happened: right, the slip, or neither", () => {
    expect(explained(sum, typed("7"))).toMatchObject({ happened: ["all right"], working: ["working in the hall"], inverse: [], movesText: [] });
    expect("slipName" in explained(sum, typed("7"))).toBe(false);
    expect(explained(sum, typed("9"))).toMatchObject({ happened: ["because of gap-added"], slipName: "name of gap-added" });
    expect(explained(sum, typed("6"))).toMatchObject({ happened: ["not named"] });
  });
  it("says when the answer would be right: the value of the one given", () => {
    expect(explained(sum, typed("6")).inverse).toEqual(["lengthMm would be 6.0\u2009mm"]);
    expect([explained(sum, typed("-6")).inverse, explained(sum, { kind: "sum", says: "none" }).inverse, explained(sum, typed("?")).inverse]).toEqual([[], [], []]);
    const { inverseOf: _, ...fixed } = sum;
    expect(explained(fixed, typed("6")).inverse).toEqual([]);
    const turning: SumFamily = { ...fixed, words: { en: { ...sum.words.en, turns: () => ["turns"], moves: () => ["moves"] } } };
    expect(explained(turning, typed("6"))).toMatchObject({ inverse: ["turns"], movesText: ["moves"] });
    expect(explained({ ...turning, inverseOf: "lengthMm" }, typed("6")).inverse).toEqual(["lengthMm would be 6.0\u2009mm"]);
    const both: Response = { kind: "sum", texts: { leastMm: "3", greatestMm: "6" } };
    expect([explained({ ...pair, inverseOf: "lengthMm" }, both).inverse, explained({ ...pair, inverseOf: "gapMm" }, both).inverse]).toEqual([[], ["gapMm would be 3.0\u2009mm"]]);
  });
  it("says what one unit more of each given does", () => {
    const doubled: SumFamily = { ...sum, solve: ({ lengthMm = 0, gapMm = 0 }) => ({ fitMm: 2 * lengthMm - gapMm }) };
    expect(explained(doubled, typed("1"), drawn(7.2, 4)).moves).toEqual([
      { key: "lengthMm", label: "Length", unit: "mm", by: "+1.0\u2009mm", changes: { fitMm: "+2.0\u2009mm" } }, { key: "gapMm", label: "Gap in the hall", unit: "mm", by: "+1.0\u2009mm", changes: { fitMm: "−1.0\u2009mm" } },
    ]);
    const slight: SumFamily = { ...sum, solve: ({ lengthMm = 0, gapMm = 0 }) => ({ fitMm: lengthMm - gapMm / 50 }) };
    const fine: SumFamily = { ...slight, asks: sum.asks.map((ask) => ({ ...ask, roundTo: 0.01 })) };
    expect([sum, slight, fine].map((family) => explained(family, typed("1")).moves[1]?.changes)).toEqual(["0", "0", "−0.02"].map((text) => ({ fitMm: `${text}\u2009mm` })));
    const changes = (family: SumFamily, says: "none" | "ask-locally", draw: Draw) => explained(family, { kind: "sum", says }, draw).moves.map((move) => move.changes);
    expect(changes(pair, "none", drawn(3, 2.5))).toEqual([{ leastMm: "0\u2009mm", greatestMm: "+1.0\u2009mm" }, {}]);
    expect(changes(numbered, "ask-locally", drawn(3, 3.5))).toEqual([{}, {}]);
    const other = drawItem(order, { seed: 1 });
    expect(explainItem(order, other, { response: typed("1"), verdict: gradeItem(order, other, typed("1")) })).toMatchObject({ moves: [], inverse: [] });
  });
  it("takes one unit where the range has room for it, a step of the grid where it has not, and less at the end of the range", () => {
    const by = (lengthMm: number, grid: Partial<SumFamily["givens"][number]> = {}) => explained({ ...sum, givens: sum.givens.map((one) => ({ ...one, ...grid })) }, typed("1"), drawn(lengthMm)).moves[0]?.by;
    expect([by(98), by(98.1), by(99)]).toEqual(["+1.0\u2009mm", "−1.0\u2009mm", "−1.0\u2009mm"]);
    expect([by(7.2, { least: 7, greatest: 9 }), by(7.2, { least: 7, greatest: 8.9 }), by(10, { step: 5 })]).toEqual(["+1.0\u2009mm", "+0.1\u2009mm", "+5\u2009mm"]);
  });
  it("writes a dose without a trailing zero", () => {
    const dose: SumFamily = { ...sum, asks: [{ id: "fitMm", unit: "mg", roundTo: 0.1, rounding: "nearest", safeSide: "down" }] };
    const beside = (lengthMm: number) => explained(dose, typed("1"), drawn(lengthMm)).compare[0];
    expect([beside(20), beside(7.5)]).toMatchObject([{ answer: "20\u2009mg", accepted: "19.95 to 20.05\u2009mg" }, { answer: "7.5\u2009mg" }]);
    expect(explained({ ...dose, asks: [{ id: "fitMm", unit: "mg", roundTo: 0.5, rounding: "down", safeSide: "down" }] }, typed("1"), drawn(20.3)).compare[0]).toMatchObject({ answer: "20.3\u2009mg", accepted: "20 to 20.3\u2009mg" });
    expect(explained({ ...dose, asks: [{ id: "fitMm", unit: "mg", roundTo: 10, rounding: "down", safeSide: "down" }] }, typed("1"), drawn(30, 20)).compare[0]).toMatchObject({ answer: "30\u2009mg", accepted: "30\u2009mg" });
  });
  it("sets the answer beside yours", () => {
    expect(explained(sum, typed("9.50")).compare).toEqual([{ ask: "fitMm", label: "Fit", yours: "9.5\u2009mm", answer: "7.2\u2009mm", accepted: "7.0 to 7.2\u2009mm" }]);
    expect(explained(sum, { kind: "sum", says: "none" }, drawn(7.5)).compare).toEqual([{ ask: "fitMm", label: "Fit", answer: "7.5\u2009mm", accepted: "7.5\u2009mm" }]);
    const third: SumFamily = { ...sum, solve: ({ lengthMm = 0 }) => ({ fitMm: lengthMm / 3 }) };
    expect(explained(third, typed("1"), drawn(7.3)).compare[0]).toMatchObject({ answer: "2.0\u2009mm", accepted: "2.0 to 2.43\u2009mm" });
    expect(explained(numbered, { kind: "sum", says: "ask-locally" }, drawn(3, 5)).compare).toEqual([{ ask: "leastMm", label: "leastMm", answer: "none fits", accepted: "none fits" }, { ask: "greatestMm", label: "greatestMm", answer: "none fits", accepted: "none fits" }]);
    const broken: SumFamily = { ...pair, solve: ({ lengthMm = 0, gapMm = 0 }) => ({ leastMm: gapMm / 3, greatestMm: lengthMm / 7 }) };
    expect(explained(broken, { kind: "sum", says: "none" }).compare.map(({ answer }) => answer)).toEqual(["0.7\u2009mm", "1.0\u2009mm"]);
  });
  it("gives the right response and those of the slips", () => {
    const item = itemOf(sum);
    expect(answerOf(sum, item)).toEqual({ kind: "sum", text: "7.0" });
    expect(slipResponses(sum, item)).toEqual([{ id: "gap-added", response: { kind: "sum", text: "9.0" } }, { id: "gap-taken", response: { kind: "sum", text: "5.0" } }]);
  });
});

describe("grading", () => {
  const graded = (response: Response) => gradeItem(sum, itemOf(sum), response);
  it("adds working, sources and cautions, and C10 on the unsafe side", () => {
    expect(graded(typed("6"))).toEqual({ verdict: "safe-side", score: 0, parts: [{ ask: "fitMm", value: "6", verdict: "safe-side" }], accepted: { fitMm: { from: "7.0", to: "7.2" } }, working: ["working in the hall"], cautions: ["C1"], sources: [{ source: "s", entry: "e@1" }] });
    expect(graded(typed("9"))).toMatchObject({ verdict: "unsafe-side", slip: "gap-added", cautions: ["C1", "C10"] });
    expect(graded({ kind: "tray", found: [] })).toMatchObject({ verdict: "not-recognised", accepted: {} });
  });
  it("takes the first slip that gives the very response, and none for a right one or one that cannot be read", () => {
    const family: SumFamily = { ...sum, slips: [{ id: "near", gives: () => ({ fitMm: 9.3 }) }, { id: "same", gives: () => ({ fitMm: 7.2 }) }] };
    const item = itemOf(sum);
    expect(gradeItem(family, item, typed("9.0")).slip).toBe("near");
    expect(["slip" in gradeItem(family, item, typed("7.0")), "slip" in gradeItem(family, item, typed("?"))]).toEqual([false, false]);
    const swapped = drawItem(order, { seed: 1 });
    expect(gradeItem(order, swapped, { kind: "order", cards: ["a", "c", "b"] }).slip).toBe("c-first");
  });
});

describe("solving for a given", () => {
  const target = (value: number) => ({ key: "lengthMm", ask: "fitMm", value });
  it("finds the value above 0 that gives the answer, also on a curve", () => {
    expect(inverseGiven(sum, DRAW, target(6))).toBeCloseTo(6, 9);
    const square: SumFamily = { ...sum, solve: ({ lengthMm = 0 }) => ({ fitMm: lengthMm * lengthMm }) };
    expect(inverseGiven(square, DRAW, target(49))).toBeCloseTo(7, 6);
    expect(inverseGiven(square, DRAW, target(2))).toBeCloseTo(Math.SQRT2, 6);
  });
  it("finds none at 0 or below, none on a level, none where the answer is no number", () => {
    expect([inverseGiven(sum, DRAW, target(0)), inverseGiven(sum, DRAW, target(-3)), inverseGiven(sum, DRAW, { ...target(9), key: "gapMm" })]).toEqual([null, null, null]);
    expect(inverseGiven({ ...sum, solve: () => ({ says: "none" }) }, DRAW, target(3))).toBeNull();
    const refusing = (error: Error): SumFamily => ({ ...sum, solve: () => { throw error; } });
    expect(inverseGiven(refusing(new RangeError("outside")), DRAW, target(3))).toBeNull();
    expect(() => inverseGiven(refusing(new TypeError("a fault of ours")), DRAW, target(3))).toThrow(TypeError);
    expect(inverseGiven({ ...sum, solve: ({ lengthMm = 0 }) => ({ fitMm: lengthMm * lengthMm + 1 }) }, DRAW, target(0))).toBeNull();
  });
});

describe("printing a draw", () => {
  const printer = sayFor(sum.givens, DRAW, { fitMm: 7.2 });
  it("uses the digits of each grid", () => {
    expect([printer.of("lengthMm"), printer.bare("gapMm"), printer.number(1.25, 2), printer.number(1.26), printer.about("room"), printer.value("gapMm"), printer.answer]).toEqual(["7.2\u2009mm", "2.0", "1.25", "1.3", "hall", 2, { fitMm: 7.2 }]);
    expect([placesOf(1), placesOf(0.5), placesOf(0.25), placesOf(10)]).toEqual([0, 1, 2, 0]);
  });
  it("prints each given in its own unit", () => {
    const mixed = sayFor([{ key: "lengthMm", unit: "mm", least: 0, greatest: 9, step: 1 }, { key: "gapMm", unit: "deg", least: 0, greatest: 9, step: 0.01 }], DRAW, {});
    expect([mixed.of("lengthMm"), mixed.of("gapMm")]).toEqual(["7\u2009mm", "2.00°"]);
  });
  it("refuses a key that the draw does not hold", () => {
    for (const work of [() => printer.of("x"), () => printer.value("x"), () => printer.about("x")]) expect(work).toThrow(new RangeError("key must be one that the draw holds, got x"));
  });
});

describe("drawing", () => {
  it("prints the head of an item from the family and the draw", () => {
    const item = itemOf(sum, { ...DRAW, origins: { lengthMm: { from: "study", entry: "e@1" }, gapMm: { from: "local" } } });
    expect(item.givens).toEqual([{ key: "lengthMm", label: "Length", unit: "mm", text: "7.2", from: "study", entry: "e@1" }, { key: "gapMm", label: "Gap in the hall", unit: "mm", text: "2.0", from: "local" }]);
    expect(itemOf(sum).givens.map(({ from }) => from)).toEqual(["case", "case"]);
    expect(item).toMatchObject({ kind: "sum", family: "plain-sum", code: "0a", module: "M00", version: 1, seed: "1", language: "en", unsafe: true, title: "Shelf", question: "What fits?", asks: [{ id: "fitMm", label: "Fit", unit: "mm", roundTo: "0.5", rounding: "down", safeSide: "down" }] });
    expect(itemOf({ ...sum, words: { en: { ...sum.words.en, givens: {} } } }).givens.map(({ label }) => label)).toEqual(["lengthMm", "gapMm"]);
    const { gapMm: _, ...rest } = DRAW.givens;
    const lone: SumFamily = { ...sum, slips: [{ id: "x", gives: () => ({ fitMm: 1 }) }, { id: "y", gives: () => ({ fitMm: 2 }) }] };
    expect(itemOf(lone, { ...DRAW, givens: { lengthMm: 7.2, ...rest } }).givens.map(({ key }) => key)).toEqual(["lengthMm"]);
  });
  it("uses every wording", () => {
    const stems = new Set(Array.from({ length: 60 }, (_, seed) => (drawItem(sum, { seed }) as SumItem).stem[0]));
    expect([...stems].sort()).toEqual(["first hall", "second hall", "third hall"]);
  });
  it("draws again where slips coincide or too few apply, at most 64 times", () => {
    const tries = (fits: (turn: number) => boolean): number => {
      let turn = 0;
      const next = (): Draw => {
        turn += 1;
        return drawn(fits(turn) ? 7.2 : 9);
      };
      drawItem({ ...sum, draw: next, slips: [{ id: "a", gives: ({ givens }) => ({ fitMm: givens["lengthMm"] === 9 ? 9 : 8 }) }, { id: "b", gives: () => ({ fitMm: 5 }) }] }, { seed: 1 });
      return turn;
    };
    expect([tries(() => true), tries((turn) => turn === 3), tries((turn) => turn === 65)]).toEqual([1, 3, 65]);
    expect(() => tries(() => false)).toThrow(new RangeError("seed must give slips that differ within 64 redraws of plain-sum, got 1"));
    expect(() => tries((turn) => turn === 66)).toThrow(RangeError);
    expect(() => itemOf({ ...sum, slips: sum.slips.slice(1) })).toThrow(RangeError);
    expect(itemOf({ ...sum, slips: sum.slips.slice(0, 2) }).kind).toBe("sum");
  });
  it("speaks only the languages that it knows", () => {
    expect(() => drawItem(sum, { seed: 1, language: "xx" })).toThrow(new RangeError("language must be one of en, got xx"));
  });
});
