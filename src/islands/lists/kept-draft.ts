import { ROUTES } from "../../engine/record/list-form.ts";
import { recallDraftText, rememberDraftText } from "../store/draft.ts";
import type { Draft } from "./draft.ts";

/** What a director has chosen so far, kept in the tab: a reload, or a look at another page, would lose an hour of it. */

const PLACE = "compose";
const TEXTS = ["title", "opensOn", "dueOn", "keepUntil", "backTo"] as const;
const NUMBERS = ["each", "attempts", "rightPercent"] as const;
const SWITCHES = ["isSupervised", "noUnsafe"] as const;

type Fields = Readonly<Record<string, unknown>>;
const isTexts = (value: unknown): value is readonly string[] => Array.isArray(value) && value.every((one) => typeof one === "string");
const isOneOf = (value: unknown, known: readonly string[]): boolean => known.some((one) => one === value);

/** True for a draft as `draftText` writes it. */
const isKept = (value: unknown): value is Fields => {
  if (typeof value !== "object" || value === null) return false;
  const kept = value as Fields;
  if (![...TEXTS.map((key) => typeof kept[key] === "string"), ...NUMBERS.map((key) => Number.isSafeInteger(kept[key])), ...SWITCHES.map((key) => typeof kept[key] === "boolean")].every(Boolean)) return false;
  if (!isOneOf(kept["sheet"], ["own", "same"]) || !isOneOf(kept["mustBy"], ["none", "unsafe", "ticked"])) return false;
  const isChoice = isTexts(kept["objectives"]) && isTexts(kept["ticked"]) && isTexts(kept["back"]) && kept["back"].every((route) => isOneOf(route, ROUTES));
  return isChoice && (kept["families"] === null || isTexts(kept["families"])) && (kept["preset"] === null || Number.isSafeInteger(kept["preset"]));
};

export const draftText = (draft: Draft): string => JSON.stringify({ ...draft, objectives: [...draft.objectives], ticked: [...draft.ticked] });

/** The draft of a kept text; null where it is none. */
export const draftFrom = (text: string): Draft | null => {
  try {
    const kept: unknown = JSON.parse(text);
    if (!isKept(kept)) return null;
    return { ...(kept as unknown as Draft), objectives: new Set(kept["objectives"] as readonly string[]), ticked: new Set(kept["ticked"] as readonly string[]) };
  } catch {
    return null;
  }
};

/** Keeps what stands on the compose page for this visit. */
export const keepDraft = (draft: Draft): void => rememberDraftText(PLACE, draftText(draft));

/** What this visit had chosen on the compose page; null for nothing. */
export const keptDraft = (): Draft | null => draftFrom(recallDraftText(PLACE));
