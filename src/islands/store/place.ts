import { isResponse, type Response } from "../../engine/question/response.ts";

/** What this visit has answered, kept in the tab and nowhere else. */

export interface Remembered {
  readonly family: string;
  readonly version: number;
  readonly seed: string;
  readonly response: Response;
}

const PREFIX = "small-knee-workbook:";
/** More than any answer takes. */
const MOST_TEXT = 4000;

const isRemembered = (value: unknown): value is Remembered => {
  if (typeof value !== "object" || value === null) return false;
  const { family, version, seed, response } = value as Record<string, unknown>;
  return typeof family === "string" && typeof version === "number" && typeof seed === "string" && isResponse(response);
};

/** Uses the storage of this tab. Where the browser refuses it, or it is full, the page works without, and only coming back to what was kept is lost. */
const inTab = <T>(use: (storage: Storage) => T, otherwise: T): T => {
  try {
    return use(window.sessionStorage);
  } catch {
    return otherwise;
  }
};

/** A short text that this visit set down at a place, such as a learner code; empty where there is none, or more of it than belongs there. */
export const recallText = (place: string, most = MOST_TEXT): string => {
  const text = inTab((storage) => storage.getItem(PREFIX + place), null) ?? "";
  return text.length > most ? "" : text;
};

/** Sets a short text down for this visit; an empty one takes it away. */
export const rememberText = (place: string, text: string): void =>
  inTab((storage) => (text === "" ? storage.removeItem(PREFIX + place) : storage.setItem(PREFIX + place, text)), undefined);

/** What was answered at a place of this page during this visit; null for nothing, or for something damaged. */
export const recall = (place: string): Remembered | null => {
  try {
    const value: unknown = JSON.parse(recallText(place));
    return isRemembered(value) ? value : null;
  } catch {
    return null;
  }
};

/** Keeps an answer for this visit. A full or refused storage changes nothing else. */
export const remember = (place: string, { family, version, seed }: Omit<Remembered, "response">, response: Response): void => rememberText(place, JSON.stringify({ family, version, seed, response }));

/** Forgets the answer at a place. */
export const forget = (place: string): void => rememberText(place, "");

/** Forgets every place whose name begins so. */
export const forgetAll = (start: string): void =>
  inTab((storage) => {
    for (const key of Object.keys(storage)) if (key.startsWith(PREFIX + start)) storage.removeItem(key);
  }, undefined);
