import { firstMarks, isRight, isUnsafe } from "../../engine/cohort/first-marks.ts";
import type { Mark, Paper } from "../../engine/cohort/paper.ts";
import { withUnit } from "../../engine/quantity/format.ts";
import { drawItem } from "../../engine/question/draw.ts";
import { answerOf, explainItem } from "../../engine/question/explain.ts";
import type { Family } from "../../engine/question/family.ts";
import { gradeItem } from "../../engine/question/grade.ts";
import type { Item } from "../../engine/question/item.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { filled } from "../../facts/words.ts";
import type { Names } from "./names.ts";
import type { Families } from "./use-families.ts";

const { viva: words } = cohortWordsOf("en");

/** Most questions of one card: more than a supervisor asks between two operations are asked by nobody. */
const MOST_QUESTIONS = 4;

/** One answer to talk about: the question as it was drawn, what to ask, and what a good answer holds. */
export interface VivaQuestion {
  readonly mark: Mark;
  readonly title: string;
  readonly said: string;
  readonly asks: readonly string[];
  /** Undefined where this site has the question in another version only. */
  readonly drawn: { readonly item: Item; readonly answer: string; readonly working: readonly string[] } | undefined;
}

export interface VivaCard {
  readonly learner: string;
  readonly attempt: number;
  readonly handedInAt: string;
  readonly questions: readonly VivaQuestion[];
  readonly more: number;
}

const answerText = (item: Item, family: Family): string => {
  const response = answerOf(family, item);
  if (item.kind === "sum" && "says" in response) return item.says[response.says];
  return explainItem(family, item, { response, verdict: gradeItem(family, item, response) }).compare.map(({ label, answer }) => (label === "" ? answer : `${label}: ${answer}`)).join("; ");
};

const drawnFor = ({ family: id, version, seed }: Mark, families: Families): VivaQuestion["drawn"] => {
  const family = families.get(id);
  if (family === undefined || family.version !== version) return undefined;
  try {
    const item = drawItem(family, { seed });
    const response = answerOf(family, item);
    const { working } = explainItem(family, item, { response, verdict: gradeItem(family, item, response) });
    return { item, answer: answerText(item, family), working };
  } catch {
    return undefined;
  }
};

const asksFor = ({ slip, verdict, family }: Mark, names: Names): readonly string[] => [
  slip === null ? words.askPlain : filled(words.askSlip, { slip: names.slip(family, slip) }),
  ...(verdict === "unsafe-side" ? [words.askUnsafe] : []),
  ...(verdict === "unit-or-power" ? [words.askUnit] : []),
  ...(verdict === "rounding" ? [words.askRounding] : []),
];

const questionOf = (mark: Mark, families: Families, names: Names): VivaQuestion => ({
  mark,
  title: names.family(mark.family),
  said: mark.slip === null ? words.noSlip : filled(words.slip, { slip: names.slip(mark.family, mark.slip) }),
  asks: asksFor(mark, names),
  drawn: drawnFor(mark, families),
});

const weight = (mark: Mark): number => Number(isUnsafe(mark)) * 2 + Number(mark.slip !== null);

/** A card from one paper: answers on the unsafe side first, then those with a slip. */
export const vivaCard = (paper: Paper, families: Families, names: Names): VivaCard => {
  const off = firstMarks(paper).filter((mark) => !isRight(mark)).toSorted((one, other) => weight(other) - weight(one) || one.slot - other.slot);
  const { learner, attempt, handedInAt } = paper;
  return { learner, attempt, handedInAt, questions: off.slice(0, MOST_QUESTIONS).map((mark) => questionOf(mark, families, names)), more: Math.max(0, off.length - MOST_QUESTIONS) };
};

/** The givens of a question as they were printed. */
export const givensOf = ({ givens }: Item): readonly { readonly key: string; readonly label: string; readonly value: string }[] =>
  givens.map(({ key, label, text, unit }) => ({ key, label, value: withUnit(text, unit) }));
