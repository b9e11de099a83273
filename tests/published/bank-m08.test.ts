import { describe, expect, it } from "vitest";
import { answerTo, draw, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";

/** Families of module M08 that need no drawing beside a second way to their answer. */

const ITEMS = 1000;
type Given = (key: string) => number;

const items = (id: string): readonly Item[] => Array.from({ length: ITEMS }, (_, seed) => draw(id, seed));
const reader = (item: Item): Given => (key) => Number(item.givens.find((given) => given.key === key)?.text ?? Number.NaN);
const notRight = (id: string, respond: (item: Item, of: Given) => Response): readonly string[] =>
  items(id).filter((item) => grade(item, respond(item, reader(item))).verdict !== "right").map(({ seed }) => seed);
const one = (value: number, places: number): Response => ({ kind: "sum", text: value.toFixed(places) });
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
const ordersDiffer = (id: string, chains: readonly (readonly string[])[]): readonly string[] =>
  items(id).filter((item) => {
    const right = answerTo(item);
    if (item.kind !== "order" || right.kind !== "order") return true;
    const { cards } = right;
    const orders = [item.cards.map((card) => card.id), cards, ...cards.flatMap((_, first) => cards.slice(first + 1).map((__, more) => exchanged(cards, first, first + 1 + more)))];
    return orders.some((order) => keeps(order, chains) !== (grade(item, { kind: "order", cards: [...order] }).verdict === "right"));
  }).map(({ seed }) => seed);

describe("the orderly look", () => {
  it("goes round by the local sheet: from above, medial, notch, lateral, behind, record, instruments", () => {
    expect(ordersDiffer("stations", [["pouch", "patella", "medial", "notch", "lateral", "behind-lateral", "record", "instruments"], ["pouch", "gutters", "medial"], ["pouch", "trochlea", "medial"], ["lateral", "popliteus", "record"], ["notch", "behind-medial", "record"]])).toEqual([]);
  });

  it("misses the stations whose name is not read in the strip", () => {
    expect(notRight("unrecorded", (item) => {
      const strip = item.stem.join(" ").toLowerCase();
      return { kind: "tray", found: item.kind === "tray" ? item.things.filter(({ text }) => !new RegExp(`\\d ${text.toLowerCase()}`).test(strip)).map(({ id }) => id) : [] };
    })).toEqual([]);
  });

  it("leaves what a clock of seconds leaves, in whole minutes", () => {
    expect(notRight("time-budget", (_, of) => {
      let seconds = of("cuffLeftMin") * 60;
      for (let station = 0; station < of("stations"); station += 1) seconds -= of("eachS");
      return one((seconds - (seconds % 60)) / 60, 0);
    })).toEqual([]);
  });

  it("names one ruler above and below the line: 5.83 of 41.33 seen is 85.9 % unseen, 6.83 of 37.50 is 81.8 %", () => {
    const unseen = (seen: number, whole: number): number => (100 * (whole - seen)) / whole;
    expect([unseen(5.83, 41.33).toFixed(1), unseen(6.83, 37.5).toFixed(1)]).toEqual(["85.9", "81.8"]);
    expect(notRight("unseen", (item, of) => {
      const stem = item.stem.join(" ");
      if (stem.includes("a child of nine")) return { kind: "sum", says: "cannot-be-told" };
      return /(to use: scan|with the scan|ruler: scan)/.test(stem) ? one(unseen(of("seenScanMm"), of("wholeScanMm")), 3) : one(unseen(of("seenCutMm"), of("wholeCutMm")), 3);
    })).toEqual([]);
  });

  it("takes 21.5 per cent of an adult medial rim and of no other (Morin 1993)", () => {
    expect(notRight("blind-rim", (item, of) => (item.stem.join(" ").includes("medial rim of an adult") ? one(of("rimMm") * 0.215, 3) : { kind: "sum", says: "cannot-be-told" }))).toEqual([]);
  });
});
