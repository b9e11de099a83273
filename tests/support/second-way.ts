import { answerTo, draw, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";

/** Holds the grading of a family beside a second way to its answer, over a thousand questions of it. */

const ITEMS = 1000;

/** A given of a question, as the number that it shows. */
export type Given = (key: string) => number;

export const items = (id: string): readonly Item[] => Array.from({ length: ITEMS }, (_, seed) => draw(id, seed));

export const reader = (item: Item): Given => (key) => Number(item.givens.find((given) => given.key === key)?.text ?? Number.NaN);

/** Seeds whose answer by the second way is not graded as right. */
export const notRight = (id: string, respond: (item: Item, of: Given) => Response): readonly string[] =>
  items(id).filter((item) => grade(item, respond(item, reader(item))).verdict !== "right").map(({ seed }) => seed);

/** One number as it is typed. */
export const one = (value: number, places: number): Response => ({ kind: "sum", text: value.toFixed(places) });

/** Several numbers as they are typed. */
export const many = (values: Readonly<Record<string, number>>, places: number): Response => ({ kind: "sum", texts: Object.fromEntries(Object.entries(values).map(([id, value]) => [id, value.toFixed(places)])) });

/** True where each chain stands in its order, as far as its cards are shown. */
const keeps = (order: readonly string[], chains: readonly (readonly string[])[]): boolean =>
  chains.every((chain) => {
    const places = chain.filter((card) => order.includes(card)).map((card) => order.indexOf(card));
    return places.every((place, at) => at === 0 || place > (places[at - 1] ?? -1));
  });

/** The order with two cards exchanged. */
const exchanged = (cards: readonly string[], first: number, second: number): string[] => {
  const order = [...cards];
  [order[first], order[second]] = [cards[second] ?? "", cards[first] ?? ""];
  return order;
};

/** Seeds where grading and the chains do not agree: on the shown order, on a right one, and on every exchange of two cards of it. */
export const ordersDiffer = (id: string, chains: readonly (readonly string[])[]): readonly string[] =>
  items(id).filter((item) => {
    const right = answerTo(item);
    if (item.kind !== "order" || right.kind !== "order") return true;
    const { cards } = right;
    const orders = [item.cards.map((card) => card.id), cards, ...cards.flatMap((_, first) => cards.slice(first + 1).map((__, more) => exchanged(cards, first, first + 1 + more)))];
    return orders.some((order) => keeps(order, chains) !== (grade(item, { kind: "order", cards: [...order] }).verdict === "right"));
  }).map(({ seed }) => seed);
