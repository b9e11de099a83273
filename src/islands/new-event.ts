import type { NewEvent } from "../engine/record/chain.ts";
import { calendarDay } from "../engine/record/day.ts";
import type { Item, ShownAsk } from "../engine/question/item.ts";
import type { Graded } from "./grading.ts";
import { newSeed } from "./new-seed.ts";

/** The moment by this device's clock, and how far the clock stands ahead of UTC. */
const now = (): { readonly at: string; readonly offsetMin: string } => {
  const date = new Date();
  return { at: date.toISOString(), offsetMin: String(-date.getTimezoneOffset()) };
};

/** The learner's calendar day by this device's clock. */
export const today = (): number => {
  const { at, offsetMin } = now();
  return calendarDay(at, offsetMin) ?? 0;
};

const NO_ANSWER = { kind: "sum", text: "" } as const;
const bare = () => ({ id: newSeed(), ...now(), family: "", version: "0", seed: "0", language: "en", givens: {}, asks: {}, accepted: {}, response: NO_ANSWER, verdict: "not-recognised", try: "1", hint: false }) as const;

const asksOf = (item: Item): readonly ShownAsk[] => {
  if (item.kind === "sum") return item.asks;
  return item.kind === "chain" ? item.steps.flatMap(({ id, asks }) => asks.map((ask) => ({ ...ask, id: `${id}.${ask.id}` }))) : [];
};

const questionOf = (item: Item) => ({
  family: item.family,
  version: String(item.version),
  seed: item.seed,
  language: item.language,
  givens: Object.fromEntries(item.givens.map(({ key, text }) => [key, text])),
  asks: Object.fromEntries(asksOf(item).map(({ id, unit, rounding, roundTo }) => [id, `${unit} ${rounding} ${roundTo}`])),
  ...(item.local === undefined ? {} : { local: item.local }),
});

export interface AnswerContext {
  /** Which try at this very question, from 1. */
  readonly tries: number;
  readonly hasHint: boolean;
  /** Number of the sheet that the question stands on, if any. */
  readonly sheet?: string | undefined;
}

/** The event of one answer that could be read. */
export const answeredEvent = (item: Item, { response, verdict }: Graded, { tries, hasHint, sheet }: AnswerContext): NewEvent => ({
  ...bare(),
  ...questionOf(item),
  kind: "answered",
  accepted: verdict.accepted,
  response,
  verdict: verdict.verdict,
  try: String(tries),
  hint: hasHint,
  ...(verdict.slip === undefined ? {} : { slip: verdict.slip }),
  ...(sheet === undefined ? {} : { sheet }),
});

/** The event of a question that was left for later on a sheet. */
export const leftEvent = (item: Item, sheet: string): NewEvent => ({ ...bare(), ...questionOf(item), kind: "left", sheet });

/** The event of a module, or of an objective's worked example, that was read. */
export const readEvent = (what: { readonly module: string } | { readonly objective: string }): NewEvent => ({ ...bare(), kind: "read", givens: { ...what } });

/** The event of a code that brings where the learner stood on another device. */
export const carriedEvent = (code: string): NewEvent => ({ ...bare(), kind: "carried", givens: { code } });
