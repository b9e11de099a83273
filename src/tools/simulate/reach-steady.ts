import type { Chance } from "../../engine/random/chance.ts";
import type { VerdictCode } from "../../engine/question/verdict.ts";
import type { Line } from "../../engine/record/chain.ts";
import { learnerState } from "../../engine/record/learner-state.ts";
import { COURSE } from "./course.ts";
import { isSteady, type Order, type Pick } from "./orders.ts";
import { afterExample, answered, type Memory, type Outcome, rightShare, type Traits } from "./person.ts";
import { type Standings, standingsFrom } from "./standings.ts";

export interface Reached {
  readonly questions: number;
  /** Days from the first sitting to the last, both counted, also those on which nothing was left to ask. */
  readonly days: number;
  readonly isReached: boolean;
  /** Chance of a right answer the morning after, mean of all objectives. */
  readonly rightShare: number;
  readonly lines: readonly Line[];
}

/** A sitting a day for this long; who is not there by then is counted as not there. */
export const MOST_DAYS = 60;

/** 1 February 2027: a day like any other, for the dates in the made log. */
export const FIRST_DAY = Date.UTC(2027, 1, 1) / 86_400_000;

const VERDICT_OF: Readonly<Record<Outcome, VerdictCode>> = { right: "right", wrong: "safe-side", unsafe: "unsafe-side" };

/** Nine in the morning of each day, made once: a date takes longer than the rest of a line. */
const MORNINGS: readonly string[] = Array.from({ length: MOST_DAYS }, (_, day) => `${new Date((FIRST_DAY + day) * 86_400_000).toISOString().slice(0, 10)}T09:00:00Z`);

/** A line of the made log. Its hash is its number: nothing here needs to show damage, and hashing would take most of the time. */
const lineOf = (family: string, outcome: Outcome, at: { readonly number: number; readonly day: number }): Line => ({
  hash: `line-${at.number}`,
  event: {
    id: `answer-${at.number}`, at: MORNINGS[at.day] ?? "", offsetMin: "0", kind: "answered",
    family, version: "1", seed: String(at.number), language: "en", givens: {}, asks: {}, accepted: {}, response: { kind: "sum", text: "" },
    verdict: VERDICT_OF[outcome], try: "1", hint: false, prev: at.number === 0 ? "" : `line-${at.number - 1}`,
  },
});

/** What the learner holds and what the workbook has seen of it, side by side. */
interface Run {
  readonly memories: Map<string, Memory>;
  readonly lines: Line[];
  readonly standings: Standings;
}

const ask = ({ memories, lines, standings }: Run, { objective, family }: Pick, at: { readonly day: number; readonly traits: Traits; readonly chance: Chance }): void => {
  const before = memories.get(objective) ?? afterExample(at.traits, at.day, at.chance);
  const { memory, outcome } = answered(before, at.day, at);
  const line = lineOf(family, outcome, { number: lines.length, day: at.day });
  memories.set(objective, memory);
  lines.push(line);
  standings.add(objective, { id: line.event.id, day: FIRST_DAY + at.day, kind: outcome, isFirstTry: true, guess: at.traits.guess });
};

/** What has come of it on the morning of a day. The whole log is read once by the workbook's own fold, which must say the same. */
const endOf = ({ memories, lines, standings }: Run, day: number, traits: Traits): Reached => {
  const todayDay = FIRST_DAY + day;
  const { objectives } = learnerState(lines, { objectives: COURSE, guessOf: () => traits.guess, todayDay });
  const levels = standings.on(todayDay).map(({ level }) => level);
  if (objectives.some(({ level }, place) => level !== levels[place])) throw new Error(`the log must lead to the levels ${levels.join(", ")}, got ${objectives.map(({ level }) => level).join(", ")}`);
  const shares = COURSE.map(({ id }) => rightShare(memories.get(id) ?? { isKnown: false, halfLifeDays: traits.halfLifeDays, day: 0 }, day, traits));
  return { questions: lines.length, days: day, isReached: objectives.every(isSteady), rightShare: shares.reduce((sum, share) => sum + share, 0) / shares.length, lines };
};

/** One learner goes through the course in one order, a sheet a day, until every objective is Steady. Only the engine says where they stand. */
export const reachSteady = (order: Order, traits: Traits, chance: Chance): Reached => {
  const run: Run = { memories: new Map(), lines: [], standings: standingsFrom() };
  for (let day = 0; day < MOST_DAYS; day += 1) {
    const todayDay = FIRST_DAY + day;
    const objectives = run.standings.on(todayDay);
    if (objectives.every(isSteady)) return endOf(run, day, traits);
    for (const pick of order.sheetOf({ objectives, todayDay, chance })) ask(run, pick, { day, traits, chance });
  }
  return endOf(run, MOST_DAYS, traits);
};
