import { answerTo, draw, grade, slipsOf } from "../../src/bank/index.ts";
import type { Response } from "../../src/engine/question/response.ts";
import type { HandedAnswer, HandIn } from "../../src/engine/record/hand-in-form.ts";
import { listId, type TeachingList } from "../../src/engine/record/list-form.ts";
import { listSheet, lockOf } from "../../src/engine/record/list-sheet.ts";
import type { SheetItem } from "../../src/engine/record/sheet-number.ts";
import type { Marker } from "../../src/engine/cohort/mark-sheet.ts";
import { EDITIONS, NEWEST } from "../../src/facts/editions.ts";

export const placeOf = (family: string): number => NEWEST.families.findIndex(({ id }) => id === family);

const picksOf = (families: readonly string[]): TeachingList["picks"] => families.map((family) => [placeOf(family), 2] as const);

/** An invented list of families by name. */
export const listOf = (families: readonly string[], over: Partial<TeachingList> = {}): TeachingList => ({
  form: "list/1", title: "Northmoor, winter list", edition: NEWEST.edition, lock: lockOf(over.picks ?? picksOf(families), NEWEST), picks: picksOf(families), sheet: "own", attempts: 3,
  opensOn: "2026-11-16", dueOn: "2026-12-04", keepUntil: "2027-12-31", rule: { rightPercent: 80, must: families.slice(0, 1).map(placeOf), noUnsafe: true },
  back: ["file", "block", "square", "code"], backTo: "post-box of the department", spoken: null, nonce: "0123456789abcdef", ...over,
});

export const itemAt = ({ family, version, seed }: SheetItem) => draw(family, seed, { version });

/** The bank as the desk uses it: every version that a list may lock. */
export const marker: Marker = { draw: itemAt, grade, gradeNewest: () => null };

/** What somebody does with a question, by letter: + right, ! a slip on the unsafe side where there is one, - another slip, anything else leaves it. */
export const responseBy = (letter: string, asked: SheetItem): Response | null => {
  const item = itemAt(asked);
  const slips = slipsOf(item);
  if (letter === "+") return answerTo(item);
  if (letter === "!") return (slips.find(({ unsafe }) => unsafe) ?? slips[0])?.response ?? null;
  return letter === "-" ? ((slips.find(({ unsafe }) => !unsafe) ?? slips[0])?.response ?? null) : null;
};

export interface Work {
  readonly learner: string;
  readonly place?: string | null;
  readonly spoken?: string | null;
  readonly edition?: string;
  readonly at?: string;
  /** One word for each attempt, one letter for each question. */
  readonly words: readonly string[];
}

/** A hand-in as the learner's page would make it; verdicts are those of the bank. */
export const handInOf = (list: TeachingList, { learner, place = null, spoken = null, edition = "0.1.0", at = "2026-11-24T21:31:00Z", words }: Work): HandIn => ({
  form: "hand-in/1", list: listId(list), edition, learner, place, spoken, at,
  sheets: words.map((word, index) => {
    const sheet = listSheet(list, { learner, attempt: index + 1, spoken }, EDITIONS);
    if ("fault" in sheet) throw new Error(sheet.fault);
    const answers = [...word].flatMap((letter, slot): HandedAnswer[] => {
      const asked = sheet.items[slot];
      const response = asked === undefined ? null : responseBy(letter, asked);
      if (asked === undefined || response === null) return [];
      const item = itemAt(asked);
      const { verdict, slip = null } = grade(item, response);
      return [{ slot, at, response, verdict, slip, local: item.local ?? null }];
    });
    return { attempt: index + 1, answers };
  }),
});
