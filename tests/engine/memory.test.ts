import { describe, expect, it } from "vitest";
import { drawItem } from "../../src/engine/question/draw.ts";
import { answerOf, explainItem, slipResponses } from "../../src/engine/question/explain.ts";
import type { Family, SumFamily } from "../../src/engine/question/family.ts";
import { gradeItem } from "../../src/engine/question/grade.ts";
import type { Item, SumItem } from "../../src/engine/question/item.ts";
import { solutionOf } from "../../src/engine/question/solve.ts";
import { DRAW, order, pair, sum } from "../support/plain-families.ts";

/** What the engine remembers of last time may save work and never change an answer. */

type Open<T> = { -readonly [Key in keyof T]: T[Key] extends object ? Open<T[Key]> : T[Key] };
/** An item that a test may write into. */
const opened = (family: Family, seed: number): Open<Item> => structuredClone(drawItem(family, { seed })) as Open<Item>;
/** All that can be asked about an item. */
const allOf = (family: Family, item: Item) => {
  const response = { kind: "sum", text: "9" } as const;
  const verdict = gradeItem(family, item, response);
  return { verdict, answer: answerOf(family, item), slips: slipResponses(family, item), explained: explainItem(family, item, { response, verdict }) };
};

describe("what is remembered of an item", () => {
  it("is forgotten where one of its numbers is changed in place", () => {
    const item = opened(sum, 1);
    allOf(sum, item as Item);
    for (const given of item.givens) given.text = "9";
    expect(allOf(sum, item as Item)).toEqual(allOf(sum, structuredClone(item) as Item));
    expect(gradeItem(sum, item as Item, { kind: "sum", text: "9" }).verdict).toBe("right");
  });
  it("is forgotten where one of its words is changed, added or taken away", () => {
    const item = opened(sum, 1);
    const workingIn = (about: Item["about"]) => {
      Object.assign(item, { about });
      return gradeItem(sum, item as Item, { kind: "sum", text: "9" }).working;
    };
    expect([workingIn({ room: "hall" }), workingIn({ room: "loft" }), workingIn({ room: "loft", side: "left" })].flat()).toEqual(["working in the hall", "working in the loft", "working in the loft"]);
    (item.about as Record<string, string>)["room"] = "shed";
    expect(gradeItem(sum, item as Item, { kind: "sum", text: "9" }).working).toEqual(["working in the shed"]);
  });
  it("is forgotten where an item is changed that was only just drawn", () => {
    const item = drawItem(sum, { seed: 1 });
    (item.about as Record<string, string>)["room"] = "shed";
    expect(gradeItem(sum, item, { kind: "sum", text: "9" }).working).toEqual(["working in the shed"]);
    const second = drawItem(sum, { seed: 2 }) as SumItem;
    for (const given of second.givens) (given as { text: string }).text = "9";
    expect(gradeItem(sum, second, { kind: "sum", text: "9" }).verdict).toBe("right");
  });
  it("is forgotten where its cards are changed", () => {
    const item = opened(order, 1) as Open<Extract<Item, { kind: "order" }>>;
    expect(answerOf(order, item as Item)).toEqual({ kind: "order", cards: ["a", "b", "c"] });
    item.cards.pop();
    expect(answerOf(order, item as Item)).toEqual({ kind: "order", cards: ["b", "c"] });
  });
  it("is kept apart for another version of its family, also where both share a formula", () => {
    const item = drawItem(sum, { seed: 1 });
    const later: SumFamily = { ...sum, version: 2, slips: sum.slips.map((slip) => ({ ...slip, id: `${slip.id}-2` })), words: { en: { ...sum.words.en, working: () => ["later"] } } };
    const slipIds = (family: SumFamily) => slipResponses(family, item).map(({ id }) => id);
    expect([slipIds(sum), slipIds(later), slipIds(sum)]).toEqual([["gap-added", "gap-taken"], ["gap-added-2", "gap-taken-2"], ["gap-added", "gap-taken"]]);
    const workings = [sum, later, sum].map((family) => gradeItem(family, item, { kind: "sum", text: "1" }).working[0]);
    expect(workings).toEqual(["working in the hall", "later", "working in the hall"]);
  });
});

describe("what is remembered of a draw", () => {
  it("is the answer of one formula, and not lost or mixed up where another refuses the draw", () => {
    const refuses: SumFamily["solve"] = () => { throw new RangeError("lengthMm must be longer, got 7.2"); };
    const right = solutionOf(sum, DRAW);
    expect(() => solutionOf({ solve: refuses }, DRAW)).toThrow(RangeError);
    expect([solutionOf(sum, DRAW), solutionOf(pair, DRAW), solutionOf(sum, { ...DRAW, givens: { lengthMm: 3, gapMm: 1 } })]).toEqual([right, { leastMm: 2, greatestMm: 7.2 }, { fitMm: 3 }]);
  });
});

describe("what all items of a family share", () => {
  it("cannot be changed through one of them", () => {
    const [first, second] = [drawItem(sum, { seed: 1 }) as SumItem, drawItem(sum, { seed: 2 }) as SumItem];
    expect(() => Object.assign(first.asks[0] as object, { label: "Other" })).toThrow(TypeError);
    expect(() => (first.asks as unknown[]).pop()).toThrow(TypeError);
    expect([first.asks[0]?.label, second.asks[0]?.label]).toEqual(["Fit", "Fit"]);
  });
});
