import { sha256Hex } from "../random/sha256.ts";
import { canonicalJson } from "./canonical.ts";
import { listId, LOCK_DIGITS, type TeachingList } from "./list-form.ts";
import type { Sheet, SheetEdition, SheetItem } from "./sheet-number.ts";

/** Who sits down to a list, for the how-manieth time, and the word that was read aloud. */
export interface Sitting {
  readonly learner: string;
  /** From 1. */
  readonly attempt: number;
  /** The word of a supervised sheet as it was typed; null where nobody supervises. */
  readonly spoken: string | null;
}

/** What can be wrong with a list that reads well: its edition is not here, lacks a question, or means other questions than when the list was made. */
export type ListFault = "unknown-edition" | "unknown-question" | "other-questions";

const SEED_DIGITS = 32;
const CHECK_DIGITS = 16;

/** The word that is read aloud, as it is compared: signs alone, in capitals. */
const bareWord = (spoken: string): string => spoken.slice(0, 80).replace(/[^0-9A-Za-z]/g, "").toUpperCase();

/** The check that a list carries of the word, so that the link does not give the word away. */
export const spokenCheck = (nonce: string, spoken: string): string => sha256Hex(`spoken|${nonce}|${bareWord(spoken)}`).slice(0, CHECK_DIGITS);

/** True where the word is the one of the list, and where the list has none. */
export const isSpokenRight = ({ nonce, spoken }: TeachingList, typed: string | null): boolean => spoken === null || (typed !== null && spokenCheck(nonce, typed) === spoken);

/** The check of what picks mean in an edition: family and version of each. */
export const lockOf = (picks: TeachingList["picks"], { families }: SheetEdition): string =>
  sha256Hex(canonicalJson(picks.map(([place]) => [families[place]?.id ?? "", families[place]?.version ?? 0]))).slice(0, LOCK_DIGITS);

/** Places of the families in the order of the sheet: one of each, then the second of each, so that a kind seldom follows itself. */
const orderOf = ({ picks }: TeachingList): readonly number[] => {
  const rounds = Math.max(...picks.map(([, count]) => count));
  return Array.from({ length: rounds }, (_, round) => picks.filter(([, count]) => count > round).map(([family]) => family)).flat();
};

/** SHA-256 of nonce | learner code | place | attempt: nobody can look for an easy one, and no two learners have the same numbers. The spoken word is part of the nonce, so a supervised sheet cannot be seen before it is read aloud. */
const seedAt = ({ nonce, sheet }: TeachingList, { learner, attempt, spoken }: Sitting, slot: number): string => {
  const own = spoken === null ? nonce : `${nonce}.${bareWord(spoken)}`;
  return sha256Hex([own, sheet === "own" ? learner : "", String(slot), String(attempt)].join("|")).slice(0, SEED_DIGITS);
};

/** The name under which a record keeps the answers of a sitting. */
export const sittingName = (list: TeachingList, { learner, attempt }: Sitting): string => `list.${listId(list)}.${learner}.${attempt}`;

/** The sheet of a sitting: the same questions on the learner's device and on the returns desk. */
export const listSheet = (list: TeachingList, sitting: Sitting, editions: readonly SheetEdition[]): Sheet | { readonly fault: ListFault } => {
  const edition = editions.find((one) => one.edition === list.edition);
  if (edition === undefined) return { fault: "unknown-edition" };
  const items: SheetItem[] = [];
  for (const [slot, place] of orderOf(list).entries()) {
    const family = edition.families[place];
    if (family === undefined) return { fault: "unknown-question" };
    items.push({ family: family.id, version: family.version, module: family.module, seed: seedAt(list, sitting, slot) });
  }
  if (lockOf(list.picks, edition) !== list.lock) return { fault: "other-questions" };
  return { number: sittingName(list, sitting), kind: "practice", items };
};
