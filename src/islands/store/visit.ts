import { hashInFront, type Line, lineBehind, lineText, type NewEvent } from "../../engine/record/chain.ts";

/** The log of a visit: in the storage of this tab, which the browser empties when the tab is closed; on the page alone where it refuses that. */

const KEY = "small-knee-workbook:visit";

const storage = (): Storage | null => {
  try {
    return window.sessionStorage;
  } catch {
    return null;
  }
};

/** Lines that the tab could not take; they live as long as the page. */
let onPage: readonly string[] = [];

const inTab = (): readonly string[] => {
  try {
    return (storage()?.getItem(KEY) ?? "").split("\n").filter((text) => text !== "");
  } catch {
    return [];
  }
};

/** Every line of this visit, oldest first. */
export const textsOfVisit = (): readonly string[] => [...inTab(), ...onPage];

/** Where new lines of this visit live. */
export const placeOfVisit = (): "tab" | "page" => (storage() === null || onPage.length > 0 ? "page" : "tab");

/** Keeps lines for this visit. */
export const addToVisit = (texts: readonly string[]): void => {
  const fresh = texts.filter((text) => !textsOfVisit().includes(text));
  try {
    const kept = storage();
    if (kept === null) throw new Error("no storage");
    kept.setItem(KEY, [...inTab(), ...fresh].join("\n"));
  } catch {
    onPage = [...onPage, ...fresh];
  }
};

/** Adds one event behind the last line of this visit. */
export const appendToVisit = (event: NewEvent): Line => {
  const line = lineBehind(hashInFront(textsOfVisit().at(-1) ?? ""), event);
  addToVisit([lineText(line)]);
  return line;
};

/** Forgets these lines, after they were kept elsewhere; lines that came meanwhile stay. */
export const dropFromVisit = (texts: readonly string[]): void => {
  const gone = new Set(texts);
  onPage = onPage.filter((text) => !gone.has(text));
  try {
    const left = inTab().filter((text) => !gone.has(text));
    if (left.length === 0) storage()?.removeItem(KEY);
    else storage()?.setItem(KEY, left.join("\n"));
  } catch {
    // What could not be removed is only kept twice, and a line counts once.
  }
};
