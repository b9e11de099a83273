import { dayOf, type TeachingList } from "../../engine/record/list-form.ts";
import { EDITIONS } from "../../facts/editions.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";

const words = listWordsOf("en");
const MS_PER_DAY = 86_400_000;

/** Titles of question families, by id. */
export type Titles = Readonly<Record<string, string>>;

/** A day of a list as people write it: "4 December 2026". */
export const dateText = (day: string): string =>
  new Intl.DateTimeFormat("en-GB", { timeZone: "UTC", day: "numeric", month: "long", year: "numeric" }).format(new Date((dayOf(day) ?? 0) * MS_PER_DAY));

/** The rule for passing as one sentence. */
export const ruleText = ({ rightPercent, must, noUnsafe }: TeachingList["rule"]): string =>
  filled(rightPercent === 0 ? words.rule.any : words.rule.sentence, { percent: String(rightPercent), must: must.length > 0 ? words.rule.must : "", unsafe: noUnsafe ? words.rule.unsafe : "" });

/** Families that must be right, by id. */
export const mustOf = ({ rule, edition }: TeachingList): readonly string[] => {
  const families = EDITIONS.find((one) => one.edition === edition)?.families ?? [];
  return rule.must.map((place) => families[place]?.id ?? "");
};

/** Questions by their places on the sheet, named from 1: "question 3, question 7". */
export const slotsText = (slots: readonly number[]): string => slots.map((slot) => filled(words.work.question, { at: String(slot + 1) })).join(", ");

/** Things one after the other, the last behind "or". */
export const orText = (parts: readonly string[]): string => (parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} ${words.compose.or} ${parts.at(-1)}`);
