import { describe, expect, it } from "vitest";
import { drawItem } from "../../src/engine/question/draw.ts";
import { explainItem } from "../../src/engine/question/explain.ts";
import type { Family } from "../../src/engine/question/family.ts";
import { gradeItem } from "../../src/engine/question/grade.ts";
import { chainRules } from "../../src/engine/question/kinds/chain.ts";
import { countRules } from "../../src/engine/question/kinds/count.ts";
import { judgeRules } from "../../src/engine/question/kinds/judge.ts";
import { lineRules } from "../../src/engine/question/kinds/line.ts";
import { markRules } from "../../src/engine/question/kinds/mark.ts";
import { nameRules } from "../../src/engine/question/kinds/name.ts";
import { orderRules } from "../../src/engine/question/kinds/order.ts";
import { rangeRules } from "../../src/engine/question/kinds/range.ts";
import { trayRules } from "../../src/engine/question/kinds/tray.ts";
import type { Response, SumResponse } from "../../src/engine/question/response.ts";
import { chain, count, DRAW, judge, line, mark, name, order, range, tray } from "../support/plain-families.ts";

/** How each kind marks a response, by families small enough to work by hand. */

const RIGHT = { verdict: "right", score: 1, parts: [] };
const OTHER = { verdict: "not-recognised", reason: "other-kind", score: 0, parts: [] };
const missing = (ask: string) => ({ verdict: "not-recognised", reason: "part-missing", score: 0, parts: [{ ask, verdict: "not-recognised", reason: "part-missing" }] });
const unreadable = (ask: string, reason: string) => ({ verdict: "not-recognised", reason, score: 0, parts: [{ ask, verdict: "not-recognised", reason }] });
const safe = (score: number, slip?: string) => ({ verdict: "safe-side", score, parts: [], ...(slip === undefined ? {} : { slip }) });
const unsafe = (score: number, slip?: string) => ({ ...safe(score, slip), verdict: "unsafe-side" });
const NUMBER: Response = { kind: "sum", text: "1" };
const close = (value: number): number => expect.closeTo(value, 9) as unknown as number;

/** What stands beside the answer on the page. */
const compared = (family: Family, response: Response) => {
  const item = drawItem(family, { seed: 1 });
  return explainItem(family, item, { response, verdict: gradeItem(family, item, response) }).compare;
};
const own = (family: Family, ...keys: readonly string[]) => {
  const item = drawItem(family, { seed: 1 }) as unknown as Record<string, unknown>;
  return Object.fromEntries(keys.map((key) => [key, item[key]]));
};

describe("counts", () => {
  const marked = (byClass: Record<string, string>, family = count) => countRules.mark(family, DRAW, { kind: "count", byClass });
  it("count every class by itself, and a shortage called whole is unsafe", () => {
    expect(marked({ nails: "-1", hooks: "2" })).toEqual(RIGHT);
    expect(marked({ nails: "−1", hooks: "2" })).toEqual(RIGHT);
    expect(marked({ nails: "0", hooks: "2" })).toEqual(unsafe(0.5, "nails-whole"));
    expect(marked({ nails: "-2", hooks: "2" })).toEqual(safe(0.5));
    expect(marked({ nails: "-1", hooks: "0" })).toEqual(safe(0.5, "hooks-whole"));
    expect(marked({ nails: "-1", hooks: "5" })).toEqual(safe(0.5));
    expect(marked({ nails: "3", hooks: "5" })).toEqual(unsafe(0));
    expect(marked({ nails: "0", hooks: "2" }, { ...count, unsafe: false })).toEqual(safe(0.5, "nails-whole"));
    expect(marked({ nails: "2", hooks: "2" }, { ...count, truth: () => ({ nails: 0, hooks: 2 }) })).toEqual(safe(0.5));
  });
  it("name the class that is open or cannot be read", () => {
    expect(marked({ hooks: "2" })).toEqual(missing("nails"));
    expect(marked({ nails: "-1", hooks: "  " })).toEqual(missing("hooks"));
    expect(marked({ nails: "-1", hooks: "two" })).toEqual(unreadable("hooks", "no-number"));
    expect([marked({ nails: "-1", hooks: "2", shelves: "1" }), countRules.mark(count, DRAW, NUMBER)]).toEqual([OTHER, OTHER]);
  });
  it("say the answer, what each slip gives and what is shown", () => {
    expect(countRules.answer(count, DRAW)).toEqual({ kind: "count", byClass: { nails: "-1", hooks: "2" } });
    expect(countRules.slips(count, DRAW)).toEqual([{ id: "nails-whole", response: { kind: "count", byClass: { nails: "0", hooks: "2" } } }, { id: "hooks-whole", response: { kind: "count", byClass: { nails: "-1", hooks: "0" } } }]);
    expect(own(count, "classes")).toEqual({ classes: [{ id: "nails", text: "Nails" }, { id: "hooks", text: "hooks" }] });
    expect(compared(count, { kind: "count", byClass: { nails: "-3" } })).toEqual([
      { ask: "nails", label: "Nails", yours: "−3", answer: "−1", accepted: "−1" }, { ask: "hooks", label: "hooks", yours: "", answer: "2", accepted: "2" },
    ]);
    expect(compared(count, NUMBER)[0]).toEqual({ ask: "nails", label: "Nails", answer: "−1", accepted: "−1" });
    expect(compared({ ...count, truth: () => ({ nails: -1 }), slips: [{ id: "x", gives: () => ({ nails: 0 }) }, { id: "y", gives: () => ({ nails: 1 }) }] }, NUMBER)[1]).toEqual({ ask: "hooks", label: "hooks", answer: "0", accepted: "0" });
  });
});

describe("judgements", () => {
  const marked = (picks: string, reasons: readonly string[], family = judge) => judgeRules.mark(family, DRAW, { kind: "judge", picks, reasons });
  it("give half for the decision and half for the reasons, and an unsafe decision stays unsafe", () => {
    expect([marked("mend", ["bent", "split"]), marked("mend", ["split", "bent"])]).toEqual([RIGHT, RIGHT]);
    expect(marked("mend", ["bent"])).toEqual(safe(0.75));
    expect(marked("mend", ["bent", "split", "clean"])).toEqual(safe(close(0.5 + 1 / 3), "kept"));
    expect(marked("mend", [])).toEqual(safe(0.5));
    expect(marked("mend", ["bent", "clean"])).toEqual(safe(close(0.5 + 1 / 6), "kept"));
    expect(marked("keep", ["bent", "split"])).toEqual(unsafe(0, "kept"));
    expect(marked("throw", ["bent", "split"])).toEqual(safe(0, "thrown"));
    expect(marked("throw", ["clean"])).toEqual(safe(0, "thrown"));
    expect(marked("keep", [], { ...judge, unsafe: false })).toEqual(safe(0, "kept"));
    const { unsafeOptions: _, ...unnamed } = judge;
    expect(marked("keep", [], unnamed)).toEqual(safe(0, "kept"));
    expect(marked("mend", ["bent"], { ...judge, unsafeOptions: () => ["mend"] })).toEqual(safe(0.75));
    expect(marked("throw", ["bent"], { ...judge, slips: [] })).toEqual(safe(0));
    const bare = { ...judge, decide: () => ({ picks: "mend", reasons: [] }) };
    expect([marked("mend", [], bare), marked("mend", ["bent"], bare)]).toEqual([RIGHT, safe(0.5, "thrown")]);
  });
  it("refuse an option or a reason that nobody offered, and want a decision", () => {
    expect(marked("", ["bent"])).toEqual(missing("picks"));
    expect([marked("sell", []), marked("mend", ["bent", "old"]), judgeRules.mark(judge, DRAW, NUMBER)]).toEqual([OTHER, OTHER, OTHER]);
  });
  it("say the answer, what each slip gives and what is shown", () => {
    expect(judgeRules.answer(judge, DRAW)).toEqual({ kind: "judge", picks: "mend", reasons: ["bent", "split"] });
    expect(judgeRules.slips(judge, DRAW)).toEqual([{ id: "kept", response: { kind: "judge", picks: "keep", reasons: ["clean"] } }, { id: "thrown", response: { kind: "judge", picks: "throw", reasons: ["bent"] } }]);
    expect(own(judge, "options", "reasons")).toEqual({
      options: [{ id: "keep", text: "Keep it" }, { id: "mend", text: "Mend it" }, { id: "throw", text: "throw" }],
      reasons: [{ id: "bent", text: "It is bent" }, { id: "split", text: "It is split" }, { id: "clean", text: "clean" }],
    });
    const answer = "Mend it · It is bent · It is split";
    expect(compared(judge, { kind: "judge", picks: "keep", reasons: ["clean", "split"] })).toEqual([{ ask: "picks", label: "judgement", yours: "Keep it · clean · It is split", answer, accepted: answer }]);
    expect(compared(judge, { kind: "judge", picks: "sell", reasons: ["old"] })).toEqual([{ ask: "picks", label: "judgement", yours: "sell · old", answer, accepted: answer }]);
    expect(compared(judge, NUMBER)).toEqual([{ ask: "picks", label: "judgement", answer, accepted: answer }]);
  });
});

describe("lines", () => {
  const marked = (angleDeg: string, depthMm: string, family = line) => lineRules.mark(family, DRAW, { kind: "line", angleDeg, depthMm });
  it("are checked by the family, in any unit of the kind", () => {
    expect([marked("30", "6.5"), marked("30°", "0.8 cm")]).toEqual([RIGHT, RIGHT]);
    expect(marked("30", "9")).toEqual(unsafe(0.5, "too-deep"));
    expect(marked("20", "6")).toEqual(safe(0.25));
    expect(marked("30", "9", { ...line, unsafe: false })).toEqual(safe(0.5, "too-deep"));
    expect([marked("steep", "6"), marked("30", "")]).toEqual([unreadable("angleDeg", "no-number"), unreadable("depthMm", "empty")]);
    expect(lineRules.mark(line, DRAW, NUMBER)).toEqual(OTHER);
  });
  it("say the answer, what each slip gives and what is shown", () => {
    expect(lineRules.answer(line, DRAW)).toEqual({ kind: "line", angleDeg: "30", depthMm: "6.5" });
    expect(lineRules.slips(line, DRAW)).toEqual([{ id: "too-deep", response: { kind: "line", angleDeg: "30", depthMm: "9" } }, { id: "turned", response: { kind: "line", angleDeg: "-30", depthMm: "6.5" } }]);
    expect(own(line, "angle", "depth")).toEqual({ angle: { least: "-60", greatest: "60", step: "5" }, depth: { least: "0", greatest: "20", step: "0.5" } });
    const answer = "30°, 6.5\u2009mm";
    expect(compared(line, { kind: "line", angleDeg: "-5", depthMm: "7" })).toEqual([{ ask: "line", label: "line", yours: "−5°, 7\u2009mm", answer, accepted: answer }]);
    expect(compared(line, NUMBER)).toEqual([{ ask: "line", label: "line", answer, accepted: answer }]);
  });
});

describe("marks", () => {
  const point = (xMm: string, yMm: string) => ({ xMm, yMm });
  const DOOR = point("0", "40");
  const marked = (points: Record<string, { xMm: string; yMm: string }>, family = mark) => markRules.mark(family, DRAW, { kind: "mark", points });
  it("take a point up to the edge of its region, of two regions the nearer, and a critical one elsewhere as unsafe", () => {
    expect([marked({ lamp: point("-5", "0"), door: DOOR }), marked({ lamp: point("3", "4"), door: point("0", "42.5") }), marked({ lamp: point("3.9", "0"), door: DOOR })]).toEqual([RIGHT, RIGHT, RIGHT]);
    expect(marked({ lamp: point("4.1", "0"), door: DOOR })).toEqual(unsafe(0.5, "lamp-right"));
    expect(marked({ lamp: point("0", "5.01"), door: DOOR })).toEqual(unsafe(0.5));
    expect(marked({ lamp: point("0", "0"), door: point("1", "1") })).toEqual(safe(0.5, "door-left"));
    expect(marked({ lamp: point("0", "0"), door: point("2.5", "41") })).toEqual(safe(0.5));
    expect(marked({ lamp: DOOR, door: point("8", "0") })).toEqual(unsafe(0));
    expect(marked({ lamp: point("8", "0"), door: DOOR }, { ...mark, unsafe: false })).toEqual(safe(0.5, "lamp-right"));
    const { critical: _, ...harmless } = mark;
    expect(marked({ lamp: point("8", "0"), door: DOOR }, harmless)).toEqual(safe(0.5, "lamp-right"));
  });
  it("name the target that is open, and refuse one that nobody asked for", () => {
    expect([marked({ lamp: point("0", "0") }), marked({ lamp: point("x", "0"), door: DOOR }), marked({ lamp: point("0", "y"), door: DOOR })]).toEqual([missing("door"), missing("lamp"), missing("lamp")]);
    expect([marked({ lamp: point("0", "0"), door: DOOR, roof: DOOR }), markRules.mark(mark, DRAW, NUMBER)]).toEqual([OTHER, OTHER]);
  });
  it("say the answer, what each slip gives and what is shown", () => {
    expect(markRules.answer(mark, DRAW)).toEqual({ kind: "mark", points: { lamp: point("0.00", "0.00"), door: point("0.00", "40.00") } });
    expect(markRules.answer({ ...mark, truth: () => ({ lamp: "r2", door: "nowhere" }) }, DRAW)).toEqual({ kind: "mark", points: { lamp: point("8.00", "0.00") } });
    expect(markRules.slips(mark, DRAW)).toEqual([
      { id: "lamp-right", response: { kind: "mark", points: { lamp: point("8.00", "0.00"), door: point("0.00", "40.00") } } }, { id: "door-left", response: { kind: "mark", points: { lamp: point("0.00", "0.00"), door: point("0.00", "0.00") } } },
    ]);
    expect(own(mark, "targets", "regions")).toEqual({
      targets: [{ id: "lamp", text: "Lamp" }, { id: "door", text: "door" }],
      regions: [{ id: "r1", ...point("0.00", "0.00") }, { id: "r2", ...point("8.00", "0.00") }, { id: "r3", ...point("0.00", "40.00") }],
    });
    expect(compared(mark, { kind: "mark", points: { lamp: point("7", "1") } })).toEqual([{ ask: "lamp", label: "Lamp", yours: "r2", answer: "r1", accepted: "r1" }, { ask: "door", label: "door", yours: "", answer: "r3", accepted: "r3" }]);
    expect(compared(mark, NUMBER)[0]).toEqual({ ask: "lamp", label: "Lamp", answer: "r1", accepted: "r1" });
  });
});

describe("names", () => {
  const marked = (picks: Record<string, string>, family = name) => nameRules.mark(family, DRAW, { kind: "name", picks });
  it("count each attribute by itself", () => {
    expect(marked({ wood: "oak", shape: "flat" })).toEqual(RIGHT);
    expect(marked({ wood: "pine", shape: "flat" })).toEqual(safe(0.5, "pine"));
    expect(marked({ wood: "oak", shape: "round" })).toEqual(unsafe(0.5, "round"));
    expect(marked({ wood: "pine", shape: "round" })).toEqual(unsafe(0, "pine"));
    expect(marked({ wood: "pine", shape: "flat" }, { ...name, slips: [] })).toEqual(safe(0.5));
    expect(marked({ wood: "oak", shape: "round" }, { ...name, unsafe: false })).toEqual(safe(0.5, "round"));
    const { isUnsafe: _, ...harmless } = name;
    expect(marked({ wood: "oak", shape: "round" }, harmless)).toEqual(safe(0.5, "round"));
  });
  it("name the attribute that is open, and refuse what nobody offered", () => {
    expect([marked({ wood: "oak" }), marked({ wood: "", shape: "flat" })]).toEqual([missing("shape"), missing("wood")]);
    expect([marked({ wood: "elm", shape: "flat" }), marked({ wood: "oak", shape: "flat", age: "old" }), nameRules.mark(name, DRAW, NUMBER)]).toEqual([OTHER, OTHER, OTHER]);
  });
  it("say the answer, what each slip gives and what is shown", () => {
    expect(nameRules.answer(name, DRAW)).toEqual({ kind: "name", picks: { wood: "oak", shape: "flat" } });
    expect(nameRules.slips(name, DRAW).map(({ id }) => id)).toEqual(["pine", "round"]);
    expect(nameRules.slips(name, DRAW)[0]?.response).toEqual({ kind: "name", picks: { wood: "pine", shape: "flat" } });
    expect(own(name, "attributes")).toEqual({
      attributes: [{ id: "wood", text: "Wood", options: [{ id: "oak", text: "Oak" }, { id: "pine", text: "Pine" }] }, { id: "shape", text: "shape", options: [{ id: "flat", text: "Flat" }, { id: "round", text: "round" }] }],
    });
    expect(compared(name, { kind: "name", picks: { wood: "pine" } })).toEqual([{ ask: "wood", label: "Wood", yours: "Pine", answer: "Oak", accepted: "Oak" }, { ask: "shape", label: "shape", yours: "", answer: "Flat", accepted: "Flat" }]);
    expect(compared(name, { kind: "name", picks: { wood: "elm" } })[0]).toMatchObject({ yours: "elm" });
    expect(compared(name, NUMBER)[0]).toEqual({ ask: "wood", label: "Wood", answer: "Oak", accepted: "Oak" });
  });
});

describe("orders", () => {
  const draw = { ...DRAW, shown: ["c", "b", "a"] };
  const marked = (cards: readonly string[], family = order, shown: readonly string[] = draw.shown) => orderRules.mark(family, { ...DRAW, shown }, { kind: "order", cards });
  it("are right where no edge between shown cards is broken, and unsafe where a critical one is", () => {
    expect(marked(["a", "b", "c"])).toEqual(RIGHT);
    expect(marked(["b", "a", "c"])).toEqual(unsafe(0.5, "b-first"));
    expect(marked(["a", "c", "b"])).toEqual(safe(0.5, "c-first"));
    expect(marked(["c", "b", "a"])).toEqual(unsafe(0, "b-first"));
    expect(marked(["b", "a", "c"], { ...order, unsafe: false })).toEqual(safe(0.5, "b-first"));
    expect(marked(["c", "b"], order, ["b", "c"])).toEqual(safe(0, "c-first"));
    expect([marked(["c", "a"], order, ["a", "c"]), marked(["a", "d", "b"], order, ["a", "b", "d"]), marked(["a", "b", "d"], order, ["a", "b", "d"])]).toEqual([RIGHT, RIGHT, RIGHT]);
    expect(marked(["d", "a", "b"], order, ["a", "b", "d"])).toEqual(safe(0.5, "d-first"));
    expect(marked(["c", "b"], { ...order, slips: [] }, ["b", "c"])).toEqual(safe(0));
  });
  it("hold every card once", () => {
    expect([marked(["a", "b"]), marked(["a", "b", "c", "c"]), marked(["a", "b", "b"]), marked(["a", "b", "x"]), orderRules.mark(order, draw, NUMBER), orderRules.mark(order, DRAW, { kind: "order", cards: ["a"] })]).toEqual(Array(6).fill(OTHER));
  });
  it("say the answer, what each slip gives and what is shown", () => {
    expect(orderRules.answer(order, draw)).toEqual({ kind: "order", cards: ["a", "b", "c"] });
    expect(orderRules.answer(order, { ...DRAW, shown: ["d", "c", "b", "a"] })).toEqual({ kind: "order", cards: ["a", "b", "c", "d"] });
    expect(orderRules.answer({ ...order, edges: [{ before: "c", after: "a" }, { before: "b", after: "c" }] }, draw)).toEqual({ kind: "order", cards: ["b", "c", "a"] });
    expect(orderRules.slips(order, draw)).toEqual([{ id: "b-first", response: { kind: "order", cards: ["b", "a", "c"] } }, { id: "c-first", response: { kind: "order", cards: ["a", "c", "b"] } }]);
    expect(() => orderRules.answer({ ...order, edges: [{ before: "a", after: "b" }, { before: "b", after: "a" }] }, { ...DRAW, shown: ["a", "b"] })).toThrow(new RangeError("edges of plain-order must not run in a circle, got a, b"));
    expect(own(order, "cards")).toEqual({ cards: [{ id: "c", text: "card C" }, { id: "b", text: "card B in the hall" }, { id: "a", text: "card A" }] });
    const answer = "card A · card B in the hall · card C";
    expect(compared(order, { kind: "order", cards: ["b", "x"] })).toEqual([{ ask: "cards", label: "order", yours: "card B in the hall · x", answer, accepted: answer, lines: { yours: ["card B in the hall", "x"], answer: answer.split(" · ") } }]);
    expect(compared(order, NUMBER)).toEqual([{ ask: "cards", label: "order", answer, accepted: answer, lines: { answer: answer.split(" · ") } }]);
  });
  it("are not shown in an order that is already right", () => {
    expect([["a", "b", "c"], ["a", "c", "b"], ["c", "b", "a"]].map((shown) => orderRules.isGivenAway?.(order, { ...DRAW, shown }))).toEqual([true, false, false]);
    expect(() => drawItem({ ...order, draw: () => ({ ...DRAW, shown: ["a", "b", "c"] }) }, { seed: 1 })).toThrow("seed must give slips that differ within 64 redraws of plain-order, got 1");
  });
});

describe("ranges", () => {
  const marked = (from: string, to: string, family = range) => rangeRules.mark(family, DRAW, { kind: "range", from, to });
  it("are right to half a step at both ends, and unsafe where the top is too low", () => {
    expect([marked("10", "20"), marked("9.75", "20.25"), marked("10.25", "19.75"), marked("1 cm", "2 cm")]).toEqual(Array(4).fill(RIGHT));
    expect(marked("9.7", "20")).toEqual(safe(close(10 / 10.3)));
    expect(marked("10", "20.3")).toEqual(safe(close(10 / 10.3)));
    expect(marked("10", "19.7")).toEqual(unsafe(close(0.97)));
    expect(marked("10.3", "20")).toEqual(safe(close(0.97)));
    expect(marked("9", "19.75")).toEqual(safe(close(9.75 / 11)));
    expect(marked("14", "16")).toEqual(unsafe(close(0.2)));
    expect(marked("0", "50")).toEqual(safe(close(0.2)));
    expect(marked("30", "40")).toEqual(safe(0));
    expect(marked("14", "16", { ...range, unsafe: false })).toEqual(safe(close(0.2)));
    expect(marked("0", "1000", { ...range, solve: () => ({ from: 0, to: 1001 }) })).toEqual(unsafe(0.99));
    expect(marked("20", "10", { ...range, solve: () => ({ from: 20, to: 20 }) })).toMatchObject({ score: 0 });
    expect(marked("7", "7", { ...range, solve: () => ({ from: 5, to: 5 }) })).toEqual(safe(0));
    expect(marked("0.25", "0.3", { ...range, roundTo: 0.1, solve: () => ({ from: 0.3, to: 0.3 }) })).toEqual(RIGHT);
  });
  it("name the end that cannot be read", () => {
    expect([marked("", "20"), marked("10", "7 kg")]).toEqual([unreadable("from", "empty"), unreadable("to", "foreign-unit")]);
    expect(rangeRules.mark(range, DRAW, NUMBER)).toEqual(OTHER);
  });
  it("say the answer, what each slip gives and what is shown", () => {
    expect(rangeRules.answer(range, DRAW)).toEqual({ kind: "range", from: "10.0", to: "20.0" });
    expect(rangeRules.slips(range, DRAW)).toEqual([{ id: "shifted", response: { kind: "range", from: "12.0", to: "22.0" } }, { id: "narrow", response: { kind: "range", from: "14.0", to: "16.0" } }]);
    expect(own(range, "unit", "roundTo")).toEqual({ unit: "mm", roundTo: "0.5" });
    const answer = "10.0 to 20.0\u2009mm";
    expect(compared(range, { kind: "range", from: "1", to: "2" })).toEqual([{ ask: "range", label: "range", yours: "1 to 2\u2009mm", answer, accepted: answer }]);
    expect(compared(range, NUMBER)).toEqual([{ ask: "range", label: "range", answer, accepted: answer }]);
  });
});

describe("trays", () => {
  const draw = { ...DRAW, shown: ["a", "b", "c", "d"] };
  const marked = (found: readonly string[], family = tray) => trayRules.mark(family, draw, { kind: "tray", found });
  it("weigh what was found against what was flagged, and a critical fault passed is unsafe", () => {
    expect([marked(["a", "c"]), marked(["c", "a", "a"])]).toEqual([RIGHT, RIGHT]);
    expect(marked(["c"])).toEqual(unsafe(close(2 / 3), "missed-a"));
    expect(marked(["a", "c", "d"])).toEqual(safe(0.8, "flagged-d"));
    expect(marked(["a"])).toEqual(safe(close(2 / 3)));
    expect(marked(["a", "b", "c"])).toEqual(safe(0.8));
    expect(marked([])).toEqual(unsafe(0, "missed-a"));
    expect(marked(["b"])).toEqual(unsafe(0, "missed-a"));
    expect(marked(["c"], { ...tray, unsafe: false })).toEqual(safe(close(2 / 3), "missed-a"));
    const { critical: _, ...harmless } = tray;
    expect(marked(["c"], harmless)).toEqual(safe(close(2 / 3), "missed-a"));
    const sound = { ...tray, faults: () => [], critical: () => [], slips: [] };
    expect([marked([], sound), marked(["a"], sound)]).toEqual([RIGHT, safe(0)]);
  });
  it("refuse a thing that does not lie there", () => {
    expect([marked(["a", "x"]), trayRules.mark(tray, draw, NUMBER), trayRules.mark(tray, DRAW, { kind: "tray", found: ["a"] })]).toEqual([OTHER, OTHER, OTHER]);
  });
  it("say the answer, what each slip gives and what is shown", () => {
    expect(trayRules.answer(tray, draw)).toEqual({ kind: "tray", found: ["a", "c"] });
    expect(trayRules.slips(tray, draw)).toEqual([{ id: "missed-a", response: { kind: "tray", found: ["c"] } }, { id: "flagged-d", response: { kind: "tray", found: ["a", "c", "d"] } }]);
    expect(own(tray, "things", "nothing")).toEqual({ things: ["a", "b", "c", "d"].map((id) => ({ id, text: `${id} in the hall` })), nothing: "Nothing" });
    const answer = "c in the hall · a in the hall";
    expect(compared(tray, { kind: "tray", found: ["d", "x"] })).toEqual([{ ask: "found", label: "tray", yours: "d in the hall · x", answer, accepted: answer, lines: { yours: ["d in the hall", "x"], answer: answer.split(" · ") } }]);
    expect(compared(tray, { kind: "tray", found: [] })).toEqual([{ ask: "found", label: "tray", yours: "Nothing", answer, accepted: answer, lines: { yours: ["Nothing"], answer: answer.split(" · ") } }]);
    expect(compared(tray, NUMBER)).toEqual([{ ask: "found", label: "tray", answer, accepted: answer, lines: { answer: answer.split(" · ") } }]);
  });
});

describe("chains", () => {
  const sums = (...texts: readonly string[]): SumResponse[] => texts.map((text) => ({ kind: "sum", text }));
  const marked = (steps: readonly Response[], draw = DRAW, family = chain) => chainRules.mark(family, draw, { kind: "chain", steps });
  const part = (ask: string, value: string, verdict = "right") => ({ ask, value, verdict });
  const rest = { from: "5.2", to: "5.2" };
  const NOTHING = { ...DRAW, givens: { lengthMm: 3, gapMm: 5 } };
  it("mark each step on what the learner found before, so that one error counts once", () => {
    expect(marked(sums("5.2", "2.6"))).toEqual({ verdict: "right", score: 1, parts: [part("restMm", "5.2"), part("halfMm", "2.6")], accepted: { restMm: rest, halfMm: { from: "2.6", to: "2.6" } } });
    expect(marked(sums("9.2", "4.6"))).toEqual({ verdict: "unsafe-side", score: 0.5, slip: "gap-added", parts: [part("restMm", "9.2", "unsafe-side"), part("halfMm", "4.6")], accepted: { restMm: rest, halfMm: { from: "4.6", to: "4.6" } } });
    expect(marked(sums("5.2", "5.2"))).toMatchObject({ verdict: "safe-side", score: 0.5, slip: "not-halved" });
    expect(marked(sums("9.2", "9.2"))).toMatchObject({ verdict: "unsafe-side", score: 0, slip: "gap-added" });
    expect(marked(sums("6", "3"))).not.toHaveProperty("slip");
    expect(marked(sums("6", "6"))).not.toHaveProperty("slip");
    expect(marked(sums("9.2", "4.6"), DRAW, { ...chain, unsafe: false })).toMatchObject({ verdict: "safe-side", slip: "gap-added" });
  });
  it("take the answers that are not a number, and hand nothing on from them", () => {
    const none: Response = { kind: "sum", says: "none" };
    const untold: Response = { kind: "sum", says: "cannot-be-told" };
    expect(marked([none, untold], NOTHING)).toEqual({ verdict: "right", score: 1, parts: [{ ask: "restMm", verdict: "right" }, { ask: "halfMm", verdict: "right" }], accepted: {} });
    expect(marked([none, none])).toMatchObject({ verdict: "safe-side", score: 0, accepted: { restMm: rest } });
    expect(marked([none, untold])).toMatchObject({ verdict: "safe-side", score: 0.5 });
  });
  it("name the step that is open or cannot be read", () => {
    expect(marked(sums("?", "2"))).toEqual({ verdict: "not-recognised", reason: "no-number", score: 0, accepted: {}, parts: [{ ask: "restMm", verdict: "not-recognised", reason: "no-number", found: "?" }] });
    expect([marked([]), marked(sums("5.2")), chainRules.mark(chain, DRAW, NUMBER)]).toEqual([missing("restMm"), missing("halfMm"), OTHER]);
  });
  it("say the answer, what each slip gives and what is shown", () => {
    expect(chainRules.answer(chain, DRAW)).toEqual({ kind: "chain", steps: sums("5.2", "2.6") });
    expect(chainRules.slips(chain, DRAW)).toEqual([{ id: "gap-added", response: { kind: "chain", steps: sums("9.2", "4.6") } }, { id: "not-halved", response: { kind: "chain", steps: sums("5.2", "5.2") } }]);
    const says = { none: "none fits", "cannot-be-told": "cannot be told", "ask-locally": "ask" };
    const ask = { unit: "mm", roundTo: "0.1", rounding: "down" };
    expect(own(chain, "steps")).toEqual({ steps: [{ id: "rest", question: "What is left?", says, asks: [{ ...ask, id: "restMm", safeSide: "down", label: "Rest" }] }, { id: "half", question: "And half of it?", says, asks: [{ ...ask, id: "halfMm", safeSide: "none", label: "halfMm" }] }] });
  });
  it("set each step beside what it would be after the step before", () => {
    const fixed = { ...chain, draw: () => DRAW };
    const row = (id: string, label: string, answer: string, yours?: string) => ({ ask: id, label, ...(yours === undefined ? {} : { yours }), answer, accepted: answer });
    expect(compared(fixed, { kind: "chain", steps: sums("9.2", "7") })).toEqual([row("restMm", "Rest", "5.2\u2009mm", "9.2\u2009mm"), row("halfMm", "halfMm", "4.6\u2009mm", "7\u2009mm")]);
    expect(compared(fixed, { kind: "chain", steps: [{ kind: "sum", says: "ask-locally" }, { kind: "sum", text: "?" }] })).toMatchObject([{ ask: "restMm", yours: "ask" }, row("halfMm", "halfMm", "cannot be told")]);
    expect(compared(fixed, { kind: "chain", steps: [{ kind: "sum", says: "none" }, { kind: "sum", text: "?" }] })[1]).not.toHaveProperty("yours");
    expect(compared(fixed, NUMBER)).toEqual([]);
  });
});
