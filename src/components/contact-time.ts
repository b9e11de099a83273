import { compute } from "../bank/index.ts";
import { CURRICULUM } from "../facts/curriculum.ts";

/** A module's time as it is reckoned: what was counted, and the difficulty that brings the formula nearest to its minutes. */
export interface ReckonedModule {
  readonly code: string;
  readonly title: string;
  readonly slug: string;
  readonly words: number;
  readonly questions: number;
  readonly difficulty: number;
  readonly formulaMin: number;
  readonly minutes: number;
}

interface Written {
  readonly id: string;
  readonly body?: string | undefined;
  readonly data: { readonly code: string; readonly title: string; readonly minutes: number };
}

const DIFFICULTIES = [1, 2, 3, 4, 5] as const;
const WORDS_STEP = 10;

/** Words of prose, without tags and formulas, to the nearest ten: a tag more or less is no word more or less. */
const wordsIn = (body: string): number => {
  const prose = body.replace(/<[^>]*>/g, " ").replace(/\$\$[\s\S]*?\$\$|\$[^$\n]*\$/g, " ");
  const words = prose.match(/[\p{L}\p{N}][\p{L}\p{N}'’.,-]*/gu) ?? [];
  return Math.round(words.length / WORDS_STEP) * WORDS_STEP;
};

/** Questions that the author asks of a reader: a tag is one, or as many as it says. */
const questionsIn = (body: string): number =>
  [...body.matchAll(/<Ask\b[^>]*>/g)].reduce((sum, [tag]) => sum + Number(/\bn=\{(\d+)\}/.exec(tag)?.[1] ?? 1), 0);

/** The formula of the question on contact time; at least 0, since a short text would come out below it. */
const formulaMin = (words: number, questions: number, difficulty: number): number => {
  const found = compute("contact-time", { words, questions, difficulty });
  return "contactMin" in found ? Math.max(0, Number(found["contactMin"])) : 0;
};

const reckoned = ({ id, body = "", data: { code, title, minutes } }: Written): ReckonedModule => {
  const words = wordsIn(body);
  const questions = questionsIn(body);
  const off = (difficulty: number): number => Math.abs(formulaMin(words, questions, difficulty) - minutes);
  const difficulty = DIFFICULTIES.reduce((best, one) => (off(one) < off(best) ? one : best), DIFFICULTIES[0] as number);
  return { code, title, slug: id, words, questions, difficulty, formulaMin: formulaMin(words, questions, difficulty), minutes };
};

/** Every module's time, in the order of the course. */
export const reckonedTimes = (written: readonly Written[]): readonly ReckonedModule[] =>
  CURRICULUM.flatMap(({ code }) => written.filter(({ data }) => data.code === code).map(reckoned));
