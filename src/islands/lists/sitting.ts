import { type TeachingList, listId } from "../../engine/record/list-form.ts";
import { isSpokenRight, listSheet, type Sitting } from "../../engine/record/list-sheet.ts";
import { isLearnerCode, learnerCode } from "../../engine/record/learner-code.ts";
import type { Line } from "../../engine/record/chain.ts";
import type { Sheet } from "../../engine/record/sheet-number.ts";
import { EDITIONS } from "../../facts/editions.ts";
import { recallText, rememberText } from "../store/place.ts";

/** Under which code, where and with which spoken word somebody works on a list. */
export interface Learner {
  readonly learner: string;
  readonly place: string | null;
  readonly spoken: string | null;
}

const MOST_PLACE = 60;
const placeFor = (list: TeachingList): string => `list:${listId(list)}`;

export type LearnerFault = "learnerWrong" | "placeLong" | "spokenWrong";

/** What was typed on the first screen, or what is wrong with it. */
export const learnerFrom = (list: TeachingList, typed: { readonly learner: string; readonly place: string; readonly spoken: string }): Learner | { readonly fault: LearnerFault } => {
  const learner = learnerCode(typed.learner);
  const place = typed.place.trim();
  if (learner === null) return { fault: "learnerWrong" };
  if (place.length > MOST_PLACE) return { fault: "placeLong" };
  const spoken = list.spoken === null ? null : typed.spoken.trim();
  if (!isSpokenRight(list, spoken) || (spoken?.length ?? 0) > MOST_PLACE) return { fault: "spokenWrong" };
  return { learner, place: place === "" ? null : place, spoken };
};

/** Keeps the learner of a list for this tab; null takes it away. */
export const rememberLearner = (list: TeachingList, learner: Learner | null): void => rememberText(placeFor(list), learner === null ? "" : JSON.stringify(learner));

const isOptional = (value: unknown): value is string | null => value === null || (typeof value === "string" && value.length <= MOST_PLACE);

/** The learner whom this tab last knew on a list; null where there is none, or where what is kept is damaged. */
export const recallLearner = (list: TeachingList): Learner | null => {
  try {
    const { learner, place, spoken } = JSON.parse(recallText(placeFor(list))) as Record<string, unknown>;
    return isLearnerCode(learner) && isOptional(place) && isOptional(spoken) && isSpokenRight(list, spoken) ? { learner, place, spoken } : null;
  } catch {
    return null;
  }
};

/** The sheet of one attempt. The list was opened before, so its questions are there. */
export const sheetFor = (list: TeachingList, { learner, spoken }: Learner, attempt: number): Sheet => {
  const sitting: Sitting = { learner, attempt, spoken };
  const sheet = listSheet(list, sitting, EDITIONS);
  if ("fault" in sheet) throw new RangeError(`list must be of an edition that is here, got ${sheet.fault}`);
  return sheet;
};

/** The attempts that the record holds something of, first one first. */
export const attemptsBegun = (list: TeachingList, learner: Learner, lines: readonly Line[]): readonly number[] => {
  const numbers = new Set(lines.map(({ event }) => event.sheet ?? ""));
  return Array.from({ length: list.attempts }, (_, index) => index + 1).filter((attempt) => numbers.has(sheetFor(list, learner, attempt).number));
};
