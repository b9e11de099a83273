import { dayOf, isTeachingList, type Route, type TeachingList } from "./list-form.ts";
import { lockOf } from "./list-sheet.ts";
import type { SheetEdition } from "./sheet-number.ts";
import { packed, readSigns, unpacked, withCheck } from "./signs.ts";
import type { CodeFault } from "./words.ts";

/** A teaching list that is ready made and has a number, so that a short code can stand for it. It is not changed once codes of it are out; a better one gets a number of its own. */
export interface ListPreset {
  /** 0 to 63. */
  readonly number: number;
  readonly title: string;
  readonly families: readonly string[];
  /** Questions of each family. */
  readonly each: number;
  readonly sheet: TeachingList["sheet"];
  readonly attempts: number;
  readonly rightPercent: number;
  /** Families of which every question must be right. */
  readonly must: readonly string[];
  readonly noUnsafe: boolean;
  readonly back: readonly Route[];
}

/** What a director sets on a ready-made list, and the digits that make it one of its own. */
export interface PresetDates {
  readonly opensOn: string;
  readonly dueOn: string;
  readonly keepUntil: string;
  /** Five hexadecimal digits. */
  readonly nonce: string;
}

const EDITIONS = 32;
const GROUP = 4;
/** 1 January 2026; due days are counted from here for 22 years. */
const FIRST_DAY = 20_454;
/** Preset, days from opening to due, due day, days from due to the end of keeping, nonce. */
const COUNTS: readonly number[] = [64, 128, 8192, 1024, 1_048_576];
const NONCE_DIGITS = 5;

/** Year, month and day of a count of days; the year begins in March, so that a leap day comes last. */
const civil = (day: number): readonly [year: number, month: number, day: number] => {
  // From a day count to a date by whole numbers: Howard Hinnant, chrono-compatible low-level date algorithms (2013), civil_from_days.
  const shifted = day + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const yearOfEra = Math.floor((dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const from = Math.floor((5 * dayOfYear + 2) / 153);
  const month = from < 10 ? from + 3 : from - 9;
  return [yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, dayOfYear - Math.floor((153 * from + 2) / 5) + 1];
};

/** The calendar day of a count from 1 January 1970, as `2026-12-04`. */
export const dayName = (day: number): string => civil(day).map((part, index) => String(part).padStart(index === 0 ? 4 : 2, "0")).join("-");

/** The list that a preset and its dates make, in one edition; null where the edition lacks a family or a date does not fit. */
export const listOfPreset = (preset: ListPreset, dates: PresetDates, edition: SheetEdition): TeachingList | null => {
  const placeOf = (family: string): number => edition.families.findIndex(({ id }) => id === family);
  const { title, families, each, sheet, attempts, rightPercent, must, noUnsafe, back } = preset;
  const picks = families.map((family) => [placeOf(family), each] as const);
  const list = {
    form: "list/1", title, edition: edition.edition, lock: lockOf(picks, edition), picks, sheet, attempts, ...dates,
    rule: { rightPercent, must: must.map(placeOf), noUnsafe }, back, backTo: "", spoken: null,
  };
  return isTeachingList(list) ? list : null;
};

/** The typed form of a ready-made list, 17 characters with its hyphens; null where a date is too far off to be typed. */
export const listCode = (preset: ListPreset, { opensOn, dueOn, keepUntil, nonce }: PresetDates, edition: number): string | null => {
  const days = [opensOn, dueOn, keepUntil].map(dayOf);
  const [opens, due, keep] = days;
  if (opens == null || due == null || keep == null || !/^[0-9a-f]{5}$/.test(nonce)) return null;
  const fields = [preset.number, due - opens, due - FIRST_DAY, keep - due, Number.parseInt(nonce, 16)];
  const pairs = fields.map((field, index) => [field, COUNTS[index] ?? 1] as const);
  if (pairs.some(([field, count]) => field < 0 || field >= count)) return null;
  return withCheck([...packed([[edition, EDITIONS]]), ...packed(pairs)], { purpose: "list", groupOf: GROUP });
};

/** Reads the typed code of a ready-made list. Never throws for what was typed. */
export const readListCode = (typed: string, presets: readonly ListPreset[], editions: readonly SheetEdition[]): TeachingList | { readonly fault: CodeFault } => {
  const signs = readSigns(typed, "list");
  if ("fault" in signs) return signs;
  const [named = -1, ...rest] = signs.values;
  const edition = editions.find((one) => one.edition === named);
  if (edition === undefined) return { fault: "unknown-edition" };
  const [number, ahead, due, behind, nonce] = unpacked(rest, COUNTS) ?? [];
  const preset = presets.find((one) => one.number === number);
  if (preset === undefined || ahead === undefined || due === undefined || behind === undefined || nonce === undefined) return { fault: "content" };
  const dueDay = FIRST_DAY + due;
  const dates = { opensOn: dayName(dueDay - ahead), dueOn: dayName(dueDay), keepUntil: dayName(dueDay + behind), nonce: nonce.toString(16).padStart(NONCE_DIGITS, "0") };
  return listOfPreset(preset, dates, edition) ?? { fault: "content" };
};
