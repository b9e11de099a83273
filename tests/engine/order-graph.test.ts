import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawItem } from "../../src/engine/question/draw.ts";
import type { OrderItem } from "../../src/engine/question/item.ts";
import { orderRules } from "../../src/engine/question/kinds/order.ts";
import type { EdgeSpec, OrderFamily } from "../../src/engine/question/family.ts";
import type { Draw } from "../../src/engine/question/family-head.ts";

/** A seed in a title makes a failure repeatable. */
const SEED = 41907;
const GRAPHS = 120;
const MOST_CARDS = 7;

interface Graph {
  readonly cards: readonly string[];
  readonly edges: readonly EdgeSpec[];
  readonly unsafe: boolean;
}

const CARDS = ["a", "b", "c", "d", "e", "f", "g"] as const;

/** Graphs without a circle: every edge runs forward in some hidden order of the cards, which is then forgotten. */
const graphs: fc.Arbitrary<Graph> = fc
  .record({
    hidden: fc.integer({ min: 3, max: MOST_CARDS }).chain((size) => fc.shuffledSubarray(CARDS.slice(0, size), { minLength: size })),
    picks: fc.array(fc.record({ from: fc.nat(MOST_CARDS - 1), to: fc.nat(MOST_CARDS - 1), critical: fc.boolean() }), { minLength: 1, maxLength: 12 }),
    unsafe: fc.boolean(),
  })
  .map(({ hidden, picks, unsafe }) => {
    const edges = new Map<string, EdgeSpec>();
    for (const { from, to, critical } of picks) {
      const [before, after] = [hidden[Math.min(from, to)], hidden[Math.max(from, to)]];
      if (before === undefined || after === undefined || before === after) continue;
      edges.set(`${before}${after}`, critical ? { before, after, critical } : { before, after });
    }
    return { cards: [...hidden].sort(), edges: [...edges.values()], unsafe };
  })
  .filter(({ edges }) => edges.length > 0);

const drawOf = ({ cards }: Pick<Graph, "cards">): Draw => ({ givens: {}, about: {}, shown: cards });

const familyOf = ({ cards, edges, unsafe }: Graph): OrderFamily => ({
  kind: "order", id: "made", code: "00a", module: "M00", version: 0, firstWave: false, unsafe, objectives: ["made"], reads: [], sources: [], cautions: [], givens: [],
  draw: () => drawOf({ cards }),
  edges,
  slips: [],
  words: { en: { title: "", stems: [], question: "", givens: {}, slips: {}, working: () => [], right: () => [], off: () => [], cards: {} } },
});

/** Every order of the cards, written out. */
const permutations = (cards: readonly string[]): readonly (readonly string[])[] =>
  cards.length < 2 ? [cards] : cards.flatMap((card, index) => permutations([...cards.slice(0, index), ...cards.slice(index + 1)]).map((rest) => [card, ...rest]));

/** The verdict by looking along the order: a card that comes although one that must stand before it is still to come breaks that edge. */
const byHand = ({ edges, unsafe }: Graph, order: readonly string[]): { readonly verdict: string; readonly score: number } => {
  let [broken, critical] = [0, 0];
  order.forEach((card, index) => {
    const later = order.slice(index + 1);
    for (const edge of edges) if (edge.after === card && later.includes(edge.before)) {
      broken += 1;
      if (edge.critical) critical += 1;
    }
  });
  const score = (edges.length - broken) / edges.length;
  if (broken === 0) return { verdict: "right", score };
  return { verdict: unsafe && critical > 0 ? "unsafe-side" : "safe-side", score };
};

describe("an order is graded as by hand", () => {
  it(`over every order of up to ${MOST_CARDS} cards, in ${GRAPHS} graphs (seed ${SEED})`, () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(graphs, (graph) => {
        const family = familyOf(graph);
        const draw = drawOf(graph);
        let legal = 0;
        for (const order of permutations(graph.cards)) {
          const { verdict, score } = orderRules.mark(family, draw, { kind: "order", cards: order });
          const expected = byHand(graph, order);
          if (verdict !== expected.verdict || Math.abs(score - expected.score) > 1e-12) return false;
          seen.add(verdict);
          if (verdict === "right") legal += 1;
        }
        // Some order is legal, and the one that the engine gives is among them.
        const answer = orderRules.answer(family, draw);
        return legal > 0 && answer.kind === "order" && byHand(graph, answer.cards).verdict === "right";
      }),
      { seed: SEED, numRuns: GRAPHS },
    );
    expect([...seen].sort()).toEqual(["right", "safe-side", "unsafe-side"]);
  });

  it("lists every broken rule with its reason, those that can hurt first, and none for a legal order", () => {
    const edges: readonly EdgeSpec[] = [{ before: "a", after: "b", reason: "Because of a.", whose: "author" }, { before: "b", after: "c", critical: true }, { before: "a", after: "c" }];
    const family = familyOf({ cards: ["a", "b", "c"], edges, unsafe: true });
    const item = drawItem({ ...family, draw: (chance) => { chance.below(2); return drawOf({ cards: ["c", "b", "a"] }); }, slips: [{ id: "one", breaks: ["a", "b"] }, { id: "two", breaks: ["b", "c"] }], words: { en: { ...family.words.en, stems: [() => []], cards: { a: "A", b: "B", c: "C" } } } }, { seed: 1 }) as OrderItem;
    const brokenBy = (...cards: readonly string[]) => orderRules.broken?.(family, item, { kind: "order", cards }) ?? [];
    expect(brokenBy("a", "b", "c")).toEqual([]);
    expect(brokenBy("c", "b", "a")).toEqual([
      { first: "B", later: "C", isCritical: true },
      { first: "A", later: "B", isCritical: false, reason: "Because of a.", whose: "author" },
      { first: "A", later: "C", isCritical: false },
    ]);
    expect(orderRules.broken?.(family, item, { kind: "sum", text: "1" })).toEqual([]);
  });

  it("takes no order that leaves a card out, names one twice or brings a stranger", () => {
    const graph: Graph = { cards: ["a", "b", "c"], edges: [{ before: "a", after: "b", critical: true }], unsafe: true };
    const family = familyOf(graph);
    const draw = drawOf(graph);
    for (const cards of [["a", "b"], ["a", "b", "b"], ["a", "b", "x"], []]) expect(orderRules.mark(family, draw, { kind: "order", cards }).verdict).toBe("not-recognised");
  });

  it("refuses a graph that runs in a circle", () => {
    const graph: Graph = { cards: ["a", "b", "c"], edges: [{ before: "a", after: "b" }, { before: "b", after: "c" }, { before: "c", after: "a" }], unsafe: false };
    expect(() => orderRules.answer(familyOf(graph), drawOf(graph))).toThrow(RangeError);
  });
});
