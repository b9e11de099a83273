import type { EdgeSpec, OrderFamily } from "../family.ts";
import type { Draw } from "../family-head.ts";
import type { OrderItem } from "../item.ts";
import { type KindRules, OTHER_KIND, partly, plainDraw } from "../kind-rules.ts";
import type { OrderResponse } from "../response.ts";
import type { Say } from "../say.ts";
import { stepOrder } from "../step-order.ts";

/** Edges between cards that are shown. */
const edgesOf = (family: OrderFamily, draw: Draw): readonly EdgeSpec[] => {
  const shown = new Set(draw.shown);
  return family.edges.filter(({ before, after }) => shown.has(before) && shown.has(after));
};

const isBroken = (cards: readonly string[], { before, after }: Pick<EdgeSpec, "before" | "after">): boolean => cards.indexOf(before) > cards.indexOf(after);

/** One order that breaks no edge, as the answer shows it. */
const legalOrder = (family: OrderFamily, draw: Draw): string[] => stepOrder(family.edges, draw.shown ?? [], `edges of ${family.id}`);

/** The right order with one edge broken: the later card moved to just before the earlier one. */
const withBroken = (order: readonly string[], [before, after]: readonly [string, string]): string[] => {
  const rest = order.filter((card) => card !== after);
  rest.splice(rest.indexOf(before), 0, after);
  return rest;
};

const slipsOf = (family: OrderFamily, draw: Draw) => {
  const order = legalOrder(family, draw);
  return family.slips
    .filter(({ breaks }) => breaks.every((card) => order.includes(card)))
    .map(({ id, breaks }) => ({ id, response: { kind: "order", cards: withBroken(order, breaks) } as OrderResponse }));
};

const isWhole = (cards: readonly string[], shown: readonly string[]): boolean =>
  cards.length === shown.length && new Set(cards).size === cards.length && cards.every((card) => shown.includes(card));

const textsOf = (item: OrderItem, cards: readonly string[]): readonly string[] => cards.map((id) => item.cards.find((card) => card.id === id)?.text ?? id);
const textOf = (item: OrderItem, cards: readonly string[]): string => textsOf(item, cards).join(" · ");

const cardText = (family: OrderFamily, id: string, say: Say): string => {
  const text = family.words.en.cards[id] ?? id;
  return typeof text === "string" ? text : text(say);
};

/** Orders: any order that breaks no edge is right, and a broken critical edge is unsafe. */
export const orderRules: KindRules<OrderFamily, OrderItem> = {
  drawOf: (item) => ({ ...plainDraw(item), shown: item.cards.map(({ id }) => id) }),
  answer: (family, draw) => ({ kind: "order", cards: legalOrder(family, draw) }),
  slips: slipsOf,
  mark: (family, draw, response) => {
    if (response.kind !== "order" || !isWhole(response.cards, draw.shown ?? [])) return OTHER_KIND;
    const edges = edgesOf(family, draw);
    const broken = edges.filter((edge) => isBroken(response.cards, edge));
    if (broken.length === 0) return { verdict: "right", score: 1, parts: [] };
    const slip = family.slips.find(({ breaks: [before, after] }) => response.cards.includes(before) && response.cards.includes(after) && isBroken(response.cards, { before, after }));
    const isUnsafe = family.unsafe && broken.some(({ critical }) => critical);
    return { verdict: partly(isUnsafe), score: 1 - broken.length / edges.length, parts: [], ...(slip ? { slip: slip.id } : {}) };
  },
  shown: (family, draw, say) => ({ cards: (draw.shown ?? []).map((id) => ({ id, text: cardText(family, id, say) })) }),
  compare: (family, item, { response }) => {
    const legal = legalOrder(family, orderRules.drawOf(item));
    const answer = textOf(item, legal);
    const given = response.kind === "order" ? response.cards : null;
    const yours = given === null ? {} : { yours: textOf(item, given) };
    const lines = { ...(given === null ? {} : { yours: textsOf(item, given) }), answer: textsOf(item, legal) };
    return [{ ask: "cards", label: "order", ...yours, answer, accepted: answer, lines }];
  },
  broken: (family, item, response) => {
    if (response.kind !== "order") return [];
    const textAt = (id: string): string => textOf(item, [id]);
    const edges = edgesOf(family, orderRules.drawOf(item)).filter((edge) => isBroken(response.cards, edge));
    return edges
      .map(({ before, after, critical = false, reason, whose }) => ({ first: textAt(before), later: textAt(after), isCritical: critical, ...(reason === undefined ? {} : { reason }), ...(whose === undefined ? {} : { whose }) }))
      .toSorted((one, other) => Number(other.isCritical) - Number(one.isCritical));
  },
  isGivenAway: (family, draw) => edgesOf(family, draw).every((edge) => !isBroken(draw.shown ?? [], edge)),
};
