import { readListCode } from "../../engine/record/list-code.ts";
import type { TeachingList } from "../../engine/record/list-form.ts";
import { readLink } from "../../engine/record/list-link.ts";
import { listSheet } from "../../engine/record/list-sheet.ts";
import { CODE_WORDS } from "../../engine/record/words.ts";
import { EDITIONS } from "../../facts/editions.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { PRESETS } from "../../facts/presets.ts";

const words = listWordsOf("en");

/** A list that was opened, or the sentence that says why it was not; null where nothing was asked for. */
export type OpenedList = { readonly list: TeachingList } | { readonly said: string } | null;

/** A list whose questions this copy of the site has. */
const withQuestions = (list: TeachingList): OpenedList => {
  const sheet = listSheet(list, { learner: "any", attempt: 1, spoken: null }, EDITIONS);
  return "fault" in sheet ? { said: words.listFault[sheet.fault] } : { list };
};

const byLink = (text: string): OpenedList => {
  const read = readLink(text);
  return "fault" in read ? { said: words.linkFault[read.fault] } : withQuestions(read);
};

const byCode = (typed: string): OpenedList => {
  const read = readListCode(typed, PRESETS, EDITIONS);
  return "fault" in read ? { said: CODE_WORDS.en[read.fault] } : withQuestions(read);
};

/** A code holds none of these; a link holds at least one. */
export const isLink = (text: string): boolean => /[.#/]/.test(text);

/** Opens whatever names a list: a whole link, its fragment, or a typed code. */
export const openedList = (text: string): OpenedList => (isLink(text) ? byLink(text) : byCode(text));

/** What the address names behind its hash; null where it names nothing. */
export const listInAddress = (): OpenedList => {
  const fragment = window.location.hash.slice(1);
  return fragment === "" ? null : openedList(fragment);
};
