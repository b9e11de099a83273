import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { filled } from "../../facts/words.ts";
import type { Figure } from "../../engine/cohort/figure.ts";
import type { Interval } from "../../engine/evidence/wilson.ts";
import { numberText } from "../../engine/quantity/format.ts";

const words = cohortWordsOf("en");
const PERCENT = 100;

const counted = (count: number, one: string, many: string): string => (count === 1 ? one : filled(many, { count: String(count) }));

export const learnersText = (count: number): string => counted(count, words.one, words.many);
export const answersText = (count: number): string => counted(count, words.oneAnswer, words.manyAnswers);
export const questionsText = (count: number): string => counted(count, words.oneQuestion, words.manyQuestions);

/** "18 of 24". */
export const ofText = (count: number, all: number): string => filled(words.of, { count: String(count), all: String(all) });

const percent = (share: number): string => numberText(share * PERCENT, 0);

/** An interval of shares in whole per cent: "55 to 88 %". */
export const intervalText = ({ low, high }: Interval): string => filled(words.span, { low: percent(low), high: percent(high) });

export const percentText = percent;

/** A figure at a number of decimals, or the reason why there is none. */
export const figureText = (figure: Figure, places: number): string => (figure.value === null ? words.refused[figure.refused] : numberText(figure.value, places));

const MS = (text: string): number => (/^\d{4}-\d\d-\d\dT/.test(text) ? Date.parse(text) : Number.NaN);

/** The day of a moment as people write it; the text itself where it is no moment. */
export const dayOfMoment = (text: string): string => {
  const ms = MS(text);
  return Number.isNaN(ms) ? text : new Intl.DateTimeFormat("en-GB", { timeZone: "UTC", day: "numeric", month: "short", year: "numeric" }).format(new Date(ms));
};
