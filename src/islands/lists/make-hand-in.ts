import type { HandedAnswer, HandIn } from "../../engine/record/hand-in-form.ts";
import type { Line } from "../../engine/record/chain.ts";
import type { Item } from "../../engine/question/item.ts";
import { listId, type TeachingList } from "../../engine/record/list-form.ts";
import { SITE } from "../../facts/site.ts";
import type { Graded } from "../grading.ts";
import { drawSheet, gradedBefore } from "../sheet-items.ts";
import { attemptsBegun, type Learner, sheetFor } from "./sitting.ts";

/** One answer as the page of the hand-in shows it. */
export interface ShownAnswer {
  readonly slot: number;
  readonly item: Item;
  readonly graded: Graded;
  readonly at: string;
  readonly offsetMin: string;
}

export interface ShownAttempt {
  readonly attempt: number;
  readonly questions: number;
  readonly answers: readonly ShownAnswer[];
}

export interface MadeHandIn {
  readonly handIn: HandIn;
  readonly attempts: readonly ShownAttempt[];
}

const handed = ({ slot, item, graded, at }: ShownAnswer): HandedAnswer => ({
  slot, at, response: graded.response, verdict: graded.verdict.verdict, slip: graded.verdict.slip ?? null, local: item.local ?? null,
});

/** What the record holds of one attempt, graded as this page grades. */
const attemptIn = async (list: TeachingList, learner: Learner, { attempt, lines }: { readonly attempt: number; readonly lines: readonly Line[] }): Promise<ShownAttempt> => {
  const sheet = sheetFor(list, learner, attempt);
  const items = (await drawSheet(sheet)) ?? [];
  const events = lines.map(({ event }) => event).filter((event) => event.sheet === sheet.number && event.kind === "answered");
  const graded = await gradedBefore(items, events);
  const answers = items.flatMap((item, slot): ShownAnswer[] => {
    const own = graded.get(item.seed);
    const event = events.find((one) => one.seed === item.seed && one.family === item.family);
    return own === undefined || event === undefined ? [] : [{ slot, item, graded: own, at: event.at, offsetMin: event.offsetMin }];
  });
  return { attempt, questions: sheet.items.length, answers };
};

/** The hand-in that a record gives for a list; null where nothing of the list is answered. The same record gives the same hand-in, so that one sent twice is one. */
export const makeHandIn = async (list: TeachingList, learner: Learner, lines: readonly Line[]): Promise<MadeHandIn | null> => {
  const begun = attemptsBegun(list, learner, lines);
  const attempts = (await Promise.all(begun.map((attempt) => attemptIn(list, learner, { attempt, lines })))).filter(({ answers }) => answers.length > 0);
  const moments = attempts.flatMap(({ answers }) => answers.map(({ at }) => at)).toSorted();
  const last = moments.at(-1);
  if (last === undefined) return null;
  const sheets = attempts.map(({ attempt, answers }) => ({ attempt, answers: answers.map(handed) }));
  return { attempts, handIn: { form: "hand-in/1", list: listId(list), edition: SITE.edition, ...learner, at: last, sheets } };
};
