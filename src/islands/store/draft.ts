import type { Response } from "../../engine/question/response.ts";
import { SITE } from "../../facts/site.ts";
import { forget, forgetAll, recall, recallText, type Remembered, remember, rememberText } from "./place.ts";

/**
 * What is typed and not yet checked, kept in the tab until it is checked, so that a reload loses nothing. On a computer
 * that many people use nothing unchecked is kept: the next reader would find it.
 */

const PREFIX = "draft:";

/** The place of a question that is the same wherever it is asked, such as on a sheet. */
export const draftPlace = ({ family, version, seed }: Omit<Remembered, "response">): string => `${family}:${version}:${seed}`;

/** What was typed at a place and not checked; null for nothing, or for something damaged. */
export const recallDraft = (place: string): Remembered | null => (SITE.isShared ? null : recall(PREFIX + place));

/** Keeps what is typed for this visit. */
export const rememberDraft = (place: string, item: Omit<Remembered, "response">, response: Response): void => {
  if (!SITE.isShared) remember(PREFIX + place, item, response);
};

/** A list that is being put together takes more than an answer. */
const MOST_LIST = 16_000;

/** The same for what is not an answer, such as a list that is being put together; empty where nothing was kept. */
export const recallDraftText = (place: string): string => (SITE.isShared ? "" : recallText(PREFIX + place, MOST_LIST));

export const rememberDraftText = (place: string, text: string): void => {
  if (!SITE.isShared) rememberText(PREFIX + place, text);
};

/** Forgets what was typed at a place, once it was checked. */
export const forgetDraft = (place: string): void => forget(PREFIX + place);

/** Forgets everything that was typed in this tab, before somebody else goes on. */
export const forgetDrafts = (): void => forgetAll(PREFIX);
