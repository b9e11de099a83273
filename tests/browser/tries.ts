import { answerTo, families, grade, slipsOf } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { Kind, Response } from "../../src/engine/question/response.ts";
import { shown } from "./card.ts";

/** How an answer may come out. */
export const OUTCOMES = ["right", "partly", "wrong", "unsafe"] as const;
export type Outcome = (typeof OUTCOMES)[number];

export interface Try {
  readonly family: string;
  readonly item: Item;
  readonly response: Response;
}

export const outcomeOf = (item: Item, response: Response): Outcome | null => {
  const { verdict, score } = grade(item, response);
  if (verdict === "right") return "right";
  if (verdict === "not-recognised") return null;
  if (verdict === "unsafe-side") return "unsafe";
  return score > 0 ? "partly" : "wrong";
};

/** The list with one of its members and the next in each other's place. */
const swappedAt = <T>(list: readonly T[], at: number): T[] => [...list.slice(0, at), ...list.slice(at, at + 2).toReversed(), ...list.slice(at + 2)];

const CHAIN_STEPS: readonly Response[] = [{ kind: "sum", says: "cannot-be-told" }, { kind: "sum", text: "3" }, { kind: "sum", text: "90" }];

/** Small changes to the right answer, as a learner would make them. */
const NEAR: Readonly<Record<Kind, (item: Item, right: Response) => readonly Response[]>> = {
  sum: (_, right) => {
    if (right.kind !== "sum" || "says" in right) return [{ kind: "sum", text: "9.7" }, { kind: "sum", says: "ask-locally" }];
    if ("text" in right) return [...["0.4", "0.7", "1.6", "3.3"].map((by): Response => ({ kind: "sum", text: String(Math.round(Number(right.text) * Number(by))) })), { kind: "sum", says: "none" }];
    return Object.keys(right.texts).map((id): Response => ({ kind: "sum", texts: { ...right.texts, [id]: String(Math.round(Number(right.texts[id]) * 1.4) + 1) } }));
  },
  chain: (_, right) => {
    if (right.kind !== "chain") return [];
    const last = (step: Response): Response => ({ kind: "chain", steps: [...right.steps.slice(0, -1), step] });
    const each = (step: Response): Response => ({ kind: "chain", steps: right.steps.map(() => step) });
    return CHAIN_STEPS.flatMap((step) => [last(step), each(step)]);
  },
  range: (_, right) => (right.kind === "range" ? [["0", right.to], [right.from, "999"], ["990", "999"]].map(([from = "", to = ""]): Response => ({ kind: "range", from, to })) : []),
  mark: (item, right) => {
    if (item.kind !== "mark" || right.kind !== "mark") return [];
    const [first, second] = item.targets;
    const other = (id: string | undefined, at: number) => ({ [id ?? ""]: { xMm: item.regions[at]?.xMm ?? "", yMm: item.regions[at]?.yMm ?? "" } });
    return item.regions.flatMap((_region, at): readonly Response[] => [first, second].map((target) => ({ kind: "mark", points: { ...right.points, ...other(target?.id, at) } })));
  },
  line: (_, right) => (right.kind === "line" ? ["1", "2", "4", "8", "-4", "-2"].flatMap((by): readonly Response[] => [{ ...right, depthMm: String(Math.max(1, Number(right.depthMm) + Number(by))) }, { ...right, angleDeg: String(Number(right.angleDeg) + 4 * Number(by)) }]) : []),
  order: (_, right) => (right.kind === "order" ? right.cards.map((_card, at): Response => ({ kind: "order", cards: swappedAt(right.cards, at) })).concat({ kind: "order", cards: right.cards.toReversed() }) : []),
  tray: (item, right) => (right.kind === "tray" && item.kind === "tray" ? [{ kind: "tray", found: right.found.slice(1) }, { kind: "tray", found: [] }, ...item.things.map(({ id }): Response => ({ kind: "tray", found: [id] })), ...item.things.map(({ id }): Response => ({ kind: "tray", found: [...new Set([...right.found, id])].sort() }))] : []),
  name: (item, right) => (right.kind === "name" && item.kind === "name" ? item.attributes.flatMap(({ id, options }) => options.map((option): Response => ({ kind: "name", picks: { ...right.picks, [id]: option.id } }))).concat({ kind: "name", picks: Object.fromEntries(item.attributes.map(({ id, options }) => [id, options.find((option) => option.id !== right.picks[id])?.id ?? ""])) }) : []),
  count: (item, right) => (right.kind === "count" && item.kind === "count" ? [...item.classes.flatMap(({ id }) => [-1, 1].map((by): Response => ({ kind: "count", byClass: { ...right.byClass, [id]: String(Number(right.byClass[id] ?? "0") + by) } }))), { kind: "count", byClass: Object.fromEntries(item.classes.map(({ id }) => [id, String(Number(right.byClass[id] ?? "0") + 1)])) }] : []),
  judge: (item, right) => (right.kind === "judge" && item.kind === "judge" ? [{ ...right, reasons: right.reasons.slice(1) }, ...item.options.map(({ id }): Response => ({ kind: "judge", picks: id, reasons: [item.reasons[0]?.id ?? ""] }))] : []),
};

const triesOf = (item: Item): readonly Response[] => {
  const right = answerTo(item);
  return [right, ...slipsOf(item).map(({ response }) => response), ...NEAR[item.kind](item, right)];
};

/** The first practice page of a kind whose question can come out so, with an answer that does it; null where none can. */
export const tryFor = (kind: Kind, outcome: Outcome): Try | null => {
  for (const { id } of families.filter((family) => family.kind === kind)) {
    const item = shown(id, `/practice/${id}/`);
    const response = triesOf(item).find((one) => outcomeOf(item, one) === outcome);
    if (response) return { family: id, item, response };
  }
  return null;
};
