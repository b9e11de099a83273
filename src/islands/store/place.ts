import { isResponse, type Response } from "../../engine/question/response.ts";

/** What this visit has answered, kept in the tab and nowhere else. */

export interface Remembered {
  readonly family: string;
  readonly version: number;
  readonly seed: string;
  readonly response: Response;
}

const PREFIX = "small-knee-workbook:";
const MOST_TEXT = 4000;

const isRemembered = (value: unknown): value is Remembered => {
  if (typeof value !== "object" || value === null) return false;
  const { family, version, seed, response } = value as Record<string, unknown>;
  return typeof family === "string" && typeof version === "number" && typeof seed === "string" && isResponse(response);
};

/** The storage of this tab; null where the browser refuses it, so that the page works without. */
const storage = (): Storage | null => {
  try {
    return window.sessionStorage;
  } catch {
    return null;
  }
};

/** What was answered at a place of this page during this visit; null for nothing, or for something damaged. */
export const recall = (place: string): Remembered | null => {
  try {
    const text = storage()?.getItem(PREFIX + place);
    if (!text || text.length > MOST_TEXT) return null;
    const value: unknown = JSON.parse(text);
    return isRemembered(value) ? value : null;
  } catch {
    return null;
  }
};

/** Keeps an answer for this visit. A full or refused storage changes nothing else. */
export const remember = (place: string, answer: Remembered): void => {
  try {
    storage()?.setItem(PREFIX + place, JSON.stringify(answer));
  } catch {
    // The answer stays on the page; only coming back to it is lost.
  }
};

/** Forgets the answer at a place. */
export const forget = (place: string): void => {
  try {
    storage()?.removeItem(PREFIX + place);
  } catch {
    // Nothing was kept.
  }
};

/** A short text that this visit set down at a place, such as a learner code; empty where there is none. */
export const recallText = (place: string): string => {
  try {
    const text = storage()?.getItem(PREFIX + place) ?? "";
    return text.length > MOST_TEXT ? "" : text;
  } catch {
    return "";
  }
};

/** Sets a short text down for this visit; an empty one takes it away. */
export const rememberText = (place: string, text: string): void => {
  try {
    if (text === "") storage()?.removeItem(PREFIX + place);
    else storage()?.setItem(PREFIX + place, text);
  } catch {
    // It stays on the page; only coming back to it is lost.
  }
};
